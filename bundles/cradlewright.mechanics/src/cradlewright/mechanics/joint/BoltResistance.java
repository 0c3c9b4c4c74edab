package cradlewright.mechanics.joint;

import cradlewright.mechanics.formula.Require;

/**
 * Design resistance of one bolt that is not preloaded, N, by EN 1993-1-8 Table 3.4. These are design resistances: compare them
 * with factored actions, never with rated loads.
 *
 * <p>Neglected: long joints (3.8), packings (3.6.1(12)), preload and slip, fatigue. M6 to M10 lie below the M12 that EN 1090-2
 * expects of structural bolts; the formulas are unchanged for them.
 */
public final class BoltResistance {

    /** Recommended partial factor of bolts and welds (EN 1993-1-8 Table 2.1). */
    public static final double GAMMA_M2 = 1.25;

    private static final double SHANK_SHEAR_FACTOR = 0.6;
    private static final double TENSION_FACTOR = 0.9;
    private static final double COUNTERSUNK_TENSION_FACTOR = 0.63;
    private static final double WIDE_HOLE_FACTOR = 0.85;
    private static final double TENSION_RELIEF = 1.4;

    /** Where the shear plane cuts the bolt. */
    public enum ShearPlane {
        /** Through the threads: the stress area counts. The safe choice when the drawing does not say. */
        THREADS,
        /** Through the plain shank: the gross area counts. */
        SHANK
    }

    private final double stressArea;
    private final double shankArea;
    private final double ultimate;
    private final double threadFactor;
    private final double gammaM2;
    private final boolean wideHole;

    private BoltResistance(double stressArea, double shankArea, double ultimate, double threadFactor, double gammaM2,
            boolean wideHole) {
        this.stressArea = Require.positive(stressArea, "stress area of the bolt");
        this.shankArea = Require.within(shankArea, stressArea, 1, "shank area of the bolt");
        this.ultimate = Require.positive(ultimate, "ultimate strength of the bolt");
        this.threadFactor = threadFactor;
        this.gammaM2 = Require.within(gammaM2, 1, 10, "gamma_M2");
        this.wideHole = wideHole;
    }

    /**
     * A bolt in holes of normal clearance.
     *
     * @param size thread size
     * @param grade strength class
     * @param gammaM2 partial factor, 1 to 10; recommended {@link #GAMMA_M2}
     * @throws IllegalArgumentException if the factor is out of range
     */
    public static BoltResistance of(BoltSize size, BoltGrade grade, double gammaM2) {
        return new BoltResistance(size.stressArea(), size.shankArea(), grade.ultimateStrength(), grade.threadShearFactor(),
                gammaM2, false);
    }

    /**
     * The same bolt in 2 mm clearance holes. For M12 and M14 the shear resistance is taken 0.85 times, see
     * {@link JointFormulas#CLEARANCE_TWO_MM}; the clause names 4.8 to 10.9, here 4.6 and 5.6 are reduced as well (safe side).
     *
     * @throws IllegalArgumentException if the factor is out of range or the size is below M12 (no such hole in the standard)
     */
    public static BoltResistance inTwoMillimetreClearance(BoltSize size, BoltGrade grade, double gammaM2) {
        if (size.compareTo(BoltSize.M12) < 0) {
            throw new IllegalArgumentException("holes with 2 mm clearance are given for M12 and larger only, found " + size);
        }
        boolean reduced = size == BoltSize.M12 || size == BoltSize.M14;
        return new BoltResistance(size.stressArea(), size.shankArea(), grade.ultimateStrength(), grade.threadShearFactor(),
                gammaM2, reduced);
    }

    /**
     * A bolt outside the size list, by its areas.
     *
     * @param stressArea A_s, m2
     * @param shankArea gross area, m2, not below the stress area
     * @param grade strength class
     * @param gammaM2 partial factor, 1 to 10
     * @throws IllegalArgumentException if a value is out of range
     */
    public static BoltResistance ofAreas(double stressArea, double shankArea, BoltGrade grade, double gammaM2) {
        return new BoltResistance(stressArea, shankArea, grade.ultimateStrength(), grade.threadShearFactor(), gammaM2, false);
    }

    /** Returns F_v,Rd for one shear plane, N; see {@link JointFormulas#SHEAR}. */
    public double shear(ShearPlane plane) {
        double full = switch (plane) {
            case THREADS -> threadFactor * ultimate * stressArea / gammaM2;
            case SHANK -> SHANK_SHEAR_FACTOR * ultimate * shankArea / gammaM2;
        };
        return wideHole ? WIDE_HOLE_FACTOR * full : full;
    }

    /**
     * Returns whether the bolt may stand in its holes at all: M12 and M14 in 2 mm clearance only where bearing, not shear,
     * governs (EN 1993-1-8 3.6.1(5), from memory). Always true for normal holes.
     *
     * @param bearing F_b,Rd of the same bolt, N
     * @param plane the shear plane
     * @throws IllegalArgumentException if the bearing resistance is negative or not finite
     */
    public boolean clearanceAllowed(double bearing, ShearPlane plane) {
        Require.notNegative(bearing, "bearing resistance");
        return !wideHole || bearing <= shear(plane);
    }

    /** Returns F_t,Rd of a bolt with a hexagon head, N; see {@link JointFormulas#TENSION}. */
    public double tension() {
        return TENSION_FACTOR * ultimate * stressArea / gammaM2;
    }

    /** Returns F_t,Rd of a countersunk bolt, N; see {@link JointFormulas#TENSION}. */
    public double countersunkTension() {
        return COUNTERSUNK_TENSION_FACTOR * ultimate * stressArea / gammaM2;
    }

    /**
     * Punching of head or nut through a plate, B_p,Rd, N; see {@link JointFormulas#PUNCHING}. A washer may widen the head only
     * if it is stiff; the standard does not count it, nor does this.
     *
     * @param headWidth mean of the widths across flats and corners d_m, m
     * @param thickness plate under head or nut t_p, m
     * @param ultimateStrength f_u of the plate, Pa
     * @param gammaM2 partial factor, 1 to 10
     * @throws IllegalArgumentException if a value is out of range
     */
    public static double punching(double headWidth, double thickness, double ultimateStrength, double gammaM2) {
        Require.positive(headWidth, "head width");
        Require.positive(thickness, "plate thickness");
        Require.positive(ultimateStrength, "ultimate strength of the plate");
        Require.within(gammaM2, 1, 10, "gamma_M2");
        return 0.6 * Math.PI * headWidth * thickness * ultimateStrength / gammaM2;
    }

    /**
     * Shear and tension together, F_v/F_v,Rd + F_t/(1.4 F_t,Rd), to be at most 1; see {@link JointFormulas#COMBINED}. Tension
     * alone must be checked beside it.
     *
     * @param shear shear on the bolt, N, not negative
     * @param shearResistance N, above zero
     * @param tension tension of the bolt with prying, N, not negative
     * @param tensionResistance N, above zero
     * @throws IllegalArgumentException if a value is out of range
     */
    public static double combined(double shear, double shearResistance, double tension, double tensionResistance) {
        Require.notNegative(shear, "bolt shear");
        Require.notNegative(tension, "bolt tension");
        Require.positive(shearResistance, "shear resistance");
        Require.positive(tensionResistance, "tension resistance");
        return shear / shearResistance + tension / (TENSION_RELIEF * tensionResistance);
    }
}
