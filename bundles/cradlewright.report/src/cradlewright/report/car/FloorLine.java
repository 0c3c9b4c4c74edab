package cradlewright.report.car;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;

/** The floor under a dolly, seen from the left; of other carriers the files do not say how high they stand. */
final class FloorLine implements Drawn {

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        if (pen.projection() == Projection.SIDE && sight.standing().carrier() == CarrierKind.DOLLY) {
            Box reach = pen.reach();
            pen.item("floor", Kind.FLOOR, "floor", "").line(Role.FLOOR, new Shape.Point(reach.left() - pen.text(), 0),
                    new Shape.Point(reach.right() + pen.text(), 0));
        }
    }
}
