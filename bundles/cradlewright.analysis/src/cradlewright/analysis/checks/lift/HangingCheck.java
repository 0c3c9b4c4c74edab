package cradlewright.analysis.checks.lift;

import cradlewright.analysis.check.Amount;
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
import cradlewright.analysis.load.HookHang;
import cradlewright.analysis.load.HookHangKey;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.lifting.LiftingFormulas;
import cradlewright.quantity.Dimension;
import java.util.List;
import java.util.Optional;

/** Does it hang in straps? Then the answer is never better than TIGHT. */
public final class HangingCheck extends VisitCheck {

    /** Creates the check. */
    public HangingCheck() {
        super(new CheckInfo("lift.hanging", "Does it hang in straps?", "common practice, no source", Cautions.LIFTING,
                List.of("what carries the shell", "length of each strap where several meet in one hook"),
                List.of(LiftingFormulas.HUNG_ON_LEGS)));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        if (standing.carrier() != CarrierKind.STRAPS) {
            return List.of();
        }
        String swings = standing.lift().isPresent() ? "A load in straps from lift arms swings, and arms have no rating to the side: "
                : "A load in straps swings: ";
        FindingBuilder finding = finding(subject, standing.visit().id(), subject.label());
        Optional<HookHang> hook = reader.read(HookHangKey.of(standing));
        if (hook.isPresent() && !hook.get().stays()) {
            return List.of(finding
                    .remedy(Remedy.advice("Hang it so that the hook is above the balance point, with lift points all round it."))
                    .say(Verdict.STOP, "With straps as long as these it does not stay hanging: one goes slack and it rolls or tips."));
        }
        String hangs = swings + "nobody beneath it, nobody leans on it, set it down before work starts.";
        if (hook.isEmpty() || hook.get().legs().isEmpty()) {
            return List.of(finding.say(Verdict.TIGHT, hangs));
        }
        finding.shown("hangs tilted by", new Amount(hook.get().tilt(), Dimension.ANGLE), "from the lengths of the straps")
                .shown("at most", new Amount(hook.get().tiltAtMost(), Dimension.ANGLE), "19 times in 20");
        if (hook.get().tiltAtMost() <= HookHang.MUCH_TILT) {
            return List.of(finding.say(Verdict.TIGHT, hangs));
        }
        finding.remedy(Remedy.advice("Shorten the straps at the end that hangs low, or lengthen those at the other."));
        if (hook.get().tiltAtMost() > HookHang.MOST_TILT) {
            return List.of(finding.say(Verdict.STOP, "It hangs so far from level that straps slip off their lift points."));
        }
        return List.of(finding.say(Verdict.TIGHT, "It does not hang level: what is loose slides and straps slip along. " + hangs));
    }
}
