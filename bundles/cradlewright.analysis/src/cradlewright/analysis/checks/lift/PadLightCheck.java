package cradlewright.analysis.checks.lift;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.LoadedVisitCheck;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.HookHang;
import cradlewright.analysis.load.HookHangKey;
import cradlewright.analysis.load.RaisedKey;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import cradlewright.mechanics.lifting.FourPads;
import cradlewright.mechanics.lifting.LiftingFormulas;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Does every pad or strap press enough to stay put? */
public final class PadLightCheck extends LoadedVisitCheck {

    /** Error in height of a pad that is reckoned with, m: common practice, no source. */
    private static final double HEIGHT_ERROR = 0.005;

    /** Creates the check. */
    public PadLightCheck() {
        super(new CheckInfo("lift.pad-light", "Does every pad or strap press enough to stay put?", "common practice, no source",
                Cautions.LIFTING + " Turn every pad up until it touches before raising, and look again a finger's breadth up.",
                List.of("places of all pads or straps", "mass and balance point", "length of each strap where several meet in one hook"),
                List.of(LiftingFormulas.HUNG_ON_LEGS, CoupledFormulas.ASSEMBLY, ContactFormulas.ENERGY, ContactFormulas.GRADIENT_BOUNDS)),
                        LoadedVisitCheck::atRest);
    }

    @Override
    protected boolean arises(Standing standing) {
        return standing.lifted();
    }

    @Override
    protected List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        Optional<HookHang> hook = reader.read(HookHangKey.of(standing));
        if (hook.isPresent() && !hook.get().stays()) {
            // It does not stay on its lift points: lift.strap and lift.hanging stop it.
            return List.of();
        }
        if (hook.isPresent() && hook.get().slack()) {
            return List.of(slack(standing, subject));
        }
        Optional<HookHang.Leg> leg = hook.flatMap(hang -> hang.legs().stream().min(Comparator.comparingDouble(HookHang.Leg::low)));
        if (leg.isPresent()) {
            return List.of(onHook(leg.get(), standing, loads, subject, reader));
        }
        Carried least = loads.atRest().orElseThrow().supports().stream().min(Comparator.comparingDouble(Carried::low))
                .orElseThrow();
        Support support = support(standing, least.id());
        double wanted = FourPads.LEAST_SHARE * loads.meanAtRest();
        double low = Math.max(0, least.low());
        FindingBuilder finding = finding(subject, support.objectId(), support.name()).situation("hanging still")
                .input("carries, masses as listed", Amount.force(least.force()), "worked out")
                .atLeast(Amount.force(wanted), Amount.force(low), "least it carries, against a tenth of the mean");
        Verdict verdict = Verdict.of(wanted, low, settings(reader).tightMargin());
        if (verdict == Verdict.STOP) {
            return List.of(finding.remedy(Remedy.advice("Set it down and turn up the pad or shorten the strap at "
                    + support.name()
                    + ", or move the arms so that the balance point lies nearer to it.")).say(verdict, support.name()
                            + " carries less than a tenth of the mean: it can slip out."));
        }
        List<Map<String, Double>> sunk = reader.read(
                new RaisedKey(subject.ownerId(), standing.visit().id(), support.contactId(), List.of(-HEIGHT_ERROR)));
        double sunkForce = sunk.stream().mapToDouble(forces -> forces.getOrDefault(support.contactId(), 0.0)).findFirst()
                .orElse(0);
        double left = Math.max(0, sunkForce - (least.force() - least.low()));
        finding.input("carries when set five millimetres low", Amount.force(left),
                "worked out; error in height common practice, no source");
        if (left < wanted) {
            return List.of(finding.remedy(Remedy.advice("Turn up the pad or take up the strap at " + support.name()
                    + " before raising, and read the scale there if you have one."))
                    .say(Verdict.TIGHT, support.name() + " carries least, and goes light when it is set a little low."));
        }
        return List.of(finding.say(standing.carrier() == CarrierKind.STRAPS ? Verdict.TIGHT : verdict,
                support.name() + " carries least, and that is enough to keep it in place."));
    }

    /** Stiff straps of lengths that are never quite alike leave all of it to three of them, or to two. */
    private Finding slack(Standing standing, Subject subject) {
        return finding(subject, standing.visit().id(), subject.label()).situation("hanging still")
                .shown("least that any one of them carries", Amount.force(0), "straps that do not stretch; own derivation")
                .remedy(Remedy.advice("Take hooks with a latch or shackles, so that no strap comes off while it is slack, and raise it a "
                        + "finger's breadth: pull at each strap before it goes higher."))
                .say(Verdict.TIGHT, "More straps meet in the hook than hold it, so any one of them may hang slack. What the others pull "
                        + "then is asked at each strap.");
    }

    /** Two or three straps in one hook: how they pull follows from how it hangs, and no height of a pad enters. */
    private Finding onHook(HookHang.Leg leg, Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        Support support = support(standing, leg.contactId());
        double wanted = FourPads.LEAST_SHARE * loads.meanAtRest();
        FindingBuilder finding = finding(subject, support.objectId(), support.name()).situation("hanging still")
                .input("pulls, masses as listed", Amount.force(leg.pull()), "from the lengths of the straps")
                .atLeast(Amount.force(wanted), Amount.force(leg.low()), "least it pulls, against a tenth of the mean");
        if (Verdict.of(wanted, leg.low(), settings(reader).tightMargin()) == Verdict.STOP) {
            return finding.remedy(Remedy.advice("Take straps of such lengths that the hook is nearer to " + support.name() + "."))
                    .say(Verdict.STOP, support.name() + " carries less than a tenth of the mean: it can slip out.");
        }
        return finding.say(Verdict.TIGHT, support.name() + " carries least, and that is enough to keep it in place.");
    }

    private static Support support(Standing standing, String contactId) {
        return standing.supports().stream().filter(s -> s.contactId().equals(contactId)).findFirst().orElseThrow();
    }
}
