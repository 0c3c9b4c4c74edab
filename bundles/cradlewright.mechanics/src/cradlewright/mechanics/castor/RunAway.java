package cradlewright.mechanics.castor;

import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.formula.Require;

/**
 * Whether an unbraked load rolls off by itself on a slope, and how fast it gets ({@link CastorFormulas#RUN_AWAY}).
 *
 * <p>The low end of the rolling coefficient is the dangerous one, and no table gives it: tables and percentages are made for
 * pushing and lie on the high side. Unless a test of the loaded castors says otherwise take a low end near zero. Neglected:
 * turning inertia of the wheels, air, swivels that steer into the slope (all but the last on the safe side).
 */
public final class RunAway {

    /** What the range of rolling coefficients says. */
    public enum Verdict {
        /** Rolls off even at the high end. */
        ROLLS,
        /** Between the ends: treat it as rolling off. */
        MAY_ROLL,
        /** Stands even at the low end, as far as that end is known. */
        STANDS
    }

    private RunAway() {
    }

    /**
     * Returns whether the load rolls off: the tangent of the slope above the rolling coefficient.
     *
     * @param slope slope angle, rad, from 0 to 1
     * @param coefficient rolling coefficients, not below zero
     */
    public static Verdict verdict(double slope, Range coefficient) {
        if (acceleration(slope, coefficient.high()) > 0) {
            return Verdict.ROLLS;
        }
        return acceleration(slope, coefficient.low()) > 0 ? Verdict.MAY_ROLL : Verdict.STANDS;
    }

    /** Returns g (sin a - c cos a), m/s2, zero for a load that stands; slope in rad from 0 to 1, c not below zero. */
    public static double acceleration(double slope, double coefficient) {
        Require.within(slope, 0, 1, "slope angle");
        Require.notNegative(coefficient, "rolling coefficient");
        return Math.max(0, Constants.GRAVITY * (Math.sin(slope) - coefficient * Math.cos(slope)));
    }

    /** Returns the speed after a distance along the slope from rest, m/s; distance in m, not below zero. */
    public static double speedAfter(double distance, double slope, double coefficient) {
        return Math.sqrt(2 * acceleration(slope, coefficient) * Require.notNegative(distance, "distance"));
    }

    /** Returns the way a load runs out on a level floor, m: v^2/(2 g c); speed not below zero, coefficient above zero. */
    public static double runOut(double speed, double coefficient) {
        Require.notNegative(speed, "speed");
        return speed * speed / (2 * Constants.GRAVITY * Require.positive(coefficient, "rolling coefficient"));
    }

    /** Returns the rolling coefficient from a test: tangent of the slope (rad, 0 to 1) on which a slow roll keeps its speed. */
    public static double coefficientFromTest(double slope) {
        return Math.tan(Require.within(slope, 0, 1, "slope angle"));
    }
}
