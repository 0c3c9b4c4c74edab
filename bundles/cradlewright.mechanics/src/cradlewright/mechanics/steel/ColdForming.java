package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;

/**
 * Average yield strength of a cold-formed section. Ignored by the checks unless a caller passes it on purpose; not allowed
 * where the part is welded or heated after forming.
 *
 * @see SteelFormulas#COLD_FORMING_GAIN
 */
public final class ColdForming {

    /** Factor k of roll forming. */
    public static final double ROLL_FORMED = 7;
    /** Factor k of the press brake (from memory). */
    public static final double PRESS_BRAKE = 5;

    private ColdForming() {
    }

    /**
     * Average yield strength, fyb + (fu - fyb) k n t2/A, not above (fu + fyb)/2, Pa.
     *
     * @param yield of the flat sheet, Pa
     * @param tensile of the flat sheet, not below the yield strength, Pa
     * @param factor {@link #ROLL_FORMED} or {@link #PRESS_BRAKE}
     * @param bends number of 90 degree bends with an inner radius up to 5 t
     * @param thickness m
     * @param area gross area, m2
     */
    public static double averageYield(double yield, double tensile, double factor, int bends, double thickness, double area) {
        Require.positive(yield, "yield strength");
        Require.within(tensile, yield, Double.MAX_VALUE, "tensile strength");
        Require.positive(factor, "cold-forming factor");
        Require.notNegative(bends, "number of bends");
        Require.positive(thickness, "thickness");
        Require.positive(area, "area");
        double gain = (tensile - yield) * factor * bends * thickness * thickness / area;
        return Math.min(yield + gain, (tensile + yield) / 2);
    }
}
