package cradlewright.mechanics.joint;

import cradlewright.mechanics.formula.Require;

/**
 * The force of one bolt of a group.
 *
 * @param shearU shear along u, N
 * @param shearV shear along v, N
 * @param tension tension with prying, N; zero where the plate is pressed on instead
 */
public record BoltForce(double shearU, double shearV, double tension) {

    /** Refuses forces that are not finite and a negative tension. */
    public BoltForce {
        Require.finite(shearU, "bolt shear along u");
        Require.finite(shearV, "bolt shear along v");
        Require.notNegative(tension, "bolt tension");
    }

    /** Returns the resultant shear, N. */
    public double shear() {
        return Math.hypot(shearU, shearV);
    }
}
