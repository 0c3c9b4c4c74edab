package cradlewright.analysis.lookup;

import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.Situation;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What one support carries in every situation of a visit.
 *
 * @param cases the situations that have an answer, at rest first
 * @param open why the first situation without an answer has none; empty when all have one
 */
public record SupportLoads(List<Case> cases, String open) {

    /** Copies the list. */
    public SupportLoads {
        cases = List.copyOf(cases);
    }

    /**
     * What it carries in one situation.
     *
     * @param situation what happens
     * @param carried what it carries
     */
    public record Case(Situation situation, Carried carried) {
    }

    static SupportLoads of(String contactId, List<Loads> all) {
        List<Case> cases = all.stream().flatMap(loads -> loads.support(contactId).stream()
                .map(carried -> new Case(loads.situation(), carried))).toList();
        String open = all.stream().filter(loads -> !loads.found()).findFirst()
                .map(loads -> loads.situation().words() + ": " + loads.reason()).orElse("");
        return new SupportLoads(cases, open);
    }

    /** Returns what it carries at rest. */
    public Optional<Case> atRest() {
        return cases.stream().filter(one -> one.situation().kind() == Situation.Kind.AT_REST).findFirst();
    }

    /** Returns the situation in which it carries most, at its unfavourable end. */
    public Optional<Case> most() {
        return cases.stream().max(Comparator.comparingDouble(one -> one.carried().high()));
    }

    /** Returns the situation in which it carries least, at its unfavourable end. */
    public Optional<Case> least() {
        return cases.stream().min(Comparator.comparingDouble(one -> one.carried().low()));
    }
}
