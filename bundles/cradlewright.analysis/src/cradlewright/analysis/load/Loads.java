package cradlewright.analysis.load;

import java.util.ArrayList;
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
 * @param props what the end props carry
 * @param members internal forces of the members of the dolly at their critical stations, under factored actions; a member stands there
 *        once for each answer that may be so
 */
public record Loads(Situation situation, Outcome outcome, String reason, List<Carried> supports, List<Carried> castors,
        List<Carried> props, List<MemberLoad> members) {

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
        props = List.copyOf(props);
        members = List.copyOf(members);
    }

    /** Returns an answer that is none. */
    public static Loads none(Situation situation, Outcome outcome, String reason) {
        return new Loads(situation, outcome, reason, List.of(), List.of(), List.of(), List.of());
    }

    /** Returns this with ends that also cover another answer to the same question; members count with both. */
    Loads widened(Loads other) {
        List<MemberLoad> both = new ArrayList<>(members);
        both.addAll(other.members);
        return new Loads(situation, outcome, reason, widened(supports, other.supports), widened(castors, other.castors),
                widened(props, other.props), both);
    }

    private static List<Carried> widened(List<Carried> these, List<Carried> those) {
        List<Carried> wide = new ArrayList<>();
        for (int i = 0; i < these.size(); i++) {
            wide.add(these.get(i).widened(those.get(i)));
        }
        return wide;
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
