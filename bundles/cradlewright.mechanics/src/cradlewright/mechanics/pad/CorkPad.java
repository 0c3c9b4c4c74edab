package cradlewright.mechanics.pad;

import cradlewright.mechanics.formula.Require;

/**
 * A pad of agglomerated cork; see {@link PadFormulas#CORK}.
 *
 * @param area pressed area, m2
 * @param thickness thickness without load, m
 * @param modulus E, Pa; {@link #MODULUS} when nothing better is known
 */
public record CorkPad(double area, double thickness, double modulus) implements Pad {

    /** Mean modulus of agglomerated cork, Pa; published with +-1.8 MPa. */
    public static final double MODULUS = 17.0e6;
    /** Published uncertainty of the modulus, Pa. */
    public static final double MODULUS_SPREAD = 1.8e6;
    /** Stress at which agglomerated cork collapses, Pa; published with +-0.06 MPa. */
    public static final double COLLAPSE_STRESS = 0.78e6;

    /** Refuses values that are not above zero. */
    public CorkPad {
        Require.positive(area, "pad area");
        Require.positive(thickness, "pad thickness");
        Require.positive(modulus, "modulus of the cork");
    }

    /** Returns a rectangular pad of the usual cork; throws IllegalArgumentException if a size is not above zero. */
    public static CorkPad rectangle(double length, double width, double thickness) {
        return new CorkPad(Require.positive(length, "pad length") * Require.positive(width, "pad width"), thickness, MODULUS);
    }

    @Override
    public double compressionModulus() {
        return modulus;
    }
}
