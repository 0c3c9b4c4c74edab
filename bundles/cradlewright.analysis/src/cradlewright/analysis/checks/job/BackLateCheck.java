package cradlewright.analysis.checks.job;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.WaitFacts;
import cradlewright.analysis.job.CarWork;
import java.time.LocalDate;
import java.util.List;

/** Is what the work waits for late? Asked of waits that are open and whose operation is not done. */
public final class BackLateCheck extends CarWorkCheck {

    /** Creates the check. */
    public BackLateCheck() {
        super(new CheckInfo("job.back-late", "Is what the work waits for in time?", "common practice, no source", Cautions.WORK,
                List.of("until when each wait is to last", "when it ended"), List.of()));
    }

    @Override
    List<Finding> examine(CarWork work, LocalDate today, Subject subject, Reader reader) {
        return work.openWaits(today).stream().map(wait -> judge(wait, today, finding(subject, wait))).toList();
    }

    private static Finding judge(WaitFacts wait, LocalDate today, FindingBuilder finding) {
        String what = wait.reason().orElse(wait.name());
        wait.reason().ifPresent(finding::situation);
        if (wait.until().isEmpty()) {
            return finding.cantSay("Nobody said until when.", List.of("until when work waits, " + what
                    + ": ask and write down the day"));
        }
        if (wait.until().get().isBefore(today)) {
            return finding.remedy(Remedy.advice("Ask where it is; write down the new day, or the day on which the wait ended."))
                    .say(Verdict.TIGHT, "Was to end on " + wait.until().get() + " and has not.");
        }
        return finding.say(Verdict.HOLDS, "To end on " + wait.until().get() + ".");
    }
}
