package cradlewright.report.car;

import cradlewright.analysis.facts.LiftPointFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.standing.Carriers;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.Words;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.LabelPlacer.Side;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.List;

/** Lift points as diamonds with the sign of their condition. */
final class LiftPoints implements Drawn {

    private static final double HALF = 0.42;

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        for (LiftPointFacts point : sight.standing().car().liftPoints()) {
            point.position().map(Spot::at).map(p -> Carriers.toCarrier(p, sight.standing().setup()))
                    .ifPresent(at -> draw(point, at, sight, pen, words));
        }
    }

    private static void draw(LiftPointFacts point, Vec3 at, VisitSight sight, Pen pen, Words words) {
        String value = Words.join(Words.condition(point.condition()), "sheet " + words.length(point.sheet()),
                point.lookedAt().map(day -> "looked at on " + day).orElse("nobody looked at it"), words.place(point.position()));
        Pen.ItemPen item = pen.item(point.id(), Kind.LIFT_POINT, "lift point " + point.name(), value);
        Shape.Point middle = pen.at(at);
        Role role = Marks.role(point.condition());
        double half = HALF * pen.text();
        Shape.Polygon diamond = new Shape.Polygon(role, List.of(middle.moved(-half, 0), middle.moved(0, -half), middle.moved(half, 0),
                middle.moved(0, half)));
        if (pen.projection() == Projection.SIDE) {
            item.draw(diamond);
            return;
        }
        item.drawClear(diamond);
        Marks.condition(item, point.condition(), middle, half * 0.8);
        boolean carries = sight.standing().supports().stream().anyMatch(support -> support.objectId().equals(point.id()));
        if (!carries) {
            item.note(middle, half, 0.8, at.y() < 0 ? Side.BELOW : Side.ABOVE, Words.named("lift " + point.name(), point.condition()));
        }
    }
}
