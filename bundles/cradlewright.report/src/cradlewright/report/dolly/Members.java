package cradlewright.report.dolly;

import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.report.Words;
import cradlewright.report.scene.Hatch;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.LabelPlacer.Side;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The members, as broad as their section: the darker the more they are used, barred when tight, dark with light bars when they stop, with
 * a broken edge when something is open. The number stands beside each where it lies flat in the view; of one that is too short for it to
 * be told whose it is, only when it does not hold.
 */
final class Members implements Drawn {

    private static final double TEXT = 0.8;
    /** Distance of bars in heights of the font. */
    private static final double BARS = 0.35;
    /** A member that is shorter than this in heights of the font is a stub. */
    private static final double STUB = 2;

    /** A member with how far it is used; nothing while the dolly is empty. */
    private record Seen(MemberFacts member, Band band, Optional<Use> use) {

        double ratio() {
            return use.flatMap(Use::ratio).orElse(0.0);
        }
    }

    @Override
    public void draw(DollySight sight, Pen pen, Words words) {
        sight.dolly().members().stream().flatMap(member -> Band.of(member, sight.dolly(), section(member, sight), pen)
                .map(band -> new Seen(member, band, sight.worked().map(stand -> stand.use(member.id())))).stream())
                .sorted(Comparator.comparingDouble(Seen::ratio)).forEach(seen -> draw(seen, sight, pen, words));
    }

    private static Optional<StockFacts.Section> section(MemberFacts member, DollySight sight) {
        return sight.stock(StockFacts.Section.class, member.sectionId());
    }

    private static void draw(Seen seen, DollySight sight, Pen pen, Words words) {
        boolean old = sight.worked().filter(DollyStand::outdated).isPresent();
        String made = section(seen.member, sight).map(StockFacts::name).orElse("section not known");
        Pen.ItemPen item = pen.item(seen.member.id(), Kind.RAIL, seen.member.name(), Words.join(made,
                seen.use.map(use -> use.sentence(words.units())).orElse(""), old ? "being worked out again" : ""));
        Role role = seen.use.map(Use::role).orElse(Role.STRUCTURE);
        seen.band.corners().ifPresentOrElse(corners -> body(item, role, corners, pen.text()),
                () -> item.line(role, seen.band.from(), seen.band.to()));
        seen.use.filter(use -> shown(seen, use, pen)).ifPresent(use -> item.text(seen.band.middle(), reach(seen.band, pen), TEXT,
                side(seen.band, pen), use.words() + (old ? " (old)" : ""), List.of()));
    }

    private static void body(Pen.ItemPen item, Role role, List<Shape.Point> corners, double text) {
        item.drawClear(new Shape.Polygon(role, corners));
        if (role == Role.LOAD_TIGHT || role == Role.LOAD_STOP) {
            Role bars = role == Role.LOAD_STOP ? Role.MARK : role;
            Hatch.lines(corners, BARS * text).forEach(line -> item.line(bars, line.get(0), line.get(1)));
        }
    }

    /** Each number stands in one view: from above, but for what stands upright. */
    private static boolean shown(Seen seen, Use use, Pen pen) {
        boolean here = pen.projection() == Projection.PLAN ? seen.band.length() > 0 : upright(seen.band);
        return here && (seen.band.length() >= STUB * pen.text() || use.verdict().compareTo(Verdict.HOLDS) > 0);
    }

    private static boolean upright(Band band) {
        return Math.abs(band.to().x() - band.from().x()) < Math.abs(band.to().y() - band.from().y()) / 100;
    }

    private static double reach(Band band, Pen pen) {
        return band.broad().orElse(pen.text()) / 2;
    }

    private static Side side(Band band, Pen pen) {
        if (upright(band)) {
            return Side.RIGHT;
        }
        // The right hand side is up: numbers stand inside, where no castor is.
        return band.middle().y() < 0 && pen.projection() == Projection.PLAN ? Side.BELOW : Side.ABOVE;
    }
}
