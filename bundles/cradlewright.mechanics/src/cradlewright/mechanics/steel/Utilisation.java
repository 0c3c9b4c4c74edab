package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;
import java.util.Objects;

/**
 * One check: what is asked of a part over what it can carry.
 *
 * @param formulaId of the formula behind it
 * @param what readable name of the check
 * @param demand not below zero
 * @param capacity above zero, same unit
 * @param unit of both, {@code -} for a criterion without unit
 * @param clause where the rule stands
 */
public record Utilisation(String formulaId, String what, double demand, double capacity, String unit, String clause) {

    /** Refuses missing texts, a demand below zero and a capacity that is not above zero. */
    public Utilisation {
        Objects.requireNonNull(formulaId, "formulaId");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(clause, "clause");
        Require.notNegative(demand, "demand of " + what);
        Require.positive(capacity, "capacity of " + what);
    }

    /** Demand over capacity. */
    public double ratio() {
        return demand / capacity;
    }

    /** True while the ratio does not pass 1. */
    public boolean holds() {
        return ratio() <= 1;
    }
}
