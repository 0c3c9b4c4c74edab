package cradlewright.analysis.checks.lift;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.standing.Standing;
import java.util.List;

/** Does it hang in straps? Then the answer is never better than TIGHT. */
public final class HangingCheck extends VisitCheck {

    /** Creates the check. */
    public HangingCheck() {
        super(new CheckInfo("lift.hanging", "Does it hang in straps?", "common practice, no source", Cautions.LIFTING,
                List.of("what carries the shell"), List.of()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        if (standing.carrier() != CarrierKind.STRAPS) {
            return List.of();
        }
        String swings = standing.lift().isPresent() ? "A load in straps from lift arms swings, and arms have no rating to the side: "
                : "A load in straps swings: ";
        return List.of(finding(subject, standing.visit().id(), subject.label()).say(Verdict.TIGHT,
                swings + "nobody beneath it, nobody leans on it, set it down before work starts."));
    }
}
