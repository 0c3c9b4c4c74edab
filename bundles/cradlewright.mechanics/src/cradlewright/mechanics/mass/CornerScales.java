package cradlewright.mechanics.mass;

import cradlewright.mechanics.formula.Require;

/**
 * A car on four level scales, wheels free to turn: mass, balance point seen from above, cross share; see
 * {@link MassFormulas#CORNER_SCALES}.
 *
 * @param frontLeft reading in kg
 * @param frontRight reading in kg
 * @param rearRight reading in kg
 * @param rearLeft reading in kg
 * @param wheelbase distance of the axles in m
 * @param frontTrack distance of the front contacts on the scales in m
 * @param rearTrack distance of the rear contacts on the scales in m
 */
public record CornerScales(double frontLeft, double frontRight, double rearRight, double rearLeft, double wheelbase,
        double frontTrack, double rearTrack) {

    /** Refuses readings below zero or that sum to nothing, and lengths that are not above zero. */
    public CornerScales {
        Require.notNegative(frontLeft, "front left reading");
        Require.notNegative(frontRight, "front right reading");
        Require.notNegative(rearRight, "rear right reading");
        Require.notNegative(rearLeft, "rear left reading");
        Require.positive(frontLeft + frontRight + rearRight + rearLeft, "sum of the readings");
        Require.positive(wheelbase, "wheelbase");
        Require.positive(frontTrack, "front track");
        Require.positive(rearTrack, "rear track");
    }

    /** Returns the mass in kg. */
    public double mass() {
        return frontLeft + frontRight + rearRight + rearLeft;
    }

    /** Returns how far behind the front axle the balance point lies, m. */
    public double behindFrontAxle() {
        return wheelbase * (rearLeft + rearRight) / mass();
    }

    /** Returns how far to the right of the middle the balance point lies, m. */
    public double toTheRight() {
        return ((frontRight - frontLeft) * frontTrack + (rearRight - rearLeft) * rearTrack) / (2 * mass());
    }

    /**
     * Returns (front right + rear left)/mass. It says how the four supports are tensed against each other and nothing about the
     * balance point.
     */
    public double crossShare() {
        return (frontRight + rearLeft) / mass();
    }

    /** Returns the standard uncertainty of the mass in kg when each reading has {@code reading} kg of its own. */
    public double massUncertainty(double reading) {
        return 2 * Require.notNegative(reading, "uncertainty of a reading");
    }

    /** Returns the standard uncertainty in m of {@link #behindFrontAxle} when each reading has {@code reading} kg of its own. */
    public double behindFrontAxleUncertainty(double reading) {
        double x = behindFrontAxle();
        return Require.notNegative(reading, "uncertainty of a reading") / mass()
                * Math.sqrt(2 * x * x + 2 * (wheelbase - x) * (wheelbase - x));
    }

    /** Returns the standard uncertainty in m of {@link #toTheRight} when each reading has {@code reading} kg of its own. */
    public double toTheRightUncertainty(double reading) {
        double y = toTheRight();
        double front = frontTrack / 2;
        double rear = rearTrack / 2;
        return Require.notNegative(reading, "uncertainty of a reading") / mass()
                * Math.sqrt(2 * (front * front + rear * rear + 2 * y * y));
    }
}
