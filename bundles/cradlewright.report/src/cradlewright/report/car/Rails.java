package cradlewright.report.car;

import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.report.Words;
import cradlewright.report.dolly.Band;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Role;
import java.util.Optional;

/** The members of the dolly, as broad as their section where that is known. */
final class Rails implements Drawn {

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        sight.standing().dolly().ifPresent(dolly -> dolly.members().forEach(member -> draw(member, dolly, sight, pen)));
    }

    private static void draw(MemberFacts member, DollyFacts dolly, VisitSight sight, Pen pen) {
        Optional<StockFacts.Section> section = sight.stock(StockFacts.Section.class, member.sectionId());
        Band.of(member, dolly, section, pen).ifPresent(band -> {
            Pen.ItemPen item = pen.item(member.id(), Kind.RAIL, member.name(), section.map(StockFacts::name).orElse("section not known"));
            band.corners().ifPresentOrElse(corners -> item.polygon(Role.STRUCTURE, corners),
                    () -> item.line(Role.STRUCTURE, band.from(), band.to()));
        });
    }
}
