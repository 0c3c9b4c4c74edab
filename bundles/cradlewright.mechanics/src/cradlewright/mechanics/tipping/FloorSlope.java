package cradlewright.mechanics.tipping;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * A plane floor that falls in one direction. Distances and heights of a load on it are measured along and square to the floor.
 *
 * @param downhill unit vector in the floor plane (z = 0) in which the floor falls
 * @param angle slope angle, rad, from 0 to below pi/2
 */
public record FloorSlope(Vec3 downhill, double angle) {

    /** A level floor. */
    public static final FloorSlope LEVEL = new FloorSlope(new Vec3(1, 0, 0), 0);

    /** Makes {@code downhill} a flat unit vector; throws IllegalArgumentException for no direction or an angle out of range. */
    public FloorSlope {
        downhill = flatUnit(downhill, "downhill direction");
        Require.within(angle, 0, Math.PI / 2 * (1 - 1e-9), "slope angle");
    }

    /** Returns the slope that falls by {@code fall} (rise over run, 0.02 for 2 %) in the direction {@code downhill}. */
    public static FloorSlope ofFall(Vec3 downhill, double fall) {
        return new FloorSlope(downhill, Math.atan(Require.notNegative(fall, "fall of the floor")));
    }

    /** Returns the tangent of the slope across an edge: above zero when the floor falls outward over the edge. */
    public double across(SupportEdge edge) {
        return Math.tan(angle) * downhill.dot(edge.outward());
    }

    static Vec3 flatUnit(Vec3 direction, String name) {
        Require.finite(direction.x(), name + " x");
        Require.finite(direction.y(), name + " y");
        return new Vec3(direction.x(), direction.y(), 0).unit();
    }
}
