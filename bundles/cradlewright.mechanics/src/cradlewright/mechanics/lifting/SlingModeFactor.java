package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Require;

/**
 * Mode factors: what a sling may carry over what one straight leg may carry (EN 1492-1 and -2; the leg factors of wire rope in
 * EN 13414-1 Table 4 are the same); see {@link LiftingFormulas#MODE_FACTOR}. They presume equal angles and a balance point in the
 * middle. The working load limit of a leg already holds the design factor.
 */
public final class SlingModeFactor {

    /** How the sling is rigged. */
    public enum Mode {
        /** One leg, upright. */
        STRAIGHT,
        /** One leg, choked around the load. */
        CHOKED,
        /** One sling under the load, both sides upright. */
        BASKET_PARALLEL,
        /** One sling under the load, both sides leaning. */
        BASKET,
        /** Two legs from one ring. */
        TWO_LEGS,
        /** Three legs from one ring. */
        THREE_LEGS,
        /** Four legs from one ring; counted as three. */
        FOUR_LEGS
    }

    private static final double NARROW = Math.toRadians(45);
    private static final double UPRIGHT = Math.toRadians(6);
    private static final double CHOKE = 0.8;
    private static final double ROUNDING = 1e-9;

    private SlingModeFactor() {
    }

    /**
     * Returns the mode factor; 0 when the sling must not be used so: legs leaning by more than 60 degrees, or an "upright" leg by
     * more than 6 degrees (tolerance for upright legs in EN 1492-1, from memory).
     *
     * @param mode how the sling is rigged
     * @param beta largest lean of a leg from upright, rad, 0 to pi/2
     */
    public static double factor(Mode mode, double beta) {
        Require.within(beta, 0, Math.PI / 2, "lean of the legs");
        return switch (mode) {
            case STRAIGHT -> beta <= UPRIGHT + ROUNDING ? 1 : 0;
            case CHOKED -> beta <= UPRIGHT + ROUNDING ? CHOKE : 0;
            case BASKET_PARALLEL -> beta <= UPRIGHT + ROUNDING ? 2 : 0;
            case BASKET, TWO_LEGS -> leaning(beta, 1.4, 1.0);
            case THREE_LEGS, FOUR_LEGS -> leaning(beta, 2.1, 1.5);
        };
    }

    /**
     * Returns what the sling may carry, kg; 0 when it must not be used so.
     *
     * @param mode how the sling is rigged
     * @param beta largest lean of a leg from upright, rad
     * @param oneLeg working load limit of one straight leg, kg
     */
    public static double capacity(Mode mode, double beta, double oneLeg) {
        return Require.positive(oneLeg, "working load limit of one leg") * factor(mode, beta);
    }

    /** Returns what a sling of several legs may carry when each leg is choked around the load as well, kg. */
    public static double capacityChoked(Mode mode, double beta, double oneLeg) {
        if (mode != Mode.TWO_LEGS && mode != Mode.THREE_LEGS && mode != Mode.FOUR_LEGS) {
            throw new IllegalArgumentException("only a sling of several legs can be choked at each leg, found " + mode);
        }
        return CHOKE * capacity(mode, beta, oneLeg);
    }

    private static double leaning(double beta, double narrow, double wide) {
        if (beta <= NARROW + ROUNDING) {
            return narrow;
        }
        return beta <= SlingLegs.MOST_SPREAD + ROUNDING ? wide : 0;
    }
}
