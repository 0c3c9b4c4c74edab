package cradlewright.mechanics.section;

import cradlewright.mechanics.formula.Require;

/**
 * A point of a drawn cross-section.
 *
 * @param y to the right, m
 * @param z up, m
 */
public record SectionPoint(double y, double z) {

    /** Refuses coordinates that are not finite. */
    public SectionPoint {
        Require.finite(y, "section point y");
        Require.finite(z, "section point z");
    }

    /** Distance to another point, m. */
    public double distance(SectionPoint other) {
        return Math.hypot(other.y - y, other.z - z);
    }

    /** This point turned about the origin, counter-clockwise, rad. */
    public SectionPoint turned(double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return new SectionPoint(c * y - s * z, s * y + c * z);
    }
}
