package cradlewright.analysis.facts;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A place where a pad or a strap may take the weight.
 *
 * @param position where
 * @param condition what was found
 * @param sheet measured sheet thickness in m
 * @param lookedAt the day somebody looked at it
 * @param capacity in N
 * @param basis what the capacity is rated by
 */
public record LiftPointFacts(String id, String name, Optional<Spot> position, Condition condition, Optional<Value> sheet,
        Optional<LocalDate> lookedAt, Optional<Value> capacity, Optional<Basis> basis) implements Fact {
}
