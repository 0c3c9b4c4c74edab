package cradlewright.analysis.checks;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import java.util.Objects;

/** What every check about one sort of subject has: what it says about itself, and what it is asked about. */
public abstract class ScopedCheck implements Check {

    private final CheckInfo info;
    private final Scope scope;

    /** Creates a check that says this about itself and is asked about that. */
    protected ScopedCheck(CheckInfo info, Scope scope) {
        this.info = Objects.requireNonNull(info);
        this.scope = Objects.requireNonNull(scope);
    }

    @Override
    public final CheckInfo info() {
        return info;
    }

    @Override
    public final Scope scope() {
        return scope;
    }

    /** Starts a finding about an object. */
    protected final FindingBuilder finding(Subject subject, String objectId, String objectName) {
        return new FindingBuilder(info, subject, objectId, objectName);
    }
}
