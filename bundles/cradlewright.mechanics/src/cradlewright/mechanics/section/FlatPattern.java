package cradlewright.mechanics.section;

import cradlewright.mechanics.formula.Require;

/**
 * Flat lengths of cold-bent sheet to DIN 6935. Bend angle: the angle through which the sheet is turned, 90 degrees for a
 * square corner.
 *
 * @see SectionFormulas#FLAT_PATTERN
 */
public final class FlatPattern {

    private static final double SMALLEST_RATIO = 0.1;
    private static final double ROUND_RATIO = 5;
    private static final double LARGEST_BEND = Math.PI;

    private FlatPattern() {
    }

    /**
     * Correction factor k of the neutral fibre: 0.65 + 0.5 lg(r/t), from r/t = 5 on 1.
     *
     * @param innerRadius m
     * @param thickness m
     * @return k, the neutral fibre lies k t/2 from the inner face
     * @throws IllegalArgumentException for r/t under 0.1, where the formula has no meaning
     */
    public static double neutralFibre(double innerRadius, double thickness) {
        Require.positive(innerRadius, "inner bend radius");
        Require.positive(thickness, "sheet thickness");
        double ratio = Require.within(innerRadius / thickness, SMALLEST_RATIO, Double.MAX_VALUE, "inner radius over thickness");
        return ratio > ROUND_RATIO ? 1 : 0.65 + 0.5 * Math.log10(ratio);
    }

    /** Length of the neutral fibre in the bend: angle times (r + k t/2), m. */
    public static double allowance(double bendAngle, double innerRadius, double thickness) {
        Require.within(bendAngle, 0, LARGEST_BEND, "bend angle");
        return bendAngle * (innerRadius + neutralFibre(innerRadius, thickness) * thickness / 2);
    }

    /**
     * What to take off the sum of the two outside legs, m. Legs are measured to the outside corner for bends up to 90
     * degrees, to the tangent of the outer face beyond.
     */
    public static double deduction(double bendAngle, double innerRadius, double thickness) {
        double setback = bendAngle < Math.PI / 2 ? Math.tan(bendAngle / 2) : 1;
        return 2 * (innerRadius + thickness) * setback - allowance(bendAngle, innerRadius, thickness);
    }
}
