package cradlewright.analysis.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How one answer changes.
 *
 * @param kind in what way
 * @param before the answer as things are
 * @param after the answer after the change
 */
public record FindingChange(Kind kind, Optional<Finding> before, Optional<Finding> after) {

    /** In what way an answer changes; answers that stay as they are have no change. */
    public enum Kind {
        /** Not held, tight or not known, and not asked before. */
        APPEARS,
        /** A graver verdict. */
        WORSE,
        /** The same verdict, which is not HOLDS, with more asked of what can be given. */
        CLOSER,
        /** A milder verdict, or the question does not arise any more. */
        BETTER,
        /** Something held before and is not answered any more; nobody may take that for held. */
        UNANSWERED
    }

    /** Growth of demand over capacity from which people notice. */
    private static final double NOTICED = 0.005;

    private record Place(String check, Optional<String> visitId, String objectId) {
        static Place of(Finding finding) {
            return new Place(finding.check(), finding.subject().visitId(), finding.objectId());
        }
    }

    /** What is asked of whichever object it hits worst: the same question may be answered of another object after a change. */
    private record Question(String check, Optional<String> visitId, String situation) {
        static Question of(Finding finding) {
            return new Question(finding.check(), finding.subject().visitId(), finding.situation());
        }
    }

    /** Tells whether the question is answered of another object now. */
    public boolean moved() {
        return before.isPresent() && after.isPresent() && !before.get().objectId().equals(after.get().objectId());
    }

    /**
     * Compares two runs of the same checks about the same subjects. An answer whose object has none any more goes with a new one to the
     * same question in the same situation: the worst place has moved.
     *
     * @param before the answers as things are
     * @param after the answers after the change
     * @return the changes in the order of {@code after}, then those that only {@code before} has
     */
    public static List<FindingChange> between(List<Finding> before, List<Finding> after) {
        Map<Place, Deque<Finding>> open = new LinkedHashMap<>();
        before.forEach(finding -> open.computeIfAbsent(Place.of(finding), place -> new ArrayDeque<>()).add(finding));
        Map<Finding, Finding> same = new IdentityHashMap<>();
        after.forEach(finding -> Optional.ofNullable(open.get(Place.of(finding))).map(Deque::poll)
                .ifPresent(old -> same.put(finding, old)));
        List<FindingChange> changes = new ArrayList<>();
        for (Finding finding : after) {
            Optional<Finding> old = Optional.ofNullable(same.get(finding)).or(() -> elsewhere(finding, before, after, open.values()));
            kind(old, finding).ifPresent(kind -> changes.add(new FindingChange(kind, old, Optional.of(finding))));
        }
        open.values().stream().flatMap(Deque::stream).forEach(old -> changes.add(new FindingChange(
                old.verdict() == Verdict.HOLDS ? Kind.UNANSWERED : Kind.BETTER, Optional.of(old), Optional.empty())));
        return List.copyOf(changes);
    }

    /** Only a question that has one answer before and after can move: where each object has its own, one that is gone stays unanswered. */
    private static Optional<Finding> elsewhere(Finding finding, List<Finding> before, List<Finding> after,
            Collection<Deque<Finding>> open) {
        List<Finding> old = of(Question.of(finding), before);
        return old.size() == 1 && of(Question.of(finding), after).size() == 1 && open.stream().anyMatch(left -> left.remove(old.get(0)))
                ? Optional.of(old.get(0)) : Optional.empty();
    }

    private static List<Finding> of(Question question, List<Finding> findings) {
        return findings.stream().filter(finding -> Question.of(finding).equals(question)).toList();
    }

    private static Optional<Kind> kind(Optional<Finding> before, Finding after) {
        if (before.isEmpty()) {
            return after.verdict() == Verdict.HOLDS ? Optional.empty() : Optional.of(Kind.APPEARS);
        }
        int order = after.verdict().compareTo(before.get().verdict());
        if (order != 0) {
            return Optional.of(order > 0 ? Kind.WORSE : Kind.BETTER);
        }
        boolean closer = after.verdict() != Verdict.HOLDS && after.use().orElse(0.0) > before.get().use().orElse(0.0) + NOTICED;
        return closer ? Optional.of(Kind.CLOSER) : Optional.empty();
    }
}
