package cradlewright.mechanics.joint;

import cradlewright.mechanics.formula.Require;

/**
 * A point, or a vector, in the plane of a joint; u, v and the outward normal w are right-handed.
 *
 * @param u first coordinate, m (or N, or N/m)
 * @param v second coordinate, m (or N, or N/m)
 */
public record PlanePoint(double u, double v) {

    /** Refuses coordinates that are not finite. */
    public PlanePoint {
        Require.finite(u, "coordinate u");
        Require.finite(v, "coordinate v");
    }

    /** Returns this minus {@code o}. */
    public PlanePoint minus(PlanePoint o) {
        return new PlanePoint(u - o.u, v - o.v);
    }

    /** Returns the length. */
    public double norm() {
        return Math.hypot(u, v);
    }
}
