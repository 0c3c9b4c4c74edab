package cradlewright.analysis.checks;

import cradlewright.analysis.facts.Basis;
import cradlewright.analysis.facts.Value;

/**
 * What a fixture or lift point can take, and what that is rated by. Rated loads and working load limits stand against the load as it
 * is, design resistances against factored loads.
 *
 * @param capacity in N
 * @param basis what it is rated by
 */
public record RatedForce(Value capacity, Basis basis) {

    /** Factor of everything carried against a design resistance, EN 1990 Table A1.2(B) (from memory). */
    public static final double CARRIED = 1.5;

    /** Returns the demand that stands against the capacity, in N. */
    public double demand(double carried) {
        return basis == Basis.DESIGN_RESISTANCE ? CARRIED * carried : carried;
    }

    /** Returns the capacity at its low end, in N, not below zero. */
    public double low() {
        return Math.max(0, capacity.low());
    }

    /** Returns what the capacity is rated by, in words. */
    public String ratedBy() {
        String origin = capacity.source().word().isEmpty() ? "source not stated" : capacity.source().word();
        return switch (basis) {
            case WORKING_LOAD_LIMIT -> "working load limit, " + origin;
            case RATED_LOAD -> "rated load, " + origin;
            case DESIGN_RESISTANCE -> "design resistance, " + origin + "; against it the load counts one and a half times";
        };
    }
}
