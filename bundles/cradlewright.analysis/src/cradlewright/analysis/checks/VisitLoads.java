package cradlewright.analysis.checks;

import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.LoadsKey;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.load.SituationsKey;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What the supports of one visit carry in several situations, as it is and without factors.
 *
 * @param all one entry for each situation, at rest first
 */
public record VisitLoads(List<Loads> all) {

    /**
     * What several supports carry together in one situation, in N.
     *
     * @param situation what happens
     * @param force with the masses as listed
     * @param low sum of the low ends
     * @param high sum of the high ends
     */
    public record Total(Situation situation, double force, double low, double high) {
    }

    /** Copies the list. */
    public VisitLoads {
        all = List.copyOf(all);
    }

    /** Reads what is carried in those situations of a visit that are wanted. */
    public static VisitLoads read(Subject subject, Reader reader, Predicate<Situation> wanted) {
        String visitId = subject.visitId().orElseThrow();
        List<Loads> all = new ArrayList<>();
        for (Situation situation : reader.read(new SituationsKey(subject.ownerId(), visitId))) {
            if (wanted.test(situation)) {
                all.add(reader.read(new LoadsKey(subject.ownerId(), visitId, situation, false)));
            }
        }
        return new VisitLoads(all);
    }

    /** Returns the first situation without an answer, for want of an input or because the calculation broke off. */
    public Optional<Loads> unanswered() {
        return all.stream().filter(loads -> loads.outcome() == Loads.Outcome.MISSING
                || loads.outcome() == Loads.Outcome.BROKE_OFF).findFirst();
    }

    /** Returns the answers of the situations in which it stands. */
    public List<Loads> found() {
        return all.stream().filter(Loads::found).toList();
    }

    /** Returns the answer at rest, if it stands then. */
    public Optional<Loads> atRest() {
        return found().stream().filter(loads -> loads.situation().kind() == Situation.Kind.AT_REST).findFirst();
    }

    /** Returns the same without the situations that {@code left} names. */
    public VisitLoads without(Predicate<Situation> left) {
        return new VisitLoads(all.stream().filter(loads -> !left.test(loads.situation())).toList());
    }

    /** Returns what the contacts carry together in the situation in which that is most. */
    public Optional<Total> most(Collection<String> contactIds) {
        return totals(contactIds).stream().max(Comparator.comparingDouble(Total::high));
    }

    /** Returns what the contacts carry together at rest. */
    public Optional<Total> atRest(Collection<String> contactIds) {
        return atRest().flatMap(loads -> total(loads, contactIds));
    }

    /** Returns the mean of what the supports carry at rest, in N; zero when there is no answer. */
    public double meanAtRest() {
        return atRest().stream().flatMap(loads -> loads.supports().stream()).mapToDouble(Carried::force).average().orElse(0);
    }

    private List<Total> totals(Collection<String> contactIds) {
        return found().stream().flatMap(loads -> total(loads, contactIds).stream()).toList();
    }

    private static Optional<Total> total(Loads loads, Collection<String> contactIds) {
        List<Carried> carried = contactIds.stream().flatMap(id -> loads.support(id).stream()).toList();
        if (carried.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Total(loads.situation(), carried.stream().mapToDouble(Carried::force).sum(),
                carried.stream().mapToDouble(Carried::low).sum(), carried.stream().mapToDouble(Carried::high).sum()));
    }
}
