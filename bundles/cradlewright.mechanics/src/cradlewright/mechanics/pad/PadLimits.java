package cradlewright.mechanics.pad;

import cradlewright.mechanics.formula.Require;

/**
 * How far a pad may be pressed; see {@link PadFormulas#LIMITS}.
 *
 * @param stress largest stress, Pa
 * @param strain largest strain
 */
public record PadLimits(double stress, double strain) {

    /**
     * Cork: 0.4 MPa and 5 % (common practice, no source), about half the published collapse stress of a dense agglomerate. Light
     * cork board gives way from 0.25 MPa and needs limits of its own.
     */
    public static final PadLimits CORK = new PadLimits(0.4e6, 0.05);

    /** Refuses limits that are not above zero or a strain above one half. */
    public PadLimits {
        Require.positive(stress, "stress limit of the pad");
        Require.within(Require.positive(strain, "strain limit of the pad"), 0, 0.5, "strain limit of the pad");
    }

    /**
     * Returns the larger of stress and strain over their limits, to be at most 1.
     *
     * @throws IllegalArgumentException if the force is negative or not finite
     */
    public double use(Pad pad, double force) {
        return Math.max(pad.stress(force) / stress, pad.strain(force) / strain);
    }
}
