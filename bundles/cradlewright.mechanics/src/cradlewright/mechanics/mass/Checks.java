package cradlewright.mechanics.mass;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/** Guards of points and uncertainties used throughout this package. */
final class Checks {

    private Checks() {
    }

    static Vec3 finite(Vec3 v, String name) {
        Require.finite(v.x(), name + " x");
        Require.finite(v.y(), name + " y");
        Require.finite(v.z(), name + " z");
        return v;
    }

    static Vec3 notNegative(Vec3 v, String name) {
        Require.notNegative(v.x(), name + " x");
        Require.notNegative(v.y(), name + " y");
        Require.notNegative(v.z(), name + " z");
        return v;
    }
}
