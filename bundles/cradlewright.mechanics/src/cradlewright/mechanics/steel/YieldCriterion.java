package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;

/**
 * Elastic yield criterion of EN 1993-1-1 6.2.1(5) at one point.
 *
 * @see SteelFormulas#YIELD_CRITERION
 */
public final class YieldCriterion {

    private YieldCriterion() {
    }

    /** Von Mises stress of two normal stresses and a shear stress, Pa. */
    public static double vonMises(double along, double across, double shear) {
        Require.finite(along, "stress along the member");
        Require.finite(across, "stress across the member");
        Require.finite(shear, "shear stress");
        return Math.sqrt(Math.max(0, along * along + across * across - along * across + 3 * shear * shear));
    }

    /**
     * Left side of the criterion; 1 is the limit. It grows with the square of the load.
     *
     * @param along stress along the member, Pa
     * @param across stress across it, Pa
     * @param shear Pa
     * @param designYield yield strength over gamma_M0, Pa
     */
    public static double value(double along, double across, double shear, double designYield) {
        double share = vonMises(along, across, shear) / Require.positive(designYield, "design yield strength");
        return share * share;
    }
}
