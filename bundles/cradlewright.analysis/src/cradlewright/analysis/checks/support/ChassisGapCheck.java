package cradlewright.analysis.checks.support;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import java.util.List;

/**
 * Does the shell touch at every mount of its chassis? Shim stacks alone do not tell: after a repair the chassis need not have the heights
 * that the stacks were found with. So each gap is to be measured, and without that the loads are those of mounts that all touch.
 */
public final class ChassisGapCheck extends VisitCheck {

    /** Creates the check. */
    public ChassisGapCheck() {
        super(new CheckInfo("support.on-chassis", "Was the gap at every mount of the chassis measured?", "common practice, no source",
                Cautions.SUPPORTS, List.of("gap between shell and shims at each body mount, with the bolts loose"), List.of()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        if (standing.carrier() != CarrierKind.CHASSIS || standing.supports().isEmpty()) {
            return List.of();
        }
        FindingBuilder finding = finding(subject, standing.visit().id(), subject.label());
        List<String> unmeasured = standing.supports().stream().filter(support -> !support.gapKnown()).map(Support::name).toList();
        if (!unmeasured.isEmpty()) {
            return List.of(finding.cantSay("The loads hold only if the shell touches at every mount, and nobody measured that.",
                    List.of("gap at " + String.join(", ", unmeasured) + ": feelers between shell and shims with the bolts loose")));
        }
        return List.of(finding.say(Verdict.HOLDS, "The gap at every mount was measured."));
    }
}
