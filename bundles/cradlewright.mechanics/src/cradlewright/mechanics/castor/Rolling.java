package cradlewright.mechanics.castor;

import cradlewright.mechanics.formula.Require;

/**
 * Push that rolls a load, as a range ({@link CastorFormulas#ROLLING}, {@link CastorFormulas#SLOPE}). No single figure deserves
 * trust: tables of rolling friction disagree by a factor of several.
 *
 * <p>Neglected: dirt, flats from standing, bearings in poor state, joints, draughts.
 */
public final class Rolling {

    /** Least rolling coefficient on a hard level floor with well kept castors (health and safety authority). */
    public static final double HARD_FLOOR = 0.02;
    /** Rolling coefficient that soft or uneven floors reach (health and safety authority). */
    public static final double SOFT_FLOOR = 0.10;
    /** What swivels turned across multiply the force to start by; common practice, no source. */
    public static final Range TURNED_SWIVELS = new Range(2, 3);
    /** Largest slope of ways for transport by hand in new workplaces (German workplace rule ASR A1.8 table 1). */
    public static final double LARGEST_SLOPE = 0.06;

    private Rolling() {
    }

    /**
     * Returns the span of rolling coefficients from the percentage and the lever arm rule together.
     *
     * @param tread tread and floor
     * @param wheelRadius wheel radius, m, above zero
     * @param softOrUneven whether the floor is soft or uneven: the high end is then at least {@link #SOFT_FLOOR}
     */
    public static Range coefficient(TreadOnFloor tread, double wheelRadius, boolean softOrUneven) {
        Range arm = tread.leverArm();
        double low = leverArmForce(1, arm.low(), wheelRadius);
        double high = leverArmForce(1, arm.high(), wheelRadius);
        return new Range(Math.min(low, HARD_FLOOR), Math.max(high, softOrUneven ? SOFT_FLOOR : HARD_FLOOR));
    }

    /** Returns W f/r, N: weight (N, above zero), lever arm (m, not below zero), wheel radius (m, above zero). */
    public static double leverArmForce(double weight, double leverArm, double wheelRadius) {
        return Require.positive(weight, "weight") * Require.notNegative(leverArm, "lever arm")
                / Require.positive(wheelRadius, "wheel radius");
    }

    /** Returns the push on a level floor, N, swivels trailing; weight in N, coefficients not below zero. */
    public static Range level(double weight, Range coefficient) {
        return upSlope(weight, 0, coefficient);
    }

    /**
     * Returns the push along the floor up a slope, N: W (sin a + c cos a).
     *
     * @param weight weight, N, above zero
     * @param slope slope angle, rad, from 0 to below pi/2
     * @param coefficient rolling coefficients, not below zero
     */
    public static Range upSlope(double weight, double slope, Range coefficient) {
        requireCoefficient(coefficient);
        return along(weight, slope, coefficient.low(), coefficient.high());
    }

    /**
     * Returns the force along the floor that holds the load back on the way down, N: W (sin a - c cos a). Below zero it has
     * to be pushed.
     */
    public static Range holdBack(double weight, double slope, Range coefficient) {
        requireCoefficient(coefficient);
        return along(weight, slope, -coefficient.high(), -coefficient.low());
    }

    private static void requireCoefficient(Range coefficient) {
        Require.notNegative(coefficient.low(), "rolling coefficient");
    }

    private static Range along(double weight, double slope, double low, double high) {
        Require.positive(weight, "weight");
        Require.within(slope, 0, 1.57, "slope angle");
        double down = weight * Math.sin(slope);
        double pressed = weight * Math.cos(slope);
        return new Range(down + pressed * low, down + pressed * high);
    }

    /** Returns the push to start with the swivels turned across, N. The lever arms describe starting already: a cautious end. */
    public static Range turnedStart(Range rolling) {
        return new Range(rolling.low() * TURNED_SWIVELS.low(), rolling.high() * TURNED_SWIVELS.high());
    }
}
