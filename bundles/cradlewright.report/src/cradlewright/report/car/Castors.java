package cradlewright.report.car;

import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.FootFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.load.Carried;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.Words;
import cradlewright.report.dolly.Wheel;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.LabelPlacer.Side;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.Optional;

/** Castors with wheels to scale, and screw feet; numbers beside them in the view from above. */
final class Castors implements Drawn {

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        sight.standing().dolly().ifPresent(dolly -> {
            for (CastorFacts castor : dolly.castors()) {
                place(dolly, castor.nodeId()).ifPresent(at -> castor(castor, at, sight, pen, words));
            }
            for (FootFacts foot : dolly.feet()) {
                place(dolly, foot.nodeId()).ifPresent(at -> foot(foot, at, sight, pen, words));
            }
        });
    }

    private static Optional<Vec3> place(DollyFacts dolly, Optional<String> nodeId) {
        return nodeId.flatMap(dolly::node).flatMap(NodeFacts::at);
    }

    private static void castor(CastorFacts castor, Vec3 at, VisitSight sight, Pen pen, Words words) {
        Optional<CastorType> type = sight.stock(CastorType.class, castor.typeId());
        Wheel wheel = Wheel.of(castor, type);
        Role role = wheel.known() ? Role.CASTOR : Role.ABSENT;
        Optional<Carried> carried = carried(sight, castor.id());
        String value = Words.join(type.map(CastorType::name).orElse("type not known"), castor.swivel() ? "swivels" : "fixed", brake(castor),
                carried.map(c -> "carries " + words.force(c.force())).orElse("load not known"));
        Pen.ItemPen item = pen.item(castor.id(), Kind.CASTOR, "castor " + castor.name(), value);
        Shape.Point middle = pen.at(at);
        if (pen.projection() == Projection.PLAN) {
            item.circle(Role.DIMENSION, middle, wheel.trail());
            item.drawClear(Shape.Polygon.of(role, wheel.fromAbove(middle)));
            number(item, middle, Math.max(wheel.halfBreadth(), wheel.trail()), castor.name(), carried, pen, words);
        } else {
            item.circle(role, wheel.axle(middle), wheel.diameter() / 2);
            item.line(Role.CASTOR, middle, wheel.axle(middle));
        }
    }

    private static void foot(FootFacts foot, Vec3 at, VisitSight sight, Pen pen, Words words) {
        Role role = foot.down() ? Role.CASTOR : Role.ABSENT;
        Optional<Carried> carried = carried(sight, foot.id());
        String value = foot.down() ? carried.map(c -> "carries " + words.force(c.force())).orElse("load not known") : "up";
        Pen.ItemPen item = pen.item(foot.id(), Kind.FOOT, "screw foot " + foot.name(), value);
        Shape.Point middle = pen.at(at);
        double half = pen.text() / 3;
        if (pen.projection() == Projection.PLAN) {
            item.drawClear(Shape.Polygon.of(role, Box.of(middle).grown(half)));
            if (foot.down()) {
                number(item, middle, half, foot.name(), carried, pen, words);
            }
        } else {
            double ground = foot.down() ? 0 : middle.y() / 2;
            item.line(role, middle, new Shape.Point(middle.x(), ground));
            item.line(role, new Shape.Point(middle.x() - half, ground), new Shape.Point(middle.x() + half, ground));
        }
    }

    private static void number(Pen.ItemPen item, Shape.Point at, double reach, String name, Optional<Carried> carried, Pen pen,
            Words words) {
        Side outside = at.y() < 0 ? Side.ABOVE : Side.BELOW;
        item.note(at, Math.max(reach, pen.text() / 2), 0.8, outside, name + " " + carried.map(c -> words.force(c.force())).orElse("?"));
    }

    private static Optional<Carried> carried(VisitSight sight, String id) {
        return sight.loads().castors().stream().filter(carried -> carried.id().equals(id)).findFirst();
    }

    private static String brake(CastorFacts castor) {
        return switch (castor.brake()) {
            case NONE -> "no brake";
            case WHEEL -> "brake on the wheel";
            case WHEEL_AND_SWIVEL -> "brake on wheel and swivel";
        };
    }
}
