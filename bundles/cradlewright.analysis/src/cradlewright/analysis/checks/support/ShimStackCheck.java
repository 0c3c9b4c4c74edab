package cradlewright.analysis.checks.support;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import java.util.List;

/** Is a stack of shims short enough to stay put? */
public final class ShimStackCheck extends VisitCheck {

    /** Pieces that a stack may have: common practice, no source. */
    private static final int MOST_PIECES = 5;

    /** Creates the check. */
    public ShimStackCheck() {
        super(new CheckInfo("support.shim-stack", "Is a stack of shims short enough to stay put?", "common practice, no source",
                "No wood and no loose plates in a stack; the thickest shim lies at the bottom.",
                List.of("number and thickness of the shims in each stack"),
                List.of()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        return standing.supports().stream().filter(ShimStackCheck::hasShims).map(support -> examine(support, subject)).toList();
    }

    private static boolean hasShims(Support support) {
        return support.shims().filter(stack -> !stack.shims().isEmpty()).isPresent();
    }

    private Finding examine(Support support, Subject subject) {
        FindingBuilder finding = finding(subject, support.objectId(), support.name());
        int pieces = support.shims().get().pieces();
        if (pieces > MOST_PIECES) {
            return finding.remedy(Remedy.advice("Replace thin shims by a thicker one until at most " + MOST_PIECES + " pieces are left."))
                    .say(Verdict.STOP, "The stack has " + pieces + " pieces; more than " + MOST_PIECES + " slip.");
        }
        if (support.shims().get().height().isEmpty()) {
            return finding.cantSay("The shims in this stack are not all counted and measured.",
                    List.of("number and thickness of each shim in the stack: count and measure them"));
        }
        return finding.say(pieces == MOST_PIECES ? Verdict.TIGHT : Verdict.HOLDS, "The stack has " + pieces
                + (pieces == 1 ? " piece." : " pieces."));
    }
}
