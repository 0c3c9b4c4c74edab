package cradlewright.diagrams.shared;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;

/** Places moved by hand: nobody measured them there, so they count as drawn, no better known than before. */
public final class Moved {

    private static final double MM = 1000;

    private Moved() {
    }

    /** Returns a place moved by so many mm. */
    public static Position by(Position from, double x, double y, double z) {
        return new Position(tenth(from.x() + x), tenth(from.y() + y), tenth(from.z() + z), from.uncertainty(), Source.DRAWING);
    }

    /**
     * Returns a place moved by a way in m.
     *
     * @param grid it becomes a whole multiple of this along the axes that it moves along, mm; zero for none
     */
    public static Position by(Position from, Vec3 way, double grid) {
        return by(from, step(from.x(), MM * way.x(), grid), step(from.y(), MM * way.y(), grid), step(from.z(), MM * way.z(), grid));
    }

    private static double step(double from, double by, double grid) {
        return grid > 0 && by != 0 ? Math.rint((from + by) / grid) * grid - from : by;
    }

    /** Returns a number of mm as it is written into files: whole tenths. */
    public static double tenth(double mm) {
        return Math.round(10 * mm) / 10.0;
    }
}
