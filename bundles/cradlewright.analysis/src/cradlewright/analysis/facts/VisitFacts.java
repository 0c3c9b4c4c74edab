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
}
