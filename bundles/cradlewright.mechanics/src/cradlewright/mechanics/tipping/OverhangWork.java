package cradlewright.mechanics.tipping;

import cradlewright.mechanics.formula.Require;

/**
 * Whether an overhang may be worked on without end props. Two tests: no support of the body unloads, and the dolly does not
 * tip on the floor ({@link TippingFormulas#OVERHANG_SUPPORTS}, {@link TippingFormulas#OVERHANG}). Both must reach the ratio.
 *
 * <p>The first test is the statics of two support lines; more lines need a contact solution. Rigid body, level floor.
 *
 * @param supportRatio load that unloads the far support over the load on the overhang
 * @param floorRatio holding over tipping moment of the dolly on the floor
 * @param required ratio asked for
 */
public record OverhangWork(double supportRatio, double floorRatio, double required) {

    /** Refuses ratios that are NaN and a required ratio below 1. */
    public OverhangWork {
        if (Double.isNaN(supportRatio) || Double.isNaN(floorRatio)) {
            throw new IllegalArgumentException("ratios must be numbers, found " + supportRatio + " and " + floorRatio);
        }
        Require.within(required, 1, 1e6, "required ratio");
    }

    /**
     * Returns the load on the overhang that just unloads the far support, N; zero when that support is unloaded already.
     *
     * @param weight weight of the body, N, above zero
     * @param span distance of the two support lines, m, above zero
     * @param balanceFromNear distance of the balance point from the near support line (the one beside the overhang) towards the
     *     far one, m
     * @param overhang distance of the load outward from the near support line, m, above zero
     */
    public static double unloadingForce(double weight, double span, double balanceFromNear, double overhang) {
        return farReaction(weight, span, balanceFromNear) * span / Require.positive(overhang, "overhang");
    }

    /** Returns the reaction of the far support before the overhang is loaded, N; zero when the body tips by itself. */
    public static double farReaction(double weight, double span, double balanceFromNear) {
        Require.positive(weight, "weight");
        Require.positive(span, "span of the supports");
        Require.within(balanceFromNear, -1e6, span, "distance of the balance point from the near support");
        return Math.max(0, weight * balanceFromNear / span);
    }

    /** Returns whether both ratios reach the required one. */
    public boolean allowed() {
        return supportRatio >= required && floorRatio >= required;
    }
}
