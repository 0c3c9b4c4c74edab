package cradlewright.mechanics.mass;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * A mass and its balance point (centre of gravity).
 *
 * @param mass mass in kg, above zero
 * @param point balance point in m
 */
public record Balance(double mass, Vec3 point) {

    /** Refuses a mass that is not above zero and a point that is not finite. */
    public Balance {
        Require.positive(mass, "mass");
        Checks.finite(point, "balance point");
    }

    /** Returns this and {@code other} together: m = m1 + m2, c = (m1 c1 + m2 c2)/m; see {@link MassFormulas#BALANCE}. */
    public Balance plus(Balance other) {
        double sum = mass + other.mass;
        return new Balance(sum, point.times(mass / sum).plus(other.point.times(other.mass / sum)));
    }

    /**
     * Returns what is left once {@code part} is taken off: c' = (m c - mp cp)/(m - mp); see {@link MassFormulas#BALANCE}.
     *
     * @throws IllegalArgumentException when the part is as heavy as the whole or heavier
     */
    public Balance minus(Balance part) {
        double rest = mass - part.mass;
        Require.positive(rest, "mass left after removal");
        return new Balance(rest, point.times(mass / rest).minus(part.point.times(part.mass / rest)));
    }
}
