package cradlewright.mechanics.castor;

import cradlewright.mechanics.formula.Require;

/**
 * The conditions under which a rated load holds, and those of the rating test ({@link CastorFormulas#NORM_TEST}). Outside them
 * the rating is void; no derating curve is given because none was found in a standard.
 */
public final class CastorLimits {

    /** Highest speed, m/s: 4 km/h (trade glossary citing EN 12532). */
    public static final double HIGHEST_SPEED = 4 / 3.6;
    /** Lowest temperature, degC (trade glossary citing EN 12532). */
    public static final double LOWEST_CELSIUS = 10;
    /** Highest temperature, degC (trade glossary citing EN 12532). */
    public static final double HIGHEST_CELSIUS = 30;
    /** Static test load over rated load, held one hour (EN 12530 / ISO 22881 test summary). */
    public static final double STATIC_TEST = 1.5;

    private static final double OBSTACLE_OF_DIAMETER = 0.03;
    private static final double CROSSINGS_PER_METRE = 10_000;

    private CastorLimits() {
    }

    /** Returns whether the rating holds at a temperature (degC) and a speed (m/s, not below zero). */
    public static boolean ratingHolds(double celsius, double speed) {
        Require.within(celsius, -273.15, 1000, "temperature");
        Require.notNegative(speed, "speed");
        return celsius >= LOWEST_CELSIUS && celsius <= HIGHEST_CELSIUS && speed <= HIGHEST_SPEED;
    }

    /** Returns the height of the obstacles of the running test, m: 3 % of the wheel diameter (m, above zero). */
    public static double testObstacle(double diameter) {
        return OBSTACLE_OF_DIAMETER * Require.positive(diameter, "wheel diameter");
    }

    /** Returns the number of obstacle crossings of the running test: ten times the wheel diameter (m, above zero) in mm. */
    public static double testCrossings(double diameter) {
        return CROSSINGS_PER_METRE * Require.positive(diameter, "wheel diameter");
    }
}
