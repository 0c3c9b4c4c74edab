package cradlewright.analysis.checks.job;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.HoldPointFacts;
import cradlewright.analysis.job.CarWork;
import cradlewright.analysis.job.SignState;
import cradlewright.analysis.job.SignStateKey;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Is everything as it was when somebody signed? Asked until the operation behind the hold point is done: what was signed for is history
 * then, and the work itself has changed it.
 */
public final class SignOffLapsedCheck extends CarWorkCheck {

    /** Creates the check. */
    public SignOffLapsedCheck() {
        super(new CheckInfo("job.sign-off-lapsed", "Is everything as it was when somebody signed?", "common practice, no source",
                Cautions.WORK, List.of("who signed, when, and for which visit",
                        "parts that are on, setup with shims, dolly, gear and readings of that visit"), List.of()));
    }

    @Override
    List<Finding> examine(CarWork work, LocalDate today, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (HoldPointFacts point : work.holdPoints()) {
            SignState state = reader.read(new SignStateKey(subject.ownerId(), point.id()));
            if (!work.held(point).done() && state.kind() != SignState.Kind.OPEN) {
                findings.add(judge(point, state, subject));
            }
        }
        return findings;
    }

    private Finding judge(HoldPointFacts point, SignState state, Subject subject) {
        if (state.missing().isPresent()) {
            return finding(subject, point).cantSay("It is signed, but that does not tell whether all is as it was.",
                    List.of(state.missing().get()));
        }
        if (state.kind() == SignState.Kind.LAPSED) {
            return finding(subject, point).remedy(Remedy.advice("Look at the car as it is now and sign again."))
                    .say(Verdict.STOP, "Lapsed: what it was signed for by " + state.who() + " has changed since.");
        }
        return finding(subject, point).say(Verdict.HOLDS, "Nothing has changed since it was signed by " + state.who() + ".");
    }
}
