package cradlewright.mechanics.timber;

import cradlewright.mechanics.formula.Require;

/**
 * A rail of solid timber, rectangular, checked by EN 1995-1-1 with factored actions.
 *
 * <p>Neglected and to be stated: lateral buckling (6.3.3) - deep narrow rails on edge need side support -, notches, holes of
 * bolts, axial force, creep, load sharing between rails.
 *
 * @param timber strength class
 * @param width b across the load, m
 * @param depth h along the load, m
 * @param serviceClass dampness
 * @param duration the shortest action of the combination (3.1.3(2)); check the lasting actions alone as well
 * @param gammaM partial factor, 1 to 3; recommended {@link #GAMMA_M}
 */
public record TimberRail(TimberClass timber, double width, double depth, ServiceClass serviceClass, LoadDuration duration,
        double gammaM) {

    /** Recommended partial factor of solid timber (EN 1995-1-1 Table 2.3). */
    public static final double GAMMA_M = 1.3;
    /** Crack factor of solid timber in shear (EN 1995-1-1 6.1.7(2)). */
    public static final double CRACK_FACTOR = 0.67;

    private static final double LARGEST_SIZE = 1;
    private static final double REFERENCE_DEPTH = 0.150;
    private static final double LARGEST_DEPTH_FACTOR = 1.3;
    private static final double REDISTRIBUTION = 0.7;

    /** Refuses values out of range. */
    public TimberRail {
        if (timber == null || serviceClass == null || duration == null) {
            throw new IllegalArgumentException("a timber rail needs its strength class, service class and duration of load");
        }
        Require.within(Require.positive(width, "rail width"), 0, LARGEST_SIZE, "rail width");
        Require.within(Require.positive(depth, "rail depth"), 0, LARGEST_SIZE, "rail depth");
        Require.within(gammaM, 1, 3, "gamma_M of timber");
    }

    /**
     * Returns the factor of small depths, k_h = min((150 mm/h)^0.2, 1.3), 1 from 150 mm on; see
     * {@link TimberFormulas#DEPTH_FACTOR}.
     *
     * @param depth depth along the load, m, above zero
     * @throws IllegalArgumentException if the depth is not above zero
     */
    public static double depthFactor(double depth) {
        Require.positive(depth, "rail depth");
        return depth >= REFERENCE_DEPTH ? 1 : Math.min(Math.pow(REFERENCE_DEPTH / depth, 0.2), LARGEST_DEPTH_FACTOR);
    }

    private double design(double characteristic) {
        return characteristic * serviceClass.modification(duration) / gammaM;
    }

    /** Returns f_m,d for bending over the depth, Pa. */
    public double bendingStrength() {
        return design(timber.bendingStrength()) * depthFactor(depth);
    }

    /** Returns f_m,d for bending over the width (sideways), Pa. */
    public double sidewaysBendingStrength() {
        return design(timber.bendingStrength()) * depthFactor(width);
    }

    /** Returns f_v,d, Pa. */
    public double shearStrength() {
        return design(timber.shearStrength());
    }

    /** Returns f_c,90,d, Pa. */
    public double strengthAcrossGrain() {
        return design(timber.strengthAcrossGrain());
    }

    /**
     * Bending both ways, the larger of the two sums of 6.1.6, to be at most 1; see {@link TimberFormulas#BENDING}.
     *
     * @param moment design moment over the depth, N m, either sign
     * @param sidewaysMoment design moment over the width, N m, either sign
     * @throws IllegalArgumentException if a moment is not finite
     */
    public double bendingUse(double moment, double sidewaysMoment) {
        double upright = Math.abs(Require.finite(moment, "moment of the rail")) * 6 / (width * depth * depth)
                / bendingStrength();
        double sideways = Math.abs(Require.finite(sidewaysMoment, "sideways moment of the rail")) * 6 / (depth * width * width)
                / sidewaysBendingStrength();
        return Math.max(upright + REDISTRIBUTION * sideways, REDISTRIBUTION * upright + sideways);
    }

    /**
     * Largest shear stress tau_d = 1.5 V/(k_cr b h), Pa; see {@link TimberFormulas#SHEAR}.
     *
     * @param shear design shear force, N, either sign
     * @throws IllegalArgumentException if the force is not finite
     */
    public double shearStress(double shear) {
        return 1.5 * Math.abs(Require.finite(shear, "shear of the rail")) / (CRACK_FACTOR * width * depth);
    }

    /** Returns shear stress over f_v,d, to be at most 1; throws as {@link #shearStress(double)}. */
    public double shearUse(double shear) {
        return shearStress(shear) / shearStrength();
    }

    /**
     * Pressure across the grain under a seat over f_c,90,d, to be at most 1, with k_c,90 = 1 and without the spread that 6.1.5
     * allows (safe side); see {@link TimberFormulas#BEARING}.
     *
     * @param force design force on the seat, N, not negative
     * @param seatLength length of the seat along the grain, m, above zero
     * @param seatWidth width of the seat, m, above zero and at most the rail width
     * @throws IllegalArgumentException if a value is out of range
     */
    public double seatUse(double force, double seatLength, double seatWidth) {
        Require.notNegative(force, "force on the seat");
        Require.positive(seatLength, "length of the seat");
        Require.within(Require.positive(seatWidth, "width of the seat"), 0, width, "width of the seat");
        return force / (seatLength * seatWidth) / strengthAcrossGrain();
    }
}
