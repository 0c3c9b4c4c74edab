package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Require;

/** How far a body tilts that hangs from one hook; see {@link LiftingFormulas#HUNG}. */
public final class HungFromHook {

    private HungFromHook() {
    }

    /**
     * Returns atan(e/h), rad.
     *
     * @param offset how far the balance point lies beside the hook while the body is still level, m
     * @param below how far it lies below the hook, m, above zero
     */
    public static double tilt(double offset, double below) {
        return Math.atan(Require.notNegative(offset, "offset") / Require.positive(below, "distance below the hook"));
    }
}
