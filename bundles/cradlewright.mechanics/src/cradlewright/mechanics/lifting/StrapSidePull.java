package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Require;

/** Sideways pull of a leaning strap on a lift arm, which has no rating to the side; see {@link LiftingFormulas#SIDE_PULL}. */
public final class StrapSidePull {

    /**
     * Largest lean of a strap under a lift arm, rad: 5 degrees (common practice, no source); beyond it ask the maker of the lift.
     */
    public static final double MOST_LEAN = Math.toRadians(5);

    private StrapSidePull() {
    }

    /**
     * Returns V tan beta, N.
     *
     * @param upright upright part of the strap force, N
     * @param beta lean from upright, rad, below pi/2
     */
    public static double of(double upright, double beta) {
        Require.notNegative(upright, "upright force");
        return upright * Math.tan(Require.within(beta, 0, Math.PI / 2 - 1e-6, "lean of the strap"));
    }
}
