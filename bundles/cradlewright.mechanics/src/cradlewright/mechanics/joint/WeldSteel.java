package cradlewright.mechanics.joint;

/** Correlation factor of fillet welds by steel (EN 1993-1-8 Table 4.1). */
public enum WeldSteel {
    /** S235. */
    S235(0.80),
    /** S275. */
    S275(0.85),
    /** S355. */
    S355(0.90),
    /** S420, S460, and any steel that the table does not name (safe side among the tabulated ones). */
    S420_AND_OTHERS(1.00);

    private final double correlation;

    WeldSteel(double correlation) {
        this.correlation = correlation;
    }

    /** Returns beta_w. */
    public double correlationFactor() {
        return correlation;
    }
}
