package cradlewright.mechanics.castor;

import java.util.List;

import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.formula.Require;

/**
 * Braked castors that hold a load on a slope ({@link CastorFormulas#BRAKE}).
 *
 * <p>A braked castor holds no more than friction gives and no more than its brake test has proved. Not looked at: swivels
 * that are not braked let the load turn about the braked ones; brakes wear, treads creep.
 *
 * @param needed force along the slope, N
 * @param capacity what the braked castors hold, N
 */
public record Brake(double needed, double capacity) {

    /** Horizontal force of the brake test over the rated load (EN 12530 / ISO 22881, test summary read). */
    public static final double TEST_FRACTION = 0.20;

    /**
     * One braked castor.
     *
     * @param pressing load square to the floor, N, not below zero; take the least one of all floor states
     * @param ratedMass rated load, kg, above zero
     */
    public record Braked(double pressing, double ratedMass) {

        /** Refuses values out of range. */
        public Braked {
            Require.notNegative(pressing, "load of the braked castor");
            Require.positive(ratedMass, "rated load");
        }

        /** Returns what the castor holds, N: the smaller of friction and brake test. */
        double capacity(double friction) {
            return Math.min(friction * pressing, testForce(ratedMass));
        }
    }

    /**
     * Loads of two castor lines on a slope, square to the floor.
     *
     * @param downhill load of the downhill line, N
     * @param uphill load of the uphill line, N; below zero the load tips downhill
     */
    public record LineLoads(double downhill, double uphill) {
    }

    /** Returns the horizontal force of the brake test, N, for a rated load in kg. */
    public static double testForce(double ratedMass) {
        return TEST_FRACTION * Require.positive(ratedMass, "rated load") * Constants.GRAVITY;
    }

    /**
     * Returns what is needed and what is held.
     *
     * @param weight weight, N, above zero
     * @param slope slope angle, rad, from 0 to 1
     * @param braked braked castors
     * @param friction friction coefficient of treads on the floor, not below zero
     */
    public static Brake hold(double weight, double slope, List<Braked> braked, double friction) {
        Require.notNegative(friction, "friction coefficient");
        double needed = Require.positive(weight, "weight") * Math.sin(Require.within(slope, 0, 1, "slope angle"));
        return new Brake(needed, braked.stream().mapToDouble(castor -> castor.capacity(friction)).sum());
    }

    /** Returns capacity over need; positive infinity on a level floor. */
    public double ratio() {
        return needed > 0 ? capacity / needed : Double.POSITIVE_INFINITY;
    }

    /**
     * Returns the loads of two castor lines that lie across the slope ({@link CastorFormulas#BRAKE_LINE_LOADS}); it makes no
     * difference which line is braked.
     *
     * @param weight weight, N, above zero
     * @param base distance of the lines along the slope, m, above zero
     * @param fromDownhill distance of the balance point uphill of the downhill line, m, from 0 to {@code base}
     * @param height height of the balance point square to the floor, m, not below zero
     * @param slope slope angle, rad, from 0 to 1
     */
    public static LineLoads lineLoads(double weight, double base, double fromDownhill, double height, double slope) {
        Require.positive(weight, "weight");
        Require.positive(base, "distance of the castor lines");
        Require.within(fromDownhill, 0, base, "distance of the balance point from the downhill line");
        Require.notNegative(height, "height of the balance point");
        double pressed = weight * Math.cos(Require.within(slope, 0, 1, "slope angle"));
        double uphill = (pressed * fromDownhill - weight * Math.sin(slope) * height) / base;
        return new LineLoads(pressed - uphill, uphill);
    }
}
