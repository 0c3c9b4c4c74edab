package cradlewright.analysis.checks.job;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.job.CarWork;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Was everything done that has to come first? Work that is done before what it rests on stops; work that has only begun is tight, since
 * in a shop the end of one step and the beginning of the next often overlap.
 */
public final class OrderCheck extends CarWorkCheck {

    /** Creates the check. */
    public OrderCheck() {
        super(new CheckInfo("job.order", "Was everything done that has to come first?", "common practice, no source", Cautions.WORK,
                List.of("which operations come after which", "which operations are begun or done"), List.of()));
    }

    @Override
    List<Finding> examine(CarWork work, LocalDate today, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (OperationFacts operation : work.operations()) {
            if (operation.begun(today) && !operation.afterIds().isEmpty()) {
                findings.add(judge(operation, work, subject));
            }
        }
        return findings;
    }

    private Finding judge(OperationFacts operation, CarWork work, Subject subject) {
        List<OperationFacts> open = operation.afterIds().stream().flatMap(id -> work.operation(id).stream())
                .filter(before -> !before.done()).toList();
        if (!open.isEmpty()) {
            String before = String.join(" and ", open.stream().map(OperationFacts::name).toList());
            return finding(subject, operation)
                    .remedy(Remedy.advice("Do " + before + ", or say that it is done if nobody ticked it."))
                    .say(operation.done() ? Verdict.STOP : Verdict.TIGHT, (operation.done() ? "Done" : "Begun") + " although " + before
                            + ", which comes first, is not done.");
        }
        if (operation.afterIds().stream().anyMatch(id -> work.operation(id).isEmpty())) {
            return finding(subject, operation).cantSay("It comes after work that is not among the jobs of this car.",
                    List.of("what " + operation.name() + " comes after: name operations of jobs on the same car"));
        }
        return finding(subject, operation).say(Verdict.HOLDS, "All that comes first is done.");
    }
}
