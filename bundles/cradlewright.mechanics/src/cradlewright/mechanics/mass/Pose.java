package cradlewright.mechanics.mass;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;

/**
 * One weighing of a body on load cells in a stated attitude.
 *
 * @param up the direction straight up, in the axes of the body; length one
 * @param cells what the cells show; three or more, not in one line
 * @param angleUncertainty standard uncertainty of the attitude in each direction, rad
 */
public record Pose(Vec3 up, List<CellReading> cells, double angleUncertainty) {

    /** Makes the direction a unit vector; refuses fewer than three cells. */
    public Pose {
        up = Checks.finite(up, "up").unit();
        cells = List.copyOf(cells);
        if (cells.size() < 3) {
            throw new IllegalArgumentException("a body rests on three or more cells, found " + cells.size());
        }
        Require.notNegative(angleUncertainty, "uncertainty of the attitude");
    }

    /**
     * Returns a weighing whose attitude was read from a level laid along the body and then across it.
     *
     * @param noseDown slope of the body's long axis, front lower, rad
     * @param rightDown slope of the body's cross axis, right side lower, rad
     * @param cells what the cells show
     * @param angleUncertainty standard uncertainty of each slope, rad
     * @throws IllegalArgumentException when the two slopes cannot both be (together they stand the body upright)
     */
    public static Pose tilted(double noseDown, double rightDown, List<CellReading> cells, double angleUncertainty) {
        double x = Math.sin(Require.within(noseDown, -Math.PI / 2, Math.PI / 2, "slope along the body"));
        double y = -Math.sin(Require.within(rightDown, -Math.PI / 2, Math.PI / 2, "slope across the body"));
        double z2 = 1 - x * x - y * y;
        return new Pose(new Vec3(x, y, Math.sqrt(Require.positive(z2, "square of the upward share of the body's z axis"))), cells,
                angleUncertainty);
    }

    /**
     * Returns the direction that is level and nearest to the body's long axis (or to its cross axis when the body stands on end).
     */
    Vec3 levelAlong() {
        Vec3 axis = Math.abs(up.x()) < 0.9 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
        return axis.minus(up.times(up.dot(axis))).unit();
    }
}
