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
 * @param current whether it is the one that stands there now; by its days when nobody said
 */
public record VisitFacts(String id, String name, Optional<String> stageId, Optional<String> setupId, Optional<LocalDate> from,
        Optional<LocalDate> to, Optional<Boolean> current) implements Fact {

    /**
     * Tells whether it is on that day as far as it says itself: what somebody said goes before the days; a visit without days always is.
     * Whether a later visit has taken its place, {@link CarFacts#visitsOn} tells.
     */
    public boolean on(LocalDate day) {
        return current.orElseGet(() -> !over(day) && from.map(first -> !first.isAfter(day)).orElse(true));
    }

    /** Tells whether its last day has gone by and nobody said that it is still on. */
    public boolean over(LocalDate day) {
        return !current.orElse(false) && to.isPresent() && to.get().isBefore(day);
    }

    /**
     * Returns this visit as a question about a day takes it. That a car stands so now was said at some time from the first day of the
     * visit up to the day of the clock; of a day before the visit or one still to come it says nothing, so there the days count.
     *
     * @param asked the day that is asked about
     * @param clock the day on which it is asked
     */
    public VisitFacts asked(LocalDate asked, LocalDate clock) {
        boolean said = !asked.isAfter(clock) && from.map(first -> !first.isAfter(asked)).orElse(true);
        return said || current.isEmpty() ? this : new VisitFacts(id, name, stageId, setupId, from, to, Optional.empty());
    }

    /** Returns the days it covers, for example {@code 2026-03-01 to 2026-04-30}. */
    public String days() {
        if (from.isEmpty() && to.isEmpty()) {
            return "days that nobody wrote down";
        }
        return from.map(first -> to.isPresent() ? first + " to " : "from " + first + " on").orElse("up to ")
                + to.map(LocalDate::toString).orElse("");
    }

    /** Returns this visit in another stage. */
    public VisitFacts withStage(String other) {
        return new VisitFacts(id, name, Optional.of(other), setupId, from, to, current);
    }

    /** Returns this visit on another setup. */
    public VisitFacts withSetup(String other) {
        return new VisitFacts(id, name, stageId, Optional.of(other), from, to, current);
    }
}
