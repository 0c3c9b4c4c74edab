package cradlewright.mechanics.frame;

import cradlewright.mechanics.formula.Require;

/**
 * A condensed frame under one pattern of loads that are not contacts: solved once, then any multiple of the pattern with any
 * contact forces is a sum of stored states. Immutable; the movements are worked out when first asked for. Linear, so exact
 * but for rounding.
 */
public final class LoadedFrame {

    private final CondensedFrame frame;
    private final LoadCase loads;
    private final double[] sag;
    private volatile double[] movements;

    LoadedFrame(CondensedFrame frame, LoadCase loads) {
        this.frame = frame;
        this.loads = loads;
        sag = frame.movedBy(loads);
    }

    /** Returns the frame without these loads. */
    public CondensedFrame frame() {
        return frame;
    }

    /**
     * Returns the movement of each contact along its direction under a multiple of the pattern, m.
     *
     * @throws IllegalArgumentException if the factor is not finite
     */
    public double[] sag(double factor) {
        Require.finite(factor, "load factor");
        double[] result = new double[sag.length];
        Vectors.addTimes(result, factor, sag);
        return result;
    }

    /**
     * Returns movements and internal forces under contact forces and a multiple of the pattern together.
     *
     * @param contactForces units of each contact, in order
     * @param factor on the pattern
     * @throws IllegalArgumentException if a number is not finite, the count differs, or the whole does not balance on a free
     *         body
     */
    public FrameResult result(double[] contactForces, double factor) {
        double[] moved = movements;
        if (moved == null) {
            moved = frame.structure().movements(loads);
            movements = moved;
        }
        return frame.superposed(contactForces, loads, moved, factor);
    }
}
