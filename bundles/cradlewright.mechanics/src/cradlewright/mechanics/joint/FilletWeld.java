package cradlewright.mechanics.joint;

import java.util.ArrayList;
import java.util.List;

import cradlewright.mechanics.formula.Require;

/**
 * Fillet weld by the simple method of EN 1993-1-8 4.5.3.3: whatever its direction, the force per length may reach
 * F_w,Rd = a f_vw,d; see {@link JointFormulas#WELD}. Design resistance, electrodes at least as strong as the plate.
 *
 * <p>Neglected: the gain of cross-loaded fillets (directional method), residual stress, lamellar tearing, fatigue. The plate
 * beside the weld is checked elsewhere.
 *
 * @param throat effective throat a, m
 * @param ultimateStrength f_u of the weaker part, Pa
 * @param steel which correlation factor
 * @param gammaM2 partial factor, 1 to 10
 */
public record FilletWeld(double throat, double ultimateStrength, WeldSteel steel, double gammaM2) {

    /** A thinner throat does not count (EN 1993-1-8 4.5.2(2)), m. */
    public static final double LEAST_THROAT = 3e-3;
    /** Thinnest plate of EN 1993-1-8 4.1(1), m (from memory). */
    public static final double THINNEST_PLATE = 4e-3;
    /** Thinnest wall of hollow sections, EN 1993-1-8 4.1(1) note, m (from memory). */
    public static final double THINNEST_HOLLOW = 2.5e-3;

    private static final double LEAST_LENGTH = 30e-3;
    private static final double LEAST_LENGTH_THROATS = 6;
    private static final double LONG_LAP_THROATS = 150;

    /** Refuses values out of range. A throat under 3 mm is accepted and resists nothing. */
    public FilletWeld {
        Require.positive(throat, "weld throat");
        Require.positive(ultimateStrength, "ultimate strength beside the weld");
        Require.within(gammaM2, 1, 10, "gamma_M2");
        if (steel == null) {
            throw new IllegalArgumentException("a weld needs its steel");
        }
    }

    /** Returns the throat of a fillet with equal legs z, a = z/sqrt(2), m. */
    public static double throatOfLeg(double leg) {
        return Require.positive(leg, "weld leg") / Math.sqrt(2);
    }

    /** Returns the shear strength f_vw,d = f_u/(sqrt(3) beta_w gamma_M2), Pa. */
    public double shearStrength() {
        return ultimateStrength / (Math.sqrt(3) * steel.correlationFactor() * gammaM2);
    }

    /** Returns F_w,Rd per length, N/m; zero for a throat under 3 mm. */
    public double resistancePerLength() {
        return throat < LEAST_THROAT * (1 - 1e-9) ? 0 : throat * shearStrength();
    }

    /**
     * Effective length, m: the run less one throat per open end (4.5.1(1)); nothing if what is left is under 30 mm or six
     * throats (4.5.1(2)). See {@link JointFormulas#WELD_LENGTH}.
     *
     * @param run length of the weld, m
     * @param openEnds ends that are not full size, 0 to 2; 0 for a weld all round or carried round the corners
     * @throws IllegalArgumentException if a value is out of range
     */
    public double effectiveLength(double run, int openEnds) {
        Require.positive(run, "run of the weld");
        Require.within(openEnds, 0, 2, "open ends of the weld");
        double length = run - openEnds * throat;
        return length < Math.max(LEAST_LENGTH, LEAST_LENGTH_THROATS * throat) * (1 - 1e-9) ? 0 : length;
    }

    /**
     * Factor of long lap welds, beta_Lw,1 = 1.2 - 0.2 L/(150 a), 1 up to 150 throats and never below zero; see
     * {@link JointFormulas#WELD_LONG_LAP}.
     *
     * @param length effective length along the force, m
     * @throws IllegalArgumentException if the length is not above zero
     */
    public double longLapFactor(double length) {
        Require.positive(length, "length of the lap weld");
        return Math.max(0, Math.min(1, 1.2 - 0.2 * length / (LONG_LAP_THROATS * throat)));
    }

    /**
     * Rules that the weld breaks, each named; empty if all hold.
     *
     * @param thinnestPart thinnest part joined, m
     * @param hollowSection whether that part is a hollow section
     * @throws IllegalArgumentException if the thickness is not above zero
     */
    public List<String> findings(double thinnestPart, boolean hollowSection) {
        Require.positive(thinnestPart, "thinnest part at the weld");
        List<String> found = new ArrayList<>();
        if (throat < LEAST_THROAT * (1 - 1e-9)) {
            found.add("throat under 3 mm does not count (EN 1993-1-8 4.5.2(2))");
        }
        if (thinnestPart < (hollowSection ? THINNEST_HOLLOW : THINNEST_PLATE) * (1 - 1e-9)) {
            found.add("part thinner than EN 1993-1-8 4.1(1) covers; EN 1993-1-3 8.5 would govern and is not looked at");
        }
        return List.copyOf(found);
    }
}
