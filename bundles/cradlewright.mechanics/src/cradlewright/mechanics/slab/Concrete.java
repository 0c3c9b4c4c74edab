package cradlewright.mechanics.slab;

import cradlewright.mechanics.formula.Require;

/**
 * Strengths and stiffness of normal concrete from its cylinder strength (EN 1992-1-1 Table 3.1); see {@link
 * SlabFormulas#CONCRETE}.
 */
public final class Concrete {

    /** Partial factor of concrete (EN 1992-1-1 2.4.2.4). */
    public static final double GAMMA_C = 1.5;
    /** Partial factor of reinforcement (EN 1992-1-1 2.4.2.4). */
    public static final double GAMMA_S = 1.15;

    private static final double MPA = 1e6;
    private static final double LONG_TERM = 0.85;

    private Concrete() {
    }

    /** Returns the mean modulus E_cm = 22 (f_cm/10)^0.3 GPa with f_cm = f_ck + 8 MPa, Pa. */
    public static double meanModulus(double fck) {
        return 22e9 * Math.pow((strength(fck) / MPA + 8) / 10, 0.3);
    }

    /** Returns the mean tensile strength f_ctm = 0.3 f_ck^(2/3) MPa, Pa. */
    public static double meanTension(double fck) {
        return 0.3 * MPA * Math.pow(strength(fck) / MPA, 2.0 / 3);
    }

    /** Returns the design flexural tensile strength f_ctm max(1.6 - h, 1)/gamma_c of a slab {@code thickness} m thick, Pa. */
    public static double designFlexure(double fck, double thickness) {
        return meanTension(fck) * Math.max(1.6 - Require.positive(thickness, "thickness"), 1) / GAMMA_C;
    }

    /** Returns the design compressive strength 0.85 f_ck/gamma_c, Pa. */
    public static double designCompression(double fck) {
        return LONG_TERM * strength(fck) / GAMMA_C;
    }

    /**
     * Returns the shear stress at the face of a loaded area that crushes the struts, 0.4 x 0.6 (1 - f_ck/250) f_ck/gamma_c, Pa.
     */
    public static double faceShear(double fck) {
        return 0.4 * 0.6 * (1 - strength(fck) / (250 * MPA)) * fck / GAMMA_C;
    }

    /** Returns {@code fck} when within the range of the expressions, 12 to 50 MPa (in Pa). */
    static double strength(double fck) {
        return Require.within(fck, 12 * MPA, 50 * MPA, "cylinder strength in Pa");
    }
}
