package cradlewright.mechanics.tipping;

import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.formula.Require;

/**
 * A rolling load whose leading castors are stopped dead: the speed at which it goes over them ({@link TippingFormulas#KERB}).
 *
 * <p>Rigid load, plastic hit at floor level, no bounce, no shifting parts, level floor.
 *
 * @param rise rise of the balance point until it stands above the stopped castors, m
 * @param lowSpeed v_low, m/s: all kinetic energy lifts the load; safe lower bound whatever the inertia
 * @param criticalSpeed v_crit, m/s: angular momentum about the stopped castors kept; the best estimate
 */
public record KerbHit(double rise, double lowSpeed, double criticalSpeed) {

    /**
     * Returns the speeds.
     *
     * @param height height of the balance point, m, above zero
     * @param distance distance of the balance point behind the stopped castor line, m, above zero
     * @param gyration square of the radius of gyration about the axis through the balance point along the castor line, I_c/m,
     *     m2, not below zero; zero is the point mass, on the safe side
     */
    public static KerbHit of(double height, double distance, double gyration) {
        Require.positive(height, "height of the balance point");
        Require.positive(distance, "distance of the balance point from the stopped castors");
        Require.notNegative(gyration, "square of the radius of gyration");
        double radius = Math.hypot(height, distance);
        double rise = distance * distance / (radius + height);
        double aboutPivot = gyration + radius * radius;
        return new KerbHit(rise, Math.sqrt(2 * Constants.GRAVITY * rise),
                Math.sqrt(2 * Constants.GRAVITY * rise * aboutPivot) / height);
    }

    /** Returns whether the safe lower bound reaches the given speed (m/s, not below zero). */
    public boolean survives(double speed) {
        return lowSpeed >= Require.notNegative(speed, "speed");
    }
}
