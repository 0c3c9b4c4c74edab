package cradlewright.analysis.run;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Change;
import java.util.List;

/**
 * What one check would answer about one subject after a change.
 *
 * @param check the check
 * @param subject what it is asked about
 * @param change the records as they would be
 */
record OneAfterKey(Check check, Subject subject, Change change) implements Key<List<Finding>> {

    @Override
    public List<Finding> compute(Reader reader) {
        return reader.after(change).read(new FindingsKey(check, subject));
    }

    @Override
    public boolean bulky() {
        return true;
    }
}
