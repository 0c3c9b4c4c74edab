package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.section.Plate;

/**
 * Local buckling of a flat part: buckling factor, slenderness and reduction, EN 1993-1-5 4.4 (from memory).
 *
 * @see SteelFormulas#PLATE_FACTOR
 * @see SteelFormulas#EFFECTIVE_WIDTH
 */
public final class PlateBuckling {

    private static final double LEAST_PSI = -3;

    private PlateBuckling() {
    }

    /**
     * Buckling factor k_sigma of EN 1993-1-5 Tables 4.1 and 4.2. Ratios psi beyond the tables use the value at their end,
     * the safe side.
     *
     * @param kind internal or outstand
     * @param stress with some compression
     * @throws IllegalArgumentException for a tube wall or a part without compression
     */
    public static double factor(Plate.Kind kind, PlateStress stress) {
        if (kind == Plate.Kind.TUBE || !stress.compressed()) {
            throw new IllegalArgumentException(
                    "a buckling factor needs a flat part in compression, found " + kind + " " + stress);
        }
        double psi = Math.max(stress.psi(), LEAST_PSI);
        if (kind == Plate.Kind.INTERNAL) {
            return internal(psi);
        }
        return stress.tipLeads() ? 0.57 - 0.21 * psi + 0.07 * psi * psi : rootLeads(Math.max(psi, -1));
    }

    private static double internal(double psi) {
        if (psi >= 0) {
            return 8.2 / (1.05 + psi);
        }
        return psi >= -1 ? 7.81 - 6.29 * psi + 9.78 * psi * psi : 5.98 * (1 - psi) * (1 - psi);
    }

    private static double rootLeads(double psi) {
        return psi >= 0 ? 0.578 / (psi + 0.34) : 1.7 - 5 * psi + 17.1 * psi * psi;
    }

    /** Plate slenderness (c/t)/(28.4 epsilon sqrt(k_sigma)), with the yield strength at the worst edge. */
    public static double slenderness(Plate plate, PlateStress stress, double yield) {
        return plate.slenderness() / (28.4 * SectionClass.epsilon(yield) * Math.sqrt(factor(plate.kind(), stress)));
    }

    /**
     * Share rho of the compressed width that remains effective.
     *
     * @param kind internal or outstand
     * @param slenderness of {@link #slenderness}
     * @param psi stress ratio of the ends, not above 1
     * @return above 0, not above 1
     */
    public static double reduction(Plate.Kind kind, double slenderness, double psi) {
        Require.positive(slenderness, "plate slenderness");
        Require.within(psi, -Double.MAX_VALUE, 1, "stress ratio psi");
        double bounded = Math.max(psi, LEAST_PSI);
        double square = slenderness * slenderness;
        if (kind == Plate.Kind.OUTSTAND) {
            return slenderness <= 0.748 ? 1 : Math.min(1, (slenderness - 0.188) / square);
        }
        double limit = 0.5 + Math.sqrt(0.085 - 0.055 * bounded);
        return slenderness <= limit ? 1 : Math.min(1, (slenderness - 0.055 * (3 + bounded)) / square);
    }

    /** Reduction of a part under its stress; 1 when nothing of it is in compression. */
    public static double reduction(Plate plate, PlateStress stress, double yield) {
        return stress.compressed() ? reduction(plate.kind(), slenderness(plate, stress, yield), Math.min(1, stress.psi())) : 1;
    }

    /**
     * Shear buckling factor chi_w of a web without stiffeners between its ends and with end posts that are not rigid:
     * min(1, 0.83/lambda_w), lambda_w = (h_w/t)/(86.4 epsilon), EN 1993-1-5 5.3 (from memory), without the gain eta.
     *
     * @see SteelFormulas#SHEAR_BUCKLING
     */
    public static double shearReduction(Plate plate, double yield) {
        double slenderness = plate.slenderness() / (86.4 * SectionClass.epsilon(yield));
        return Math.min(1, 0.83 / slenderness);
    }
}
