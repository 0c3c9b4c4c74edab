package cradlewright.analysis.facts;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * One weighing of a car or of pieces of it, standing or hanging level in the axes of the marks.
 *
 * @param at when
 * @param stageId which parts were on
 * @param by who read the scales
 * @param readings what each scale showed
 */
public record WeighingFacts(String id, String name, Optional<LocalDateTime> at, Optional<String> stageId, Optional<String> by,
        List<Reading> readings) implements Fact {

    /** Copies the list. */
    public WeighingFacts {
        readings = List.copyOf(readings);
    }

    /**
     * What one scale showed.
     *
     * @param place where it touched, in the axes of the marks
     * @param mass what it showed
     */
    public record Reading(Optional<Spot> place, Optional<Value> mass) {
    }
}
