package cradlewright.mechanics.section;

import cradlewright.mechanics.formula.Require;

/**
 * The three shear areas for a force along one axis: they differ, mixing them is a usual error.
 *
 * @param plastic A_v of EN 1993-1-1 6.2.6(3), for the plastic shear resistance, m2
 * @param elastic force over this is the largest elastic shear stress, m2
 * @param deflection Timoshenko shear area of the frame element, by equal strain energy, m2
 */
public record ShearAreas(double plastic, double elastic, double deflection) {

    /** Refuses areas that are not above zero. */
    public ShearAreas {
        Require.positive(plastic, "plastic shear area");
        Require.positive(elastic, "elastic shear area");
        Require.positive(deflection, "deflection shear area");
    }
}
