package cradlewright.analysis.checks;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Reader;
import java.util.List;

/** Stands for a contributed check that cannot be asked, so that nobody takes its silence for an answer. */
final class UnusableCheck implements Check {

    private final CheckInfo info;
    private final String reason;

    UnusableCheck(int number, String contributor, String reason) {
        info = new CheckInfo("contributed.unusable-" + number, "Can the check that " + contributor + " adds be asked?",
                "common practice, no source", Cautions.DATA, List.of("a check that can be used"), List.of());
        this.reason = "a check of " + contributor + " that can be used: " + reason;
    }

    @Override
    public CheckInfo info() {
        return info;
    }

    @Override
    public Scope scope() {
        return Scope.CAR;
    }

    @Override
    public List<Finding> examine(Subject subject, Reader reader) {
        return List.of(new FindingBuilder(info, subject, subject.ownerId(), subject.label())
                .cantSay("A check that was added to the program cannot be asked.", List.of(reason)));
    }
}
