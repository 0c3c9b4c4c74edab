package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Require;
import java.util.OptionalDouble;

/**
 * How a car shares its mass between the front and the rear arms of a two-post lift, by moments; see
 * {@link LiftingFormulas#TWO_POST_SHARE}. Must be asked again with the parts off that will come off on the lift.
 *
 * @param mass mass on the lift, kg
 * @param balancePoint x of the balance point, m
 * @param frontArms x of the front pads, m
 * @param rearArms x of the rear pads, m, greater than that of the front pads
 */
public record TwoPostShare(double mass, double balancePoint, double frontArms, double rearArms) {

    /**
     * Where the balance point may lie.
     *
     * @param from foremost x, m
     * @param to rearmost x, m
     */
    public record Window(double from, double to) {
    }

    /** Refuses a mass that is not above zero and rear pads that are not behind the front ones. */
    public TwoPostShare {
        Require.positive(mass, "mass");
        Require.finite(balancePoint, "x of the balance point");
        requireSpan(frontArms, rearArms);
    }

    /** Returns the mass on the front arms together, kg; below zero when the balance point lies behind the rear pads. */
    public double front() {
        return mass * (rearArms - balancePoint) / (rearArms - frontArms);
    }

    /** Returns the mass on the rear arms together, kg; below zero when the balance point lies ahead of the front pads. */
    public double rear() {
        return mass - front();
    }

    /** Returns true when the balance point is not between the pads: the car goes over the end. */
    public boolean goesOver() {
        return front() <= 0 || rear() <= 0;
    }

    /** Returns front to rear; empty when one end carries nothing. */
    public OptionalDouble ratio() {
        return goesOver() ? OptionalDouble.empty() : OptionalDouble.of(front() / rear());
    }

    /** Returns true when both ends carry and the share lies within the limits. */
    public boolean within(ShareLimits limits) {
        return !goesOver() && front() >= limits.lowest() * rear() && front() <= limits.highest() * rear();
    }

    /**
     * Returns true when the heavier end is on the shorter arms, as wanted for arms of unequal length.
     *
     * @param frontLength length of the front arms, m
     * @param rearLength length of the rear arms, m
     */
    public boolean heavierEndOnShorterArms(double frontLength, double rearLength) {
        double difference = Require.positive(frontLength, "length of the front arms")
                - Require.positive(rearLength, "length of the rear arms");
        return difference * (front() - rear()) <= 0;
    }

    /**
     * Returns where the balance point must lie so that the share keeps the limits: with front to rear r, x = x_f + span/(1 + r).
     *
     * @param frontArms x of the front pads, m
     * @param rearArms x of the rear pads, m
     */
    public static Window window(double frontArms, double rearArms, ShareLimits limits) {
        requireSpan(frontArms, rearArms);
        double span = rearArms - frontArms;
        return new Window(frontArms + span / (1 + limits.highest()), frontArms + span / (1 + limits.lowest()));
    }

    private static void requireSpan(double frontArms, double rearArms) {
        Require.finite(frontArms, "x of the front pads");
        Require.finite(rearArms, "x of the rear pads");
        Require.positive(rearArms - frontArms, "distance from the front to the rear pads");
    }
}
