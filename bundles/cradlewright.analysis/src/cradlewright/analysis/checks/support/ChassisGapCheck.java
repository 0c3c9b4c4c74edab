package cradlewright.analysis.checks.support;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.standing.GapFrom;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Is it known how the shell touches at every mount of its chassis? Either the gaps were measured, or the setup says what its shims are made
 * up to, so that they follow from the stacks. After a repair the chassis need not have the heights that the stacks were found with: then
 * stacks alone are TIGHT. Without either the loads are those of mounts that all touch, which nobody looked at.
 */
public final class ChassisGapCheck extends VisitCheck {

    /** Creates the check. */
    public ChassisGapCheck() {
        super(new CheckInfo("support.on-chassis", "Is it known how the shell touches at every mount of the chassis?",
                "common practice, no source", Cautions.SUPPORTS,
                List.of("gap between shell and shims at each body mount, with the bolts loose",
                        "or what the shims are made up to, the stacks as found and the stacks there now"), List.of()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        if (standing.carrier() != CarrierKind.CHASSIS || standing.supports().isEmpty()) {
            return List.of();
        }
        FindingBuilder finding = finding(subject, standing.visit().id(), subject.label());
        List<Support> open = standing.supports().stream().filter(support -> !support.gapKnown()).toList();
        if (!open.isEmpty()) {
            return List.of(finding.cantSay("The loads hold only if the shell touches at every mount, and nobody measured that.",
                    missing(open, standing.setup().shimTarget())));
        }
        return List.of(known(standing.supports(), finding));
    }

    private static Finding known(List<Support> supports, FindingBuilder finding) {
        if (supports.get(0).gapFrom() == GapFrom.MEASURED) {
            return finding.say(Verdict.HOLDS, "The gap at every mount was measured.");
        }
        List<String> repaired = supports.stream().filter(support -> support.condition() == Condition.REPAIRED).map(Support::name).toList();
        if (repaired.isEmpty()) {
            return finding.say(Verdict.HOLDS, "The gaps follow from the stacks: " + supports.get(0).gapFrom().words() + ".");
        }
        return finding.remedy(Remedy.advice("Measure the gaps with feelers, the bolts loose, and enter them."))
                .say(Verdict.TIGHT, "The gaps follow from the stacks, but " + String.join(", ", repaired)
                        + (repaired.size() == 1 ? " was" : " were") + " repaired since and may lie at another height.");
    }

    private static List<String> missing(List<Support> open, Optional<SetupFacts.ShimTarget> target) {
        String names = String.join(", ", open.stream().map(Support::name).toList());
        List<String> missing = new ArrayList<>();
        missing.add("gap at " + names + ": feelers between shell and shims with the bolts loose");
        if (target.filter(SetupFacts.ShimTarget.AS_FOUND::equals).isPresent()) {
            open.stream().filter(support -> support.shims().flatMap(ShimStackFacts::height).isEmpty())
                    .forEach(support -> missing.add("or the stack there now at " + support.name()));
            open.stream().filter(support -> support.mount().flatMap(MountFacts::asFound).flatMap(ShimStackFacts::height).isEmpty())
                    .forEach(support -> missing.add("or the stack as found at " + support.name()));
        } else if (target.isEmpty()) {
            missing.add("or what the shims of this setup are made up to: the stacks as found, the drawing");
        }
        return missing;
    }
}
