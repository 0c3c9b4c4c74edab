package cradlewright.analysis.checks;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Input;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/**
 * A check of what supports carry. It says CAN'T SAY once when the loads are not known; a situation in which the car falls over is
 * left to the checks of tipping.
 */
public abstract class LoadedVisitCheck extends VisitCheck {

    /** So many supports carry the same whatever their heights. */
    private static final int INDIFFERENT_TO_HEIGHTS = 3;

    private final Predicate<Situation> wanted;

    /** Creates a check that looks at every situation of a visit. */
    protected LoadedVisitCheck(CheckInfo info) {
        this(info, situation -> true);
    }

    /** Creates a check that looks at those situations of a visit that are wanted. */
    protected LoadedVisitCheck(CheckInfo info, Predicate<Situation> wanted) {
        super(info);
        this.wanted = wanted;
    }

    /** Tells whether the question arises. */
    protected abstract boolean arises(Standing standing);

    /** Tells whether there is something to say even of what no push of the supports would hold: not so, but for what hangs in one hook. */
    protected boolean answersWithoutLoads(Standing standing, Reader reader) {
        return false;
    }

    /** Answers it from what the supports carry; situations without an answer are not among {@link VisitLoads#found()}. */
    protected abstract List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader);

    @Override
    protected final List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        if (!arises(standing)) {
            return List.of();
        }
        VisitLoads loads = VisitLoads.read(subject, reader, wanted);
        List<Finding> findings = loads.found().isEmpty() && !answersWithoutLoads(standing, reader) ? List.of()
                : judge(standing, loads, subject, reader).stream().map(finding -> withHeights(finding, standing)).toList();
        if (loads.unanswered().isEmpty()) {
            return findings;
        }
        // What stops in a situation that has its answer stops whatever the others may say.
        List<Finding> certain = new ArrayList<>(findings.stream().filter(finding -> finding.verdict() == Verdict.STOP).toList());
        certain.add(unanswered(standing, loads.unanswered().get(), subject));
        return certain;
    }

    /** Notes what heights may be off by, where they act on the loads: not on three supports, which share whatever their heights. */
    private static Finding withHeights(Finding finding, Standing standing) {
        if (standing.supports().size() <= INDIFFERENT_TO_HEIGHTS) {
            return finding;
        }
        double most = standing.supports().stream().mapToDouble(Support::gapU).max().orElse(0);
        String origin = most > 0 ? "the largest of any support, 19 times in 20"
                : standing.supports().stream().anyMatch(Support::gapKnown) ? "nobody stated any: heights are taken as stated"
                : "nobody gave heights or gaps: all are taken to touch";
        return finding.withInput(new Input("give or take of heights that counts", Amount.length(Value.COVERAGE * most), origin, false));
    }

    private Finding unanswered(Standing standing, Loads loads, Subject subject) {
        return finding(subject, standing.visit().id(), subject.label()).situation(loads.situation().words())
                .cantSay("What each support carries is not known.", Arrays.asList(loads.reason().split("; ")));
    }

    /** Tells whether a situation is the one at rest. */
    protected static boolean atRest(Situation situation) {
        return situation.kind() == Situation.Kind.AT_REST;
    }
}
