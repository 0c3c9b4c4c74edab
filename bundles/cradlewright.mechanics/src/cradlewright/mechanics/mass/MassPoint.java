package cradlewright.mechanics.mass;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;
import java.util.Objects;

/**
 * One part: its mass, where its balance point lies, and how well both are known (standard uncertainties, k = 1).
 *
 * @param mass mass in kg, not below zero
 * @param position balance point in m
 * @param massUncertainty standard uncertainty of the mass in kg
 * @param positionUncertainty standard uncertainty of each coordinate in m
 * @param scale name of the scale on which the mass was found; the mass errors of parts with the same name go together (fully
 *        correlated). {@link #NO_COMMON_SCALE} when the error has nothing to do with that of any other part
 */
public record MassPoint(double mass, Vec3 position, double massUncertainty, Vec3 positionUncertainty, String scale) {

    /** The scale name of a mass whose error is its own. */
    public static final String NO_COMMON_SCALE = "";

    /** Refuses values that are not finite, and masses or uncertainties below zero. */
    public MassPoint {
        Require.notNegative(mass, "mass");
        Checks.finite(position, "position");
        Require.notNegative(massUncertainty, "uncertainty of mass");
        Checks.notNegative(positionUncertainty, "uncertainty of position");
        Objects.requireNonNull(scale, "scale");
    }

    /** Returns a part whose mass and place are taken as exact. */
    public static MassPoint exact(double mass, Vec3 position) {
        return new MassPoint(mass, position, 0, Vec3.ZERO, NO_COMMON_SCALE);
    }

    /** Returns the same part with an error of the mass that is its own. */
    public MassPoint onItsOwnScale() {
        return new MassPoint(mass, position, massUncertainty, positionUncertainty, NO_COMMON_SCALE);
    }

    /** Returns mass and balance point without the uncertainties; a part without mass has none. */
    public Balance balance() {
        return new Balance(mass, position);
    }
}
