package cradlewright.analysis.facts;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One step of a job.
 *
 * @param kind what sort of work it is
 * @param takesOffPartIds parts that come off
 * @param putsOnPartIds parts that go on
 * @param setupId the setup in which it is done
 * @param started day on which the work began
 * @param done whether it is done
 * @param afterIds operations that must be done before
 */
public record OperationFacts(String id, String name, Optional<Kind> kind, List<String> takesOffPartIds, List<String> putsOnPartIds,
        Optional<String> setupId, Optional<LocalDate> started, boolean done, List<String> afterIds) implements Fact {

    /** What sort of work an operation is, as far as rules about people and readings ask. */
    public enum Kind {
        LIFT_OFF, DROP, ROLL, TURN_OVER, CUT, OTHER;

        /** Tells whether nobody does such work alone. */
        public boolean takesTwo() {
            return this == LIFT_OFF || this == DROP || this == ROLL || this == TURN_OVER;
        }
    }

    /** Tells whether the work has begun on that day, or is done. */
    public boolean begun(LocalDate day) {
        return done || started.isPresent() && !started.get().isAfter(day);
    }

    /** Tells whether somebody is at it on that day. */
    public boolean running(LocalDate day) {
        return !done && begun(day);
    }
}
