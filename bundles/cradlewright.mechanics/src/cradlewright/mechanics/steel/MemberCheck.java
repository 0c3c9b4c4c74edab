package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;

/**
 * Compression together with bending over the length of a member: linear sum of buckling and bending in which each moment is
 * enlarged as by a strut under the same moment at both ends.
 *
 * @see SteelFormulas#MEMBER_SUM
 */
public final class MemberCheck {

    private static final double NEAR_CRITICAL = 0.99;

    private MemberCheck() {
    }

    /**
     * Enlargement of a uniform first-order moment by an axial force: 1/cos(pi/2 sqrt(N/N_cr)). From 0.99 N_cr on it stays at
     * that value; the buckling check fails there by itself.
     */
    public static double enlargement(double compression, double criticalForce) {
        Require.positive(criticalForce, "critical force");
        double share = Math.min(NEAR_CRITICAL, Require.notNegative(compression, "compression") / criticalForce);
        return 1 / Math.cos(Math.PI / 2 * Math.sqrt(share));
    }

    /**
     * N/N_b,Rd + e_y My/M_b,Rd + e_z Mz/Mz,Rd with the enlargements e of the Euler forces about y and z.
     *
     * @param compression N, not below zero
     * @param buckling resistance of the strut
     * @param my largest moment about y, N*m
     * @param resistanceY moment resistance about y with sideways buckling, N*m
     * @param eulerY Euler force about y, N
     * @param mz largest moment about z, N*m
     * @param resistanceZ moment resistance about z, N*m
     * @param eulerZ Euler force about z, N
     */
    public static Utilisation sum(double compression, FlexuralBuckling buckling, double my, double resistanceY, double eulerY,
            double mz, double resistanceZ, double eulerZ) {
        Require.positive(resistanceY, "moment resistance about y");
        Require.positive(resistanceZ, "moment resistance about z");
        double sum = compression / buckling.resistance() + enlargement(compression, eulerY) * Math.abs(my) / resistanceY
                + enlargement(compression, eulerZ) * Math.abs(mz) / resistanceZ;
        return new Utilisation(SteelFormulas.MEMBER_SUM.id(), "compression and bending of the member", sum, 1, "-",
                "derived for this project, in place of EN 1993-1-1 6.3.3");
    }
}
