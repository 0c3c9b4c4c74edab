package cradlewright.mechanics.section;

import cradlewright.mechanics.formula.Require;

/**
 * Section values by the corner approximation of EN 1993-1-3 5.1(3)-(4): the sharp values reduced by a share delta.
 *
 * @param delta 0.43 times the sum of r phi/90 degrees over the sum of the flat widths
 * @param area m2
 * @param iy m4
 * @param iz m4
 * @param warping m6
 * @see SectionFormulas#ROUNDED_CORNER
 */
public record RoundedCorners(double delta, double area, double iy, double iz, double warping) {

    private static final double SHARE = 0.43;

    /**
     * Reduces sharp values.
     *
     * @param sharp properties of the sharp midline
     * @param innerRadius of all bends, m
     * @param sumOfBends sum of all bend angles, rad
     * @param sumOfFlats sum of the flat widths between midline corners, m
     * @throws IllegalArgumentException when the bends are so large that the reduction passes one quarter
     */
    static RoundedCorners of(SectionProperties sharp, double innerRadius, double sumOfBends, double sumOfFlats) {
        double delta = SHARE * innerRadius * sumOfBends / (Math.PI / 2) / sumOfFlats;
        Require.within(delta, 0, 0.25, "share delta of the rounded corners");
        return new RoundedCorners(delta, sharp.area() * (1 - delta), sharp.iy() * (1 - 2 * delta), sharp.iz() * (1 - 2 * delta),
                sharp.torsion().warping() * (1 - 4 * delta));
    }
}
