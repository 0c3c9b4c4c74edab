package cradlewright.analysis.checks.joint;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.dolly.DollyCheck;
import cradlewright.analysis.checks.dolly.OpenEnd;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.NodeFacts;
import java.util.List;

/** Is it known how the members of a dolly that was made here are joined? Which ends need a joint of their own, {@link OpenEnd} tells. */
public final class MissingJointCheck extends DollyCheck {

    /** Creates the check. */
    public MissingJointCheck() {
        super(new CheckInfo("joint.missing", "Is it known how the members of the dolly are joined?", "EN 1993-1-8 2.1", Cautions.JOINTS,
                List.of("joint at each end of each member"), List.of()));
    }

    @Override
    protected List<Finding> examine(DollyFacts dolly, Subject subject, Reader reader) {
        boolean madeHere = dolly.build() == DollyFacts.Build.OWN || dolly.build() == DollyFacts.Build.WELDED;
        if (!madeHere || dolly.members().isEmpty()) {
            return List.of();
        }
        List<String> open = OpenEnd.of(dolly).stream().map(end -> "joint of " + end.member().name() + " at "
                + dolly.node(end.nodeId()).map(NodeFacts::name).orElse(end.nodeId())).toList();
        if (open.isEmpty()) {
            return List.of(finding(subject, dolly.id(), dolly.name())
                    .say(Verdict.HOLDS, "Every end that meets another member has its joint."));
        }
        return List.of(finding(subject, dolly.id(), dolly.name())
                .cantSay("Nobody said how some members are joined, so their joints are not looked at.",
                open));
    }
}
