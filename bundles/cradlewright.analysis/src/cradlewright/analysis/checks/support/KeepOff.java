package cradlewright.analysis.checks.support;

import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.load.Situation;
import java.util.Optional;
import java.util.function.Function;

/** Asks a question about supports again without the people, or the rolling, that made the answer worst. */
final class KeepOff {

    private KeepOff() {
    }

    /**
     * Returns the remedy, if it makes the answer better.
     *
     * @param worst what was going on
     * @param now the answer with it
     * @param loads all situations
     * @param judgement the check's own judgement
     */
    static Optional<Remedy> remedy(Situation worst, Verdict now, VisitLoads loads, Function<VisitLoads,
            Optional<Verdict>> judgement) {
        if (now == Verdict.HOLDS || worst.kind() == Situation.Kind.AT_REST) {
            return Optional.empty();
        }
        Optional<Verdict> after = judgement.apply(loads.without(situation -> situation.kind() == worst.kind()));
        return after.filter(verdict -> verdict.compareTo(now) < 0).map(verdict -> Remedy.proven(words(worst), verdict));
    }

    private static String words(Situation worst) {
        return switch (worst.kind()) {
            case LEAN -> "Nobody leans on it while it rests on these supports.";
            case BAR -> "Nobody pulls on a bar while it rests on these supports.";
            case STAND_ON -> "Nobody stands on it while it rests on these supports.";
            case HOLE -> "Do not roll it over holes or drains while it is this heavy.";
            case JOINT -> "Do not roll it over joints while it is this heavy, or put the feet down.";
            case AT_REST -> throw new IllegalArgumentException("at rest there is nothing to leave off");
        };
    }
}
