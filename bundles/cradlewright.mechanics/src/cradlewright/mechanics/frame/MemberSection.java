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
 * @param shearCentreY from the centroid to the shear centre along y, m
 * @param shearCentreZ from the centroid to the shear centre along z, m
 */
public record MemberSection(double e, double g, double area, double iy, double iz, double j, double shearAreaY,
        double shearAreaZ, double shearCentreY, double shearCentreZ) {

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
        Require.finite(shearCentreY, "shear centre along y");
        Require.finite(shearCentreZ, "shear centre along z");
    }

    /** Makes a section whose shear centre is its centroid, as with every section that two axes of symmetry divide. */
    public MemberSection(double e, double g, double area, double iy, double iz, double j, double shearAreaY, double shearAreaZ) {
        this(e, g, area, iy, iz, j, shearAreaY, shearAreaZ, 0, 0);
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

    /** Returns the same section with its shear centre at a distance from the centroid, m. */
    public MemberSection withShearCentre(double y, double z) {
        return new MemberSection(e, g, area, iy, iz, j, shearAreaY, shearAreaZ, y, z);
    }

    /** Returns the same section with another torsion constant, m4. */
    public MemberSection withTorsionConstant(double other) {
        return new MemberSection(e, g, area, iy, iz, other, shearAreaY, shearAreaZ, shearCentreY, shearCentreZ);
    }

    /** Returns what shear forces through the shear centre add to the torque about the centroid, N*m. */
    double shearTorque(double vy, double vz) {
        return shearCentreY * vz - shearCentreZ * vy;
    }
}
