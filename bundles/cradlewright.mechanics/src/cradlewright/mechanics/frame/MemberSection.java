package cradlewright.mechanics.frame;

import cradlewright.mechanics.formula.Require;

/**
 * What a member opposes to being stretched, bent and twisted, in the axes of the member (principal axes of the section).
 *
 * @param e modulus of elasticity, Pa
 * @param g shear modulus, Pa
 * @param area m2
 * @param iy second moment about y, the integral of z2, m4
 * @param iz second moment about z, the integral of y2, m4
 * @param j torsion constant, m4
 * @param shearAreaY shear area for a force along y, m2; {@link #NO_SHEAR} to leave the shear strain out
 * @param shearAreaZ shear area for a force along z, m2; {@link #NO_SHEAR} to leave the shear strain out
 */
public record MemberSection(double e, double g, double area, double iy, double iz, double j, double shearAreaY,
        double shearAreaZ) {

    /** Shear area of a member whose shear strain is left out (Euler and Bernoulli). */
    public static final double NO_SHEAR = Double.POSITIVE_INFINITY;

    /** Refuses values that are not above zero. */
    public MemberSection {
        Require.positive(e, "modulus of elasticity");
        Require.positive(g, "shear modulus");
        Require.positive(area, "section area");
        Require.positive(iy, "Iy");
        Require.positive(iz, "Iz");
        Require.positive(j, "torsion constant");
        requireShearArea(shearAreaY, "shear area along y");
        requireShearArea(shearAreaZ, "shear area along z");
    }

    private static void requireShearArea(double value, String name) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(name + " must be above zero, found " + value);
        }
    }

    /** Returns a section whose shear strain is left out. */
    public static MemberSection withoutShear(double e, double g, double area, double iy, double iz, double j) {
        return new MemberSection(e, g, area, iy, iz, j, NO_SHEAR, NO_SHEAR);
    }
}
