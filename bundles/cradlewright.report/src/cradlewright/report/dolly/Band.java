package cradlewright.report.dolly;

import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Shape;
import java.util.List;
import java.util.Optional;

/**
 * A member of a dolly seen from one side, as broad as its section.
 *
 * @param from its start on the sheet
 * @param to its end on the sheet
 * @param broad how broad it looks, mm; nothing when a measure of its section is missing
 */
public record Band(Shape.Point from, Shape.Point to, Optional<Double> broad) {

    private static final double MM = 1000;
    /** A member that rises more steeply than this share of its length shows its width from the left. */
    private static final double STEEP = Math.sqrt(0.5);

    /** Outer measures of a section, m. */
    private record Size(Optional<Value> height, Optional<Value> width) {
    }

    /** Returns a member in the view of a pen; nothing when the files do not say where its ends are. */
    public static Optional<Band> of(MemberFacts member, DollyFacts dolly, Optional<StockFacts.Section> section, Pen pen) {
        Optional<Vec3> from = member.fromId().flatMap(dolly::node).flatMap(NodeFacts::at);
        Optional<Vec3> to = member.toId().flatMap(dolly::node).flatMap(NodeFacts::at);
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        Vec3 along = to.get().minus(from.get());
        boolean flat = pen.projection() == Projection.PLAN || Math.abs(along.z()) > STEEP * along.norm();
        Optional<Double> broad = section.map(Band::size).flatMap(size -> flat ? size.width : size.height).map(value -> MM * value.si());
        return Optional.of(new Band(pen.at(from.get()), pen.at(to.get()), broad));
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

    /** Returns how long it looks, mm. */
    public double length() {
        return Math.hypot(to.x() - from.x(), to.y() - from.y());
    }

    /** Returns its middle. */
    public Shape.Point middle() {
        return new Shape.Point((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
    }

    /** Returns its corners; nothing when it is only a line, or a point. */
    public Optional<List<Shape.Point>> corners() {
        if (broad.isEmpty() || length() == 0) {
            return Optional.empty();
        }
        double x = -(to.y() - from.y()) / length() * broad.get() / 2;
        double y = (to.x() - from.x()) / length() * broad.get() / 2;
        return Optional.of(List.of(from.moved(x, y), to.moved(x, y), to.moved(-x, -y), from.moved(-x, -y)));
    }
}
