package cradlewright.analysis.run;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Asks the checks of a catalogue about the subjects of a shop, working out only what an edit touched. */
public final class ShopChecks {

    private final Engine engine;
    private final CheckCatalogue catalogue;

    /** Uses an engine that holds a snapshot, and the checks in force. */
    public ShopChecks(Engine engine, CheckCatalogue catalogue) {
        this.engine = engine;
        this.catalogue = catalogue;
    }

    /**
     * Asks every check about every subject that {@code wanted} lets through.
     *
     * @throws cradlewright.analysis.engine.CancelledException when {@code progress} says so
     */
    public ShopAnswers ask(Predicate<Subject> wanted, Progress progress) {
        List<Subject> subjects = engine.read(new SubjectsKey(), progress).stream().filter(wanted).toList();
        progress.begin(subjects.size());
        List<Finding> findings = new ArrayList<>();
        for (Subject subject : subjects) {
            for (Check check : checks(subject.scope())) {
                findings.addAll(engine.read(new FindingsKey(check, subject), progress));
            }
            progress.step(subject.label());
        }
        return new ShopAnswers(engine.snapshot().number(), engine.snapshot().name(), subjects, findings);
    }

    private List<Check> checks(Scope scope) {
        return catalogue.all().stream().filter(check -> check.scope() == scope).toList();
    }
}
