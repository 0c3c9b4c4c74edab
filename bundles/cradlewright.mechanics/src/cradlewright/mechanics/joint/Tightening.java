package cradlewright.mechanics.joint;

import cradlewright.mechanics.formula.Require;

/**
 * Tightening torque and preload. Published tables differ by some 12 % at equal labels, so whoever shows a torque must show its
 * K or its friction beside it. A bolt tightened beyond yield is to be replaced.
 */
public final class Tightening {

    /** Torque factor of dry bolts as received (machine-design texts, from memory). */
    public static final double K_DRY = 0.20;
    /** Torque factor of lubricated bolts (machine-design texts, from memory). */
    public static final double K_LUBRICATED = 0.15;
    /** Share of the proof load for joints that are taken apart again (machine-design texts, from memory). */
    public static final double REUSED_SHARE = 0.75;

    private static final double YIELD_SHARE = 0.9;
    private static final double LARGEST_FRICTION = 0.6;

    private Tightening() {
    }

    /** Returns the proof load A_s S_p, N; see {@link JointFormulas#PRELOAD_PROOF}. */
    public static double proofLoad(BoltSize size, BoltGrade grade) {
        return size.stressArea() * grade.proofStress();
    }

    /** Returns the preload of a joint that is taken apart again, 0.75 of the proof load, N. */
    public static double reusedPreload(BoltSize size, BoltGrade grade) {
        return REUSED_SHARE * proofLoad(size, grade);
    }

    /**
     * Torque by the torque factor, T = K F d, N m; see {@link JointFormulas#TORQUE_FACTOR}.
     *
     * @param factor K, 0.05 to 0.5
     * @param preload F, N
     * @param diameter nominal diameter, m
     * @throws IllegalArgumentException if a value is out of range
     */
    public static double torque(double factor, double preload, double diameter) {
        Require.within(factor, 0.05, 0.5, "torque factor K");
        Require.notNegative(preload, "preload");
        Require.positive(diameter, "bolt diameter");
        return factor * preload * diameter;
    }

    /**
     * Preload at which tension and torsion together reach 90 % of yield, N; see {@link JointFormulas#TIGHTENING_VDI}.
     *
     * @param threadFriction mu_G, 0 to 0.6
     * @throws IllegalArgumentException if the friction is out of range
     */
    public static double yieldPreload(BoltSize size, BoltGrade grade, double threadFriction) {
        Require.within(threadFriction, 0, LARGEST_FRICTION, "thread friction");
        double d2 = size.pitchDiameter();
        double ds = (d2 + size.rootDiameter()) / 2;
        double torsion = 1.5 * (d2 / ds) * (size.pitch() / (Math.PI * d2) + 1.155 * threadFriction);
        return Math.PI / 4 * ds * ds * YIELD_SHARE * grade.yieldStrength() / Math.sqrt(1 + 3 * torsion * torsion);
    }

    /**
     * Torque that gives a preload, N m, for a hexagon head on a medium clearance hole; see {@link JointFormulas#TIGHTENING_VDI}.
     *
     * @param preload F, N
     * @param threadFriction mu_G, 0 to 0.6
     * @param headFriction mu_K under the head or nut that is turned, 0 to 0.6
     * @throws IllegalArgumentException if a value is out of range
     */
    public static double torque(BoltSize size, double preload, double threadFriction, double headFriction) {
        Require.notNegative(preload, "preload");
        Require.within(threadFriction, 0, LARGEST_FRICTION, "thread friction");
        Require.within(headFriction, 0, LARGEST_FRICTION, "friction under the head");
        return preload * (0.16 * size.pitch() + 0.58 * size.pitchDiameter() * threadFriction
                + size.meanFrictionDiameter() / 2 * headFriction);
    }
}
