package cradlewright.analysis.checks.data;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.PieceKind;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.standing.Standing;
import java.util.List;

/** Is it known where people lean, pull or stand, and what they do there? A point without either is left out of every answer. */
public final class WorkPointCheck extends VisitCheck {

    /** Creates the check. */
    public WorkPointCheck() {
        super(new CheckInfo("data.work-point", "Is it known where people lean, pull or stand?", "common practice, no source", Cautions.DATA,
                List.of("place and kind of each point of work"), List.of()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        if (standing.lifted() || !standing.carries(PieceKind.SHELL)) {
            return List.of();
        }
        return standing.car().workPoints().stream().filter(point -> point.position().isEmpty() || point.kind().isEmpty())
                .map(point -> open(point, subject)).toList();
    }

    private Finding open(WorkPointFacts point, Subject subject) {
        return finding(subject, point.id(), point.name()).cantSay("What work does here is left out of all answers.",
                List.of(point.position().isEmpty() ? "where " + point.name() + " is: measure it from the marks"
                        : "what is done at " + point.name() + ": somebody leans there, pulls on a bar or stands there"));
    }
}
