package cradlewright.mechanics.joint;

/**
 * Where a hole lies in its plate, m. A distance that does not exist (no edge or no neighbour on that side) is {@link #NONE}.
 *
 * @param end e1, to the end of the plate along the force
 * @param pitch p1, to the next hole along the force
 * @param edge e2, to the edge across the force
 * @param gauge p2, to the next hole across the force
 */
public record HolePosition(double end, double pitch, double edge, double gauge) {

    /** No edge or no neighbour on that side. */
    public static final double NONE = Double.POSITIVE_INFINITY;

    /** Refuses distances that are NaN or not above zero. */
    public HolePosition {
        requireDistance(end, "end distance e1");
        requireDistance(pitch, "pitch p1");
        requireDistance(edge, "edge distance e2");
        requireDistance(gauge, "gauge p2");
    }

    private static void requireDistance(double value, String name) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(name + " must be above zero, found " + value);
        }
    }
}
