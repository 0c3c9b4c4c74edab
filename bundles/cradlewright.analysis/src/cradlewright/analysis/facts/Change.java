package cradlewright.analysis.facts;

import java.util.List;
import java.util.Optional;

/**
 * Records of the shop as they would be after something is done: nothing of it reaches the files.
 *
 * @param facts records that take the place of those with the same ids, or come on top
 * @param settings what the shop would have settled, if that differs
 */
public record Change(List<Fact> facts, Optional<SettingsFacts> settings) {

    /** Copies the list; throws IllegalArgumentException when nothing would change or two records share an id. */
    public Change {
        facts = List.copyOf(facts);
        if (facts.isEmpty() && settings.isEmpty()) {
            throw new IllegalArgumentException("a change needs a record or settings");
        }
        if (facts.stream().map(Fact::id).distinct().count() < facts.size()) {
            throw new IllegalArgumentException("two records with one id in a change");
        }
    }

    /** Returns a change of records. */
    public static Change of(Fact... facts) {
        return new Change(List.of(facts), Optional.empty());
    }

    /** Returns a change of what the shop has settled. */
    public static Change of(SettingsFacts settings) {
        return new Change(List.of(), Optional.of(settings));
    }

    /** Returns the record of that id after the change; nothing when the change leaves that record alone. */
    public Optional<Fact> find(String id) {
        return facts.stream().filter(fact -> fact.id().equals(id)).findFirst();
    }
}
