package cradlewright.analysis.checks;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.standing.Standing;
import java.util.List;

/**
 * A check of a dolly with what stands on it as one rigid load on its castors. It says CAN'T SAY once when mass or balance point
 * are not
 * known; a dolly whose castors hold nothing up is left to the count of castors.
 */
public abstract class DollyLoadCheck extends VisitCheck {

    /** Creates a check that says this about itself. */
    protected DollyLoadCheck(CheckInfo info) {
        super(info);
    }

    /** Tells whether the question arises for a visit on a dolly with castors. */
    protected abstract boolean arises(Standing standing, Reader reader);

    /** Answers it for a dolly that stands on its castors. */
    protected abstract List<Finding> judge(DollyLoad load, Standing standing, Subject subject, Reader reader);

    @Override
    protected final List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        if (standing.dolly().isEmpty() || standing.dolly().get().castors().isEmpty() || !arises(standing, reader)) {
            return List.of();
        }
        List<String> missing = DollyLoad.missing(standing, reader);
        if (!missing.isEmpty()) {
            return List.of(finding(subject, standing.dolly().get().id(), standing.dolly().get().name())
                    .cantSay("What stands on the castors is not known.", missing));
        }
        DollyLoad load = DollyLoad.of(standing, reader);
        return load.standsOnCastors() ? judge(load, standing, subject, reader) : List.of();
    }

    /** Tells whether it stands on its castors rather than on screw feet. */
    protected static boolean onCastors(Standing standing) {
        return standing.dolly().filter(dolly -> !DollyLoad.onFeet(dolly)).isPresent();
    }
}
