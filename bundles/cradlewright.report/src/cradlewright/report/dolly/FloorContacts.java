package cradlewright.report.dolly;

import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.FootFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.Words;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.Optional;

/** Castors with the circle that each sweeps while it swivels, and screw feet; from above a bar outward for what each carries. */
final class FloorContacts implements Drawn {

    private static final double FOOT = 0.35;

    @Override
    public void draw(DollySight sight, Pen pen, Words words) {
        Bars bars = new Bars(sight, pen, words);
        for (CastorFacts castor : sight.dolly().castors()) {
            place(sight.dolly(), castor.nodeId()).ifPresent(at -> castor(castor, at, sight, pen, bars));
        }
        for (FootFacts foot : sight.dolly().feet()) {
            place(sight.dolly(), foot.nodeId()).ifPresent(at -> foot(foot, at, sight, pen, bars));
        }
    }

    private static Optional<Vec3> place(DollyFacts dolly, Optional<String> nodeId) {
        return nodeId.flatMap(dolly::node).flatMap(NodeFacts::at);
    }

    private static void castor(CastorFacts castor, Vec3 at, DollySight sight, Pen pen, Bars bars) {
        Optional<CastorType> type = sight.stock(CastorType.class, castor.typeId());
        Wheel wheel = Wheel.of(castor, type);
        Role role = wheel.known() ? Role.CASTOR : Role.ABSENT;
        Pen.ItemPen item = pen.item(castor.id(), Kind.CASTOR, "castor " + castor.name(), Words.join(
                type.map(CastorType::name).orElse("type not known"), castor.swivel() ? "swivels" : "fixed", bars.sentence(castor.id())));
        Shape.Point middle = pen.at(at);
        if (pen.projection() == Projection.PLAN) {
            if (castor.swivel()) {
                item.draw(new Shape.Circle(Role.DIMENSION, middle.x(), middle.y(), wheel.sweep()));
            }
            item.drawClear(Shape.Polygon.of(role, wheel.fromAbove(middle)));
            bars.outward(item, castor.id(), castor.name(), middle, castor.swivel() ? wheel.sweep() : wheel.halfBreadth());
        } else {
            item.circle(role, wheel.axle(middle), wheel.diameter() / 2);
            item.line(Role.CASTOR, middle, wheel.axle(middle));
        }
    }

    private static void foot(FootFacts foot, Vec3 at, DollySight sight, Pen pen, Bars bars) {
        Role role = foot.down() ? Role.CASTOR : Role.ABSENT;
        Pen.ItemPen item = pen.item(foot.id(), Kind.FOOT, "screw foot " + foot.name(), foot.down() ? bars.sentence(foot.id()) : "up");
        Shape.Point middle = pen.at(at);
        double half = FOOT * pen.text();
        if (pen.projection() == Projection.PLAN) {
            item.drawClear(Shape.Polygon.of(role, Box.of(middle).grown(half)));
            if (foot.down()) {
                bars.outward(item, foot.id(), foot.name(), middle, half);
            }
        } else {
            double ground = foot.down() ? 0 : middle.y() / 2;
            item.line(role, middle, new Shape.Point(middle.x(), ground));
            item.line(role, new Shape.Point(middle.x() - half, ground), new Shape.Point(middle.x() + half, ground));
        }
    }
}
