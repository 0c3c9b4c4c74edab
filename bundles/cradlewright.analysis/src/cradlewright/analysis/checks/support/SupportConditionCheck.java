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
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import java.util.List;

/** Is the metal sound where the weight goes in? */
public final class SupportConditionCheck extends VisitCheck {

    /** Creates the check. */
    public SupportConditionCheck() {
        super(new CheckInfo("support.condition", "Is the metal sound where the weight goes in?", "common practice, no source",
                Cautions.LIFTING + " Do not lift a body on rusted jacking points.",
                List.of("condition of each mount and lift point in use"),
                List.of()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        if (standing.carrier() == CarrierKind.AWAY) {
            return List.of();
        }
        return standing.supports().stream().map(support -> examine(support, standing, subject)).toList();
    }

    private Finding examine(Support support, Standing standing, Subject subject) {
        FindingBuilder finding = finding(subject, support.objectId(), support.name());
        return switch (support.condition()) {
            case SOUND -> finding.say(Verdict.HOLDS, "Looked at and found sound.");
            case REPAIRED -> finding.say(Verdict.TIGHT, "Carries on a repair: look at the repair before each lift.");
            case THIN -> standing.lifted()
                    ? finding.remedy(Remedy.advice("Move the pad to sound metal or spread the load over a plate that reaches sound metal."))
                            .say(Verdict.STOP, "The sheet is thin here and the shell hangs or is lifted on it.")
                    : finding.say(Verdict.TIGHT, "The sheet is thin here: watch it, and do not lift on it.");
            case HOLED -> finding.remedy(Remedy.advice("Move the support to sound metal, or make good the place before it carries."))
                    .say(Verdict.STOP, "The metal is holed where the weight goes in.");
            case NOT_LOOKED_AT -> finding.cantSay("Nobody has looked at the metal here.",
                    List.of("condition of this place: clean it, look, tap it, and enter what was found"));
        };
    }
}
