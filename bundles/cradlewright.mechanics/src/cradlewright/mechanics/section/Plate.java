package cradlewright.mechanics.section;

import cradlewright.mechanics.formula.Require;
import java.util.Objects;

/**
 * A flat part of a section as EN 1993-1-1 Table 5.2 classifies it.
 *
 * @param kind how its long edges are held
 * @param root one end of the flat part; of an outstand the held end; of a tube wall the centre
 * @param tip the other end; of an outstand the free edge; of a tube wall the centre again
 * @param width flat width c between the bends, for a tube the outside diameter, m
 * @param thickness m
 */
public record Plate(Kind kind, SectionPoint root, SectionPoint tip, double width, double thickness) {

    /** How the long edges are held. */
    public enum Kind {
        /** Held along both edges. */
        INTERNAL,
        /** Held along one edge, the other free. */
        OUTSTAND,
        /** The curved wall of a circular tube. */
        TUBE
    }

    /** Refuses missing ends and a width or thickness that is not above zero. */
    public Plate {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(root, "root");
        Objects.requireNonNull(tip, "tip");
        Require.positive(width, "plate width");
        Require.positive(thickness, "plate thickness");
    }

    /** A straight flat part between two points. */
    public static Plate straight(Kind kind, SectionPoint root, SectionPoint tip, double thickness) {
        return new Plate(kind, root, tip, root.distance(tip), thickness);
    }

    /** Slenderness c/t (d/t of a tube). */
    public double slenderness() {
        return width / thickness;
    }

    /** The point at a share of the way from root (0) to tip (1). */
    public SectionPoint at(double share) {
        return new SectionPoint(root.y() + share * (tip.y() - root.y()), root.z() + share * (tip.z() - root.z()));
    }
}
