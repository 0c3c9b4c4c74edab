package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Require;

/**
 * One of four pads under a body.
 *
 * @param x rearward place, m
 * @param y place to the right, m
 * @param stiffness of pad and arm together, N/m
 * @param low how much the pad is too low, m; below zero when too high
 */
public record Pad(double x, double y, double stiffness, double low) {

    /** Refuses values that are not finite and a stiffness that is not above zero. */
    public Pad {
        Require.finite(x, "pad x");
        Require.finite(y, "pad y");
        Require.positive(stiffness, "stiffness of the pad");
        Require.finite(low, "error of height");
    }
}
