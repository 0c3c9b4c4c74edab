package cradlewright.mechanics.castor;

import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.formula.Require;

/**
 * Two castors of one line pushed slowly against a step: does the load climb it, tip over it, or neither
 * ({@link CastorFormulas#STEP_CLIMB}).
 *
 * <p>The corner of the step pushes through the axle, so pushing above the axle presses the blocked castors down further.
 * Rigid wheels and load, freely turning wheels, push level and square to the step, level floor. Neglected: give of the tread,
 * friction that helps a driven wheel, a castor fork that swings under.
 *
 * @param kappa push at the axle over load of the blocked castors; positive infinity from a step as high as the radius
 * @param climbForce push that climbs, N; positive infinity when no push does
 * @param tipForce push at which the other castor line lifts, N; positive infinity for a push at or below axle height
 * @param outcome what happens first as the push grows
 */
public record StepClimb(double kappa, double climbForce, double tipForce, Outcome outcome) {

    /** What a growing push does. */
    public enum Outcome {
        /** The castors climb the step. */
        CLIMBS,
        /** The load tips over the blocked castors before they climb. */
        TIPS,
        /** No push of this kind gets it over. */
        CANNOT
    }

    /**
     * Returns forces and outcome.
     *
     * @param blockedLoad load of the castor line at the step on a level floor, N, above zero
     * @param otherLoad load of the other castor line, N, above zero
     * @param base distance of the two lines, m, above zero
     * @param wheelRadius wheel radius, m, above zero
     * @param step height of the step, m, above zero
     * @param pushHeight height of the push above the floor, m, above zero
     */
    public static StepClimb of(double blockedLoad, double otherLoad, double base, double wheelRadius, double step,
            double pushHeight) {
        Require.positive(blockedLoad, "load of the blocked castors");
        Require.positive(otherLoad, "load of the other castors");
        Require.positive(base, "distance of the castor lines");
        double arm = Require.positive(pushHeight, "height of the push") - Require.positive(wheelRadius, "wheel radius");
        Require.positive(step, "height of the step");
        double tip = arm > 0 ? otherLoad * base / arm : Double.POSITIVE_INFINITY;
        if (step >= wheelRadius) {
            return new StepClimb(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, tip,
                    arm > 0 ? Outcome.TIPS : Outcome.CANNOT);
        }
        double kappa = kappa(wheelRadius, step);
        double left = 1 - kappa * arm / base;
        double climb = left > 0 ? blockedLoad * kappa / left : Double.POSITIVE_INFINITY;
        return new StepClimb(kappa, climb, tip, climb <= tip ? Outcome.CLIMBS : Outcome.TIPS);
    }

    /** Returns the push at axle height that starts a wheel over a step lower than its radius, N: {@code load} times kappa. */
    public static double axleForce(double load, double wheelRadius, double step) {
        Require.positive(load, "load of the wheel");
        return load * kappa(Require.positive(wheelRadius, "wheel radius"), step);
    }

    private static double kappa(double wheelRadius, double step) {
        requireBelowRadius(wheelRadius, step);
        return Math.sqrt(step * (2 * wheelRadius - step)) / (wheelRadius - step);
    }

    private static void requireBelowRadius(double wheelRadius, double step) {
        Require.notNegative(step, "height of the step");
        if (step >= wheelRadius) {
            throw new IllegalArgumentException("the step must be lower than the wheel radius " + wheelRadius + ", found " + step);
        }
    }

    /** Returns the speed at which energy alone lifts the wheel load over a step, m/s ({@link CastorFormulas#STEP_SPEED}). */
    public static double energySpeed(double step) {
        return Math.sqrt(2 * Constants.GRAVITY * Require.notNegative(step, "height of the step"));
    }

    /** Returns the same when the hit at the corner loses what a plastic hit loses, m/s; the step lower than the radius. */
    public static double plasticHitSpeed(double wheelRadius, double step) {
        Require.positive(wheelRadius, "wheel radius");
        requireBelowRadius(wheelRadius, step);
        return energySpeed(step) * wheelRadius / (wheelRadius - step);
    }

    /**
     * Returns whether a push of the given size tips rather than climbs: it reaches the tipping force, and climbing needs more
     * than that.
     */
    public boolean tipsAt(double push) {
        return outcome == Outcome.TIPS && Require.notNegative(push, "push") >= tipForce;
    }
}
