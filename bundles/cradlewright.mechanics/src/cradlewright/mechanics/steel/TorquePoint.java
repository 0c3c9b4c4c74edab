package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;

/**
 * The torque at a cut of a member.
 *
 * @param distance of the cut from the start of the member, m
 * @param torque about the shear centre, N*m
 */
public record TorquePoint(double distance, double torque) {

    /** Refuses values that are not finite. */
    public TorquePoint {
        Require.notNegative(distance, "distance of a cut");
        Require.finite(torque, "torque at a cut");
    }
}
