package cradlewright.analysis.check;

import cradlewright.analysis.engine.Reader;
import java.util.List;

/**
 * One question that is asked about the shop. Implementations are small, without state, and read everything through the
 * reader; they never see the editable model.
 */
public interface Check {

    /** Returns what the check says about itself. */
    CheckInfo info();

    /** Returns what it is asked about. */
    Scope scope();

    /**
     * Answers the question for one subject.
     *
     * @return the findings; empty when the question does not arise there, for example a strap check on a dolly
     */
    List<Finding> examine(Subject subject, Reader reader);
}
