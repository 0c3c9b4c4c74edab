package cradlewright.analysis.checks;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Engine.SettingsKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.StandingKey;
import java.util.List;
import java.util.Optional;

/** A check about a car as it stands or hangs. A visit that cannot be resolved is the business of one data check alone. */
public abstract class VisitCheck extends ScopedCheck {

    /** Creates a check that says this about itself. */
    protected VisitCheck(CheckInfo info) {
        super(info, Scope.VISIT);
    }

    @Override
    public final List<Finding> examine(Subject subject, Reader reader) {
        Optional<Standing> standing = reader.read(new StandingKey(subject.ownerId(), subject.visitId().orElseThrow()));
        return standing.map(s -> examine(s, subject, reader)).orElse(List.of());
    }

    /** Answers the question for a visit that is resolved. */
    protected abstract List<Finding> examine(Standing standing, Subject subject, Reader reader);

    /** Returns what the shop has settled. */
    protected static SettingsFacts settings(Reader reader) {
        return reader.read(new SettingsKey());
    }
}
