package cradlewright.analysis.checks.job;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.HoldPointFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.facts.SignOffFacts;
import cradlewright.analysis.job.CarWork;
import cradlewright.analysis.job.SignState;
import cradlewright.analysis.job.SignStateKey;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Did somebody sign before work went on? Work that was begun behind an unsigned hold point stops, whether right behind it or further on.
 * A signature that lapsed or cannot be told is the business of {@link SignOffLapsedCheck}.
 */
public final class HoldPointCheck extends CarWorkCheck {

    /** Creates the check. */
    public HoldPointCheck() {
        super(new CheckInfo("job.hold-point", "Did somebody sign before work went on?", "common practice, no source", Cautions.WORK,
                List.of("which operation each hold point stands before", "which operations are begun or done", "sign-offs"), List.of()));
    }

    @Override
    List<Finding> examine(CarWork work, LocalDate today, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (HoldPointFacts point : work.holdPoints()) {
            SignState state = reader.read(new SignStateKey(subject.ownerId(), point.id()));
            if (state.kind() == SignState.Kind.SIGNED) {
                findings.add(signed(point, work.held(point), state, subject));
            } else if (state.kind() == SignState.Kind.OPEN) {
                findings.add(open(point, work, today, subject));
            }
        }
        return findings;
    }

    private Finding signed(HoldPointFacts point, OperationFacts held, SignState state, Subject subject) {
        LocalDate day = state.last().flatMap(SignOffFacts::at).orElseThrow().toLocalDate();
        if (held.started().filter(day::isAfter).isPresent()) {
            return finding(subject, point).say(Verdict.TIGHT, "Signed by " + state.who() + ", after " + held.name() + " had begun on "
                    + held.started().get() + ".");
        }
        return finding(subject, point).say(Verdict.HOLDS, "Signed by " + state.who() + ".");
    }

    private Finding open(HoldPointFacts point, CarWork work, LocalDate today, Subject subject) {
        OperationFacts held = work.held(point);
        Optional<OperationFacts> begun = work.from(held).stream().filter(operation -> operation.begun(today)).findFirst();
        FindingBuilder finding = finding(subject, point);
        point.text().ifPresent(text -> finding.remedy(Remedy.advice("Look whether it is so, then sign: " + text)));
        if (begun.isPresent()) {
            return finding.remedy(Remedy.advice("Stop work on " + begun.get().name() + " until somebody has looked and signed."))
                    .say(Verdict.STOP, "Nobody has signed, but " + begun.get().name() + (begun.get().done() ? " is done." : " has begun."));
        }
        if (work.ready(held)) {
            return finding.say(Verdict.TIGHT, "Work waits here: nobody has signed, and " + held.name() + " is next.");
        }
        return finding.say(Verdict.HOLDS, "Nobody has signed yet, and what comes before " + held.name() + " is not done.");
    }
}
