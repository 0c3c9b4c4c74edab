package cradlewright.report.dolly;

import cradlewright.report.Words;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;

/** The floor, seen from the left. */
public final class Floor implements Drawn {

    @Override
    public void draw(DollySight sight, Pen pen, Words words) {
        line(pen);
    }

    /** Draws it as long as what the pen has drawn so far; nothing from above. */
    public static void line(Pen pen) {
        Box reach = pen.reach();
        if (pen.projection() == Projection.SIDE && !reach.isEmpty()) {
            pen.item("floor", Kind.FLOOR, "floor", "").drawClear(new Shape.Line(Role.FLOOR, reach.left() - pen.text(), 0,
                    reach.right() + pen.text(), 0));
        }
    }
}
