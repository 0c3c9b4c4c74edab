package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Require;

/**
 * Whether a body whose balance point lies above its straps stays upright: two strap lines with springs to the side against its
 * weight; see {@link LiftingFormulas#ROLL}.
 *
 * @param stiffness of each strap line, N/m
 * @param spacing of the two lines, m
 * @param weight N
 * @param above height of the balance point above the plane where the straps hold, m; below zero when it hangs below
 */
public record RollStability(double stiffness, double spacing, double weight, double above) {

    /** Refuses values out of range. */
    public RollStability {
        Require.positive(stiffness, "stiffness of a strap line");
        Require.positive(spacing, "spacing of the strap lines");
        Require.positive(weight, "weight");
        Require.finite(above, "height above the straps");
    }

    /** Returns what rights the body, k s2/2, N m/rad. */
    public double restoring() {
        return stiffness * spacing * spacing / 2;
    }

    /** Returns what turns it over, W h, N m/rad; below zero when the body hangs below the straps and rights itself. */
    public double upsetting() {
        return weight * above;
    }

    /** Returns true when the body stays upright. */
    public boolean stable() {
        return restoring() > upsetting();
    }
}
