package cradlewright.report.dolly;

import cradlewright.analysis.load.DollyShape;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.Words;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.LabelPlacer.Side;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.Comparator;
import java.util.List;

/** The dolly as it bends, so many times as much as it does; from above only where it bends sideways as well. */
final class Deflection implements Drawn {

    private static final int[] TIMES = {1000, 500, 200, 100, 50, 20, 10, 5, 2, 1};
    /** Share of the length of the dolly that the largest movement may take on the drawing. */
    private static final double SHARE = 0.06;
    /** Movement that shows from above, over the largest of all. */
    private static final double SIDEWAYS = 0.2;
    private static final double TEXT = 0.9;
    /** Below this nothing bends, m: rounding. */
    private static final double NOTHING = 1e-9;

    @Override
    public void draw(DollySight sight, Pen pen, Words words) {
        sight.worked().flatMap(DollyStand::shape).filter(shape -> shape.largest() > NOTHING).ifPresent(shape -> draw(shape, pen, words));
    }

    private static void draw(DollyShape shape, Pen pen, Words words) {
        List<DollyShape.Moved> points = shape.members().stream().flatMap(member -> member.points().stream()).toList();
        double seen = points.stream().map(DollyShape.Moved::by).map(pen::at).mapToDouble(by -> Math.hypot(by.x(), by.y())).max().orElse(0)
                / 1000;
        if (pen.projection() == Projection.PLAN && seen < SIDEWAYS * shape.largest()) {
            return;
        }
        int times = times(shape);
        String most = "most " + words.length(shape.largest());
        Pen.ItemPen item = pen.item("deflection", Kind.BENT, "deflection x" + times, Words.join(most, shape.situation().words(),
                "against a rigid dolly on the same castors"));
        for (DollyShape.Bent member : shape.members()) {
            for (int i = 1; i < member.points().size(); i++) {
                item.line(Role.BENT, moved(member.points().get(i - 1), times, pen), moved(member.points().get(i), times, pen));
            }
        }
        if (pen.projection() == Projection.SIDE) {
            DollyShape.Moved largest = points.stream().max(Comparator.comparingDouble(point -> point.by().norm())).orElseThrow();
            item.text(moved(largest, times, pen), 0, TEXT, Side.BELOW, "deflection x" + times, List.of(most, shape.situation().words()));
        }
    }

    private static Shape.Point moved(DollyShape.Moved point, int times, Pen pen) {
        Vec3 there = point.at().plus(point.by().times(times));
        return pen.at(there);
    }

    /** Returns the largest scale of ours at which the drawing is not torn apart. */
    static int times(DollyShape shape) {
        Box reach = shape.members().stream().flatMap(member -> member.points().stream()).map(DollyShape.Moved::at)
                .map(Projection.PLAN::at).map(Box::of).reduce(Box.EMPTY, Box::union);
        double room = SHARE * Math.max(reach.width(), reach.height()) / 1000;
        for (int times : TIMES) {
            if (times * shape.largest() <= room) {
                return times;
            }
        }
        return 1;
    }
}
