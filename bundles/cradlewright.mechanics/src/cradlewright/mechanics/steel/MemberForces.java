package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;

/**
 * Forces and moments on a cross-section in the axes of its drawing (y right, z up, x towards the viewer).
 *
 * @param n axial force at the centroid, tension positive, N
 * @param vy shear along y, N
 * @param vz shear along z, N
 * @param t torque about the shear centre, or the share of it that is carried as in a bar free to warp, N*m
 * @param my moment about y, above zero pulls the upper side, N*m
 * @param mz moment about z, above zero presses the right side, N*m
 * @param tw share of the torque that is carried by restrained warping, N*m
 * @param b bimoment, N*m2
 */
public record MemberForces(double n, double vy, double vz, double t, double my, double mz, double tw, double b) {

    /** Refuses values that are not finite. */
    public MemberForces {
        Require.finite(n, "axial force");
        Require.finite(vy, "shear along y");
        Require.finite(vz, "shear along z");
        Require.finite(t, "torque");
        Require.finite(my, "moment about y");
        Require.finite(mz, "moment about z");
        Require.finite(tw, "torque by warping");
        Require.finite(b, "bimoment");
    }

    /** Makes forces whose torque is carried as in a bar that is free to warp. */
    public MemberForces(double n, double vy, double vz, double t, double my, double mz) {
        this(n, vy, vz, t, my, mz, 0, 0);
    }

    /** Returns the same forces with the torque split into its shares. */
    public MemberForces twisted(TwistShares shares) {
        return new MemberForces(n, vy, vz, shares.uniform(), my, mz, shares.warping(), shares.bimoment());
    }

    /** All forces times a factor. */
    public MemberForces times(double factor) {
        return new MemberForces(factor * n, factor * vy, factor * vz, factor * t, factor * my, factor * mz, factor * tw, factor * b);
    }
}
