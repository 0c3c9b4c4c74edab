package cradlewright.analysis.run;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.CancelledException;
import cradlewright.analysis.engine.CycleException;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import java.util.List;

/**
 * The findings of one check about one subject.
 *
 * @param check the check; one instance of each is in force
 * @param subject what it is asked about
 */
public record FindingsKey(Check check, Subject subject) implements Key<List<Finding>> {

    @Override
    public List<Finding> compute(Reader reader) {
        try {
            return List.copyOf(check.examine(subject, reader));
        } catch (CancelledException | CycleException e) {
            throw e;
        } catch (RuntimeException e) {
            // A check that breaks off must neither take the others with it nor pass for an answer.
            return List.of(new FindingBuilder(check.info(), subject, subject.ownerId(), subject.label()).cantSay(
                    "This check broke off and gives no answer.",
                    List.of("a calculation that comes to an end (" + e.getClass().getSimpleName() + ": " + e.getMessage() + ")")));
        }
    }
}
