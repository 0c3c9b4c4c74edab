package cradlewright.report.car;

import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.List;
import java.util.Optional;

/** The members of the dolly, as broad as their section where that is known. */
final class Rails implements Drawn {

    private static final double MM = 1000;

    /** Outer measures of a section, m. */
    private record Size(Optional<Value> height, Optional<Value> width) {
    }

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        sight.standing().dolly().ifPresent(dolly -> dolly.members().forEach(member -> draw(member, dolly, sight, pen)));
    }

    private static void draw(MemberFacts member, DollyFacts dolly, VisitSight sight, Pen pen) {
        Optional<Vec3> from = member.fromId().flatMap(dolly::node).flatMap(NodeFacts::at);
        Optional<Vec3> to = member.toId().flatMap(dolly::node).flatMap(NodeFacts::at);
        if (from.isEmpty() || to.isEmpty()) {
            return;
        }
        Optional<StockFacts.Section> section = sight.stock(StockFacts.Section.class, member.sectionId());
        Pen.ItemPen item = pen.item(member.id(), Kind.RAIL, member.name(), section.map(StockFacts::name).orElse("section not known"));
        Shape.Point a = pen.at(from.get());
        Shape.Point b = pen.at(to.get());
        Optional<Double> broad = section.map(Rails::size).flatMap(size -> pen.projection() == Projection.PLAN ? size.width : size.height)
                .map(value -> MM * value.si());
        double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
        if (broad.isEmpty() || length == 0) {
            item.line(Role.STRUCTURE, a, b);
            return;
        }
        double x = -(b.y() - a.y()) / length * broad.get() / 2;
        double y = (b.x() - a.x()) / length * broad.get() / 2;
        item.polygon(Role.STRUCTURE, List.of(a.moved(x, y), b.moved(x, y), b.moved(-x, -y), a.moved(-x, -y)));
    }

    private static Size size(StockFacts.Section section) {
        if (section instanceof StockFacts.Folded s) {
            return new Size(s.height(), s.width());
        }
        if (section instanceof StockFacts.Hollow s) {
            return new Size(s.height(), s.width());
        }
        if (section instanceof StockFacts.Tube s) {
            return new Size(s.diameter(), s.diameter());
        }
        if (section instanceof StockFacts.Flat s) {
            return new Size(s.height(), s.width());
        }
        if (section instanceof StockFacts.Tee s) {
            return new Size(s.webHeight(), s.flangeWidth());
        }
        StockFacts.TimberRail s = (StockFacts.TimberRail) section;
        return new Size(s.height(), s.width());
    }
}
