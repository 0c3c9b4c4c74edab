package cradlewright.analysis.run;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Change;
import java.util.ArrayList;
import java.util.List;

/**
 * What all checks would answer about one subject after a change.
 *
 * @param catalogue the checks in force
 * @param subject what they are asked about
 * @param change the records as they would be
 */
record AfterKey(CheckCatalogue catalogue, Subject subject, Change change) implements Key<List<Finding>> {

    @Override
    public List<Finding> compute(Reader reader) {
        return ask(catalogue, subject, reader.after(change));
    }

    @Override
    public boolean bulky() {
        return true;
    }

    /** Asks all checks of the scope of a subject. */
    static List<Finding> ask(CheckCatalogue catalogue, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (Check check : catalogue.of(subject.scope())) {
            findings.addAll(reader.read(new FindingsKey(check, subject)));
        }
        return List.copyOf(findings);
    }
}
