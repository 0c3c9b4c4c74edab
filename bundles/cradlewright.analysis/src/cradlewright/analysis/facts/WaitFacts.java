package cradlewright.analysis.facts;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What an operation waits for.
 *
 * @param operationId the operation that waits
 * @param reason why
 * @param since first day of the wait
 * @param until day on which it is to end
 * @param ended day on which it ended
 */
public record WaitFacts(String id, String name, Optional<String> operationId, Optional<String> reason, Optional<LocalDate> since,
        Optional<LocalDate> until, Optional<LocalDate> ended) implements Fact {

    /** Tells whether somebody waits on that day: it has begun, or nobody said when, and has not ended. */
    public boolean open(LocalDate day) {
        return since.map(first -> !first.isAfter(day)).orElse(true) && ended.map(last -> last.isAfter(day)).orElse(true);
    }
}
