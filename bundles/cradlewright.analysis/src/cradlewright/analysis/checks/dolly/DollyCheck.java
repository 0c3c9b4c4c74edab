package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.checks.ScopedCheck;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.DollyFacts;
import java.util.List;

/** A check about a dolly by itself. */
public abstract class DollyCheck extends ScopedCheck {

    /** Creates a check that says this about itself. */
    protected DollyCheck(CheckInfo info) {
        super(info, Scope.DOLLY);
    }

    @Override
    public final List<Finding> examine(Subject subject, Reader reader) {
        return reader.read(new FactKey<>(DollyFacts.class, subject.ownerId())).map(dolly -> examine(dolly, subject, reader))
                .orElse(List.of());
    }

    /** Answers the question for a dolly. */
    protected abstract List<Finding> examine(DollyFacts dolly, Subject subject, Reader reader);
}
