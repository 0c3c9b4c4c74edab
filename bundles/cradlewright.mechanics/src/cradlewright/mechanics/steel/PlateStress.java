package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;

/**
 * Compressive stress at the two ends of a flat part; only the ratio of the two counts, any unit.
 *
 * @param root at the held end, compression positive
 * @param tip at the free end of an outstand, or the other end, compression positive
 */
public record PlateStress(double root, double tip) {

    private static final double NEARLY = 1e-6;

    /** Refuses stresses that are not finite. */
    public PlateStress {
        Require.finite(root, "stress at the root");
        Require.finite(tip, "stress at the tip");
    }

    /** Equal compression over the width. */
    public static PlateStress uniform() {
        return new PlateStress(1, 1);
    }

    /** Larger compression of the two ends. */
    double worst() {
        return Math.max(root, tip);
    }

    /** True when some of the width is in compression. */
    boolean compressed() {
        return worst() > NEARLY * Math.abs(Math.min(root, tip));
    }

    /** True when the tip is the more compressed end. */
    boolean tipLeads() {
        return tip >= root;
    }

    /** Ratio of the less to the more compressed end, 1 for uniform compression, -1 for bending about the middle. */
    double psi() {
        return Math.min(root, tip) / worst();
    }

    /** True for equal compression. */
    boolean even() {
        return psi() >= 1 - NEARLY;
    }

    /** True for equal and opposite ends. */
    boolean symmetricBending() {
        return Math.abs(psi() + 1) <= NEARLY;
    }
}
