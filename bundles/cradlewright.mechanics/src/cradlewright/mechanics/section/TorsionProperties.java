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
 * @param warpingModulus bimoment over this is the largest normal stress, I_w over the largest sectorial coordinate; 0 where nothing
 *        warps, m4
 * @param warpingShear torque carried by warping over this is the largest shear stress of it; 0 where nothing warps, m3
 */
public record TorsionProperties(double constant, double modulus, double warping, double shearCentreY, double shearCentreZ,
        double warpingModulus, double warpingShear) {

    /** Refuses values that no real section has. */
    public TorsionProperties {
        Require.positive(constant, "torsion constant");
        Require.positive(modulus, "torsion modulus");
        Require.notNegative(warping, "warping constant");
        Require.finite(shearCentreY, "shear centre y");
        Require.finite(shearCentreZ, "shear centre z");
        Require.notNegative(warpingModulus, "warping modulus");
        Require.notNegative(warpingShear, "warping shear modulus");
    }

    /** Makes the properties of a section whose warping is left out: closed ones, flats, and strips that meet in one point. */
    public TorsionProperties(double constant, double modulus, double warping, double shearCentreY, double shearCentreZ) {
        this(constant, modulus, warping, shearCentreY, shearCentreZ, 0, 0);
    }

    /** Tells whether a part of the torque is carried by warping, so that normal stress comes with the twist. */
    public boolean warps() {
        return warpingModulus > 0;
    }
}
