package cradlewright.mechanics.joint;

import java.util.ArrayList;
import java.util.List;

import cradlewright.mechanics.formula.Require;

/**
 * Least and largest distances of holes: EN 1993-1-8 Table 3.3, for sheet below 3 mm the range of EN 1993-1-3 Table 8.4; see
 * {@link JointFormulas#SPACING}. The largest pitch is asked for everywhere, though the table asks it only of compressed or
 * exposed parts (safe side). Staggered rows are not treated.
 *
 * @param holeDiameter d0, m; for slots the width
 * @param thickness thinnest outer plate t, m
 * @param hole kind of hole
 * @param exposed whether weather or damp reaches the joint
 */
public record BoltSpacing(double holeDiameter, double thickness, HoleKind hole, boolean exposed) {

    private static final double LARGEST_PITCH = 0.200;

    /** The distances that the rules speak of: from a hole to the end and edge, and to the next hole along and across the force. */
    public enum Distance {
        END, EDGE, PITCH, GAUGE
    }

    /**
     * A rule that a hole breaks.
     *
     * @param distance which distance it is about
     * @param rule the rule in words, with its clause
     * @param found the distance found, m
     * @param limit the distance asked for, m
     */
    public record Violation(Distance distance, String rule, double found, double limit) {
    }

    /** Refuses values out of range. */
    public BoltSpacing {
        Require.positive(holeDiameter, "hole diameter");
        Require.positive(thickness, "plate thickness");
        if (hole == null) {
            throw new IllegalArgumentException("spacing needs the kind of hole");
        }
    }

    private boolean thin() {
        return thickness < Bearing.THICK_FROM;
    }

    private String clause() {
        return thin() ? " (EN 1993-1-3 Table 8.4)" : " (EN 1993-1-8 Table 3.3)";
    }

    /** Returns the least end distance e1 (e3 of a slot), m. */
    public double leastEnd() {
        double round = (thin() ? 1.0 : 1.2) * holeDiameter;
        return hole.slotted() ? Math.max(round, 1.5 * holeDiameter) : round;
    }

    /** Returns the least edge distance e2 (e4 of a slot), m. */
    public double leastEdge() {
        return (thin() || hole.slotted() ? 1.5 : 1.2) * holeDiameter;
    }

    /** Returns the least pitch p1 along the force, m. */
    public double leastPitch() {
        return (thin() ? 3.0 : 2.2) * holeDiameter;
    }

    /** Returns the least gauge p2 across the force, m. */
    public double leastGauge() {
        return (thin() ? 3.0 : 2.4) * holeDiameter;
    }

    /** Returns the largest pitch and gauge, min(14 t, 200 mm), m. */
    public double largestPitch() {
        return Math.min(14 * thickness, LARGEST_PITCH);
    }

    /** Returns the largest end and edge distance of exposed parts, 4 t + 40 mm, m; infinite where nothing is exposed. */
    public double largestEdge() {
        return exposed ? 4 * thickness + 0.040 : Double.POSITIVE_INFINITY;
    }

    /** Returns every rule that the hole breaks; empty if all hold. Distances that do not exist break no rule. */
    public List<Violation> check(HolePosition p) {
        List<Violation> found = new ArrayList<>();
        least(found, Distance.END, "end distance e1 too short", p.end(), leastEnd());
        least(found, Distance.PITCH, "pitch p1 too short", p.pitch(), leastPitch());
        least(found, Distance.EDGE, "edge distance e2 too short", p.edge(), leastEdge());
        least(found, Distance.GAUGE, "gauge p2 too short", p.gauge(), leastGauge());
        most(found, Distance.END, "end distance e1 too long for an exposed part", p.end(), largestEdge());
        most(found, Distance.PITCH, "pitch p1 too long", p.pitch(), largestPitch());
        most(found, Distance.EDGE, "edge distance e2 too long for an exposed part", p.edge(), largestEdge());
        most(found, Distance.GAUGE, "gauge p2 too long", p.gauge(), largestPitch());
        return List.copyOf(found);
    }

    private void least(List<Violation> found, Distance distance, String rule, double value, double limit) {
        if (value < limit * (1 - 1e-9)) {
            found.add(new Violation(distance, rule + clause(), value, limit));
        }
    }

    private static void most(List<Violation> found, Distance distance, String rule, double value, double limit) {
        if (value != HolePosition.NONE && value > limit * (1 + 1e-9)) {
            found.add(new Violation(distance, rule + " (EN 1993-1-8 Table 3.3)", value, limit));
        }
    }
}
