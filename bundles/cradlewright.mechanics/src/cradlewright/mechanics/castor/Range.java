package cradlewright.mechanics.castor;

import cradlewright.mechanics.formula.Require;

/**
 * A quantity that is only known between two ends, both in the same unit.
 *
 * @param low low end
 * @param high high end, not below the low one
 */
public record Range(double low, double high) {

    /** Refuses ends that are not finite or in the wrong order. */
    public Range {
        Require.finite(low, "low end");
        Require.within(high, low, Double.MAX_VALUE, "high end");
    }

    /** Returns both ends times a factor that is not below zero. */
    public Range times(double factor) {
        Require.notNegative(factor, "factor");
        return new Range(low * factor, high * factor);
    }
}
