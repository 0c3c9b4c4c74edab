package cradlewright.analysis.change;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Weight;
import java.util.List;
import java.util.Optional;

/**
 * What there is to say about lifting a car.
 *
 * @param standing how it hangs; nothing when the files do not tell
 * @param weight what is lifted
 * @param loads what each arm or strap carries while it hangs still, with the masses as listed; not found when something is missing
 * @param findings the answers of all checks
 */
public record LiftAnswer(Optional<Standing> standing, Weight weight, Loads loads, List<Finding> findings) {

    /** Copies the list. */
    public LiftAnswer {
        findings = List.copyOf(findings);
    }
}
