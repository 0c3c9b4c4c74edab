package cradlewright.mechanics.joint;

import cradlewright.mechanics.formula.Require;

/** The factor by which prying raises the tension of bolts in a plate that bends; see {@link JointFormulas#PRYING}. */
public final class Prying {

    /** Least factor stated for a plate thinner than the bolt (common practice, no source). */
    public static final double LEAST_STATED = 1.25;
    /** Largest factor stated for a plate thinner than the bolt (common practice, no source); the default. */
    public static final double LARGEST_STATED = 1.40;

    /** EN 1993-1-8 6.2.4: the prying force acts no farther out than 1.25 m. */
    private static final double OUTER_LIMIT = 1.25;

    private Prying() {
    }

    /**
     * Returns 1 for a plate at least as thick as the bolt diameter, else the largest stated factor.
     *
     * @param thickness plate thickness, m
     * @param boltDiameter nominal diameter, m
     * @throws IllegalArgumentException if a value is not finite or not above zero
     */
    public static double stated(double thickness, double boltDiameter) {
        Require.positive(thickness, "plate thickness");
        Require.positive(boltDiameter, "bolt diameter");
        return thickness >= boltDiameter ? 1 : LARGEST_STATED;
    }

    /**
     * Upper bound of the factor for a plate that yields both at the web and at the bolt line: 1 + m/(2 n). With n = 1.25 m it
     * is 1.4; a bolt closer to the plate edge pries more, and the stated factors are then too low.
     *
     * @param webDistance bolt to web or weld toe m, m
     * @param edgeDistance bolt to plate edge n, m; counted up to 1.25 times the web distance
     * @throws IllegalArgumentException if a value is not finite or not above zero
     */
    public static double doubleCurvature(double webDistance, double edgeDistance) {
        Require.positive(webDistance, "distance from bolt to web");
        Require.positive(edgeDistance, "distance from bolt to plate edge");
        return 1 + webDistance / (2 * Math.min(edgeDistance, OUTER_LIMIT * webDistance));
    }
}
