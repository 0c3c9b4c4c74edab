package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Require;

/** Limits for the eye of a webbing sling on its hook or pin; see {@link LiftingFormulas#STRAP_EYE}. */
public final class StrapEye {

    /** Largest opening angle of the eye, rad: 20 degrees. */
    public static final double MOST_OPENING = Math.toRadians(20);

    private static final double RADIUS_PER_WIDTH = 0.75;

    private StrapEye() {
    }

    /** Returns the smallest hook radius, m, for a bearing width in m. */
    public static double smallestRadius(double bearingWidth) {
        return RADIUS_PER_WIDTH * Require.positive(bearingWidth, "bearing width");
    }

    /**
     * Returns the opening angle of an eye drawn tight over a pin, rad: tangents from the end of the seam to the pin,
     * 2 asin(r/(l - r)), the seam lying l from the crown of the pin.
     *
     * @param pinDiameter m
     * @param eyeLength from the seam to the crown of the pin, m, more than the diameter
     */
    public static double opening(double pinDiameter, double eyeLength) {
        double r = Require.positive(pinDiameter, "pin diameter") / 2;
        Require.finite(eyeLength, "eye length");
        return 2 * Math.asin(r / Require.within(eyeLength - r, r, Double.MAX_VALUE,
                "distance from the seam to the middle of the pin"));
    }
}
