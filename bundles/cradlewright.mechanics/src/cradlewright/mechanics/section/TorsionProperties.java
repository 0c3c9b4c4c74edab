package cradlewright.mechanics.section;

import cradlewright.mechanics.formula.Require;

/**
 * What a section opposes to twisting.
 *
 * @param constant Saint-Venant constant J (I_t of EN 1993), m4
 * @param modulus largest shear stress is torque over this, m3
 * @param warping warping constant I_w about the shear centre, 0 where it is left out, m6
 * @param shearCentreY in the drawing, m
 * @param shearCentreZ in the drawing, m
 */
public record TorsionProperties(double constant, double modulus, double warping, double shearCentreY, double shearCentreZ) {

    /** Refuses values that no real section has. */
    public TorsionProperties {
        Require.positive(constant, "torsion constant");
        Require.positive(modulus, "torsion modulus");
        Require.notNegative(warping, "warping constant");
        Require.finite(shearCentreY, "shear centre y");
        Require.finite(shearCentreZ, "shear centre z");
    }
}
