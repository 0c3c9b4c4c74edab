package cradlewright.analysis.load;

import java.util.List;
import java.util.Optional;

/**
 * What everything carries in one situation.
 *
 * @param situation what happens
 * @param outcome whether there is an answer
 * @param reason why not, in words; empty when there is one
 * @param supports what the supports under the carried piece carry
 * @param castors what the castors or feet under the dolly carry
 * @param members internal forces of the members of the dolly at their critical stations, under factored actions
 */
public record Loads(Situation situation, Outcome outcome, String reason, List<Carried> supports, List<Carried> castors,
        List<MemberLoad> members) {

    /** Whether there is an answer. */
    public enum Outcome {
        /** Everything is in balance. */
        FOUND,
        /** No push of the supports can hold it: it falls over. */
        FALLS,
        /** An input is missing. */
        MISSING,
        /** The calculation did not come to an end. */
        BROKE_OFF
    }

    /** Copies the lists. */
    public Loads {
        supports = List.copyOf(supports);
        castors = List.copyOf(castors);
        members = List.copyOf(members);
    }

    /** Returns an answer that is none. */
    public static Loads none(Situation situation, Outcome outcome, String reason) {
        return new Loads(situation, outcome, reason, List.of(), List.of(), List.of());
    }

    /** Tells whether there is an answer. */
    public boolean found() {
        return outcome == Outcome.FOUND;
    }

    /** Returns what the support of that contact carries. */
    public Optional<Carried> support(String contactId) {
        return supports.stream().filter(carried -> carried.id().equals(contactId)).findFirst();
    }
}
