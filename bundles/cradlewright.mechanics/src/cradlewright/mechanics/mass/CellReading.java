package cradlewright.mechanics.mass;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * What one load cell (or scale) under a body shows.
 *
 * @param position where the cell touches the body, in the axes of the body, m
 * @param mass reading in kg, not below zero
 * @param massUncertainty standard uncertainty of the reading, kg, above zero
 * @param positionUncertainty standard uncertainty of the place in each direction, m
 */
public record CellReading(Vec3 position, double mass, double massUncertainty, double positionUncertainty) {

    /** Refuses values that are not finite or out of range. */
    public CellReading {
        Checks.finite(position, "position of the cell");
        Require.notNegative(mass, "reading");
        Require.positive(massUncertainty, "uncertainty of the reading");
        Require.notNegative(positionUncertainty, "uncertainty of the position");
    }
}
