package cradlewright.analysis.facts;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A stage and a setup at a time.
 *
 * @param stageId which parts are on
 * @param setupId what rests on what
 * @param from first day
 * @param to last day
 */
public record VisitFacts(String id, String name, Optional<String> stageId, Optional<String> setupId, Optional<LocalDate> from,
        Optional<LocalDate> to) implements Fact {

    /** Tells whether it is on that day; a visit without dates always is. */
    public boolean on(LocalDate day) {
        return !over(day) && from.map(first -> !first.isAfter(day)).orElse(true);
    }

    /** Tells whether its last day has gone by. */
    public boolean over(LocalDate day) {
        return to.isPresent() && to.get().isBefore(day);
    }
}
