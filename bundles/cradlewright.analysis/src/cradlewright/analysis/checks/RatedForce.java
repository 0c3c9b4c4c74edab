package cradlewright.analysis.checks;

import cradlewright.analysis.check.FindingBuilder;
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
        return Stated.force(capacity).low();
    }

    /** Sets what is carried, in N, against the capacity at its low end. */
    public FindingBuilder against(FindingBuilder finding, double carried) {
        return Stated.force(capacity).against(finding, demand(carried), switch (basis) {
            case WORKING_LOAD_LIMIT -> "working load limit";
            case RATED_LOAD -> "rated load";
            case DESIGN_RESISTANCE -> "design resistance, against which the load counts one and a half times";
        });
    }
}
