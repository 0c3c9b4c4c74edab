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
import cradlewright.analysis.checks.PartsOff;
import cradlewright.analysis.checks.Stated;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import cradlewright.mechanics.formula.Constants;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Does each arm of the lift take its share? */
public final class ArmLoadCheck extends LoadedVisitCheck {

    /** Arms among which the rated load of a lift is divided when its plate names no arm: rule of the trade. */
    private static final int ARMS = 4;

    /** Creates the check. */
    public ArmLoadCheck() {
        super(new CheckInfo("lift.arm", "Does each arm of the lift take its share?",
                "plate and manual of the lift; a quarter of the rated load where they name no arm, common practice, no source",
                        Cautions.LIFTING,
                List.of("rated load of each arm, or of the lift", "places of the pads", "mass and balance point"),
                List.of(CoupledFormulas.ASSEMBLY, CoupledFormulas.STIFFNESS_SWEEP, ContactFormulas.ENERGY,
                        ContactFormulas.GRADIENT_BOUNDS)),
                LoadedVisitCheck::atRest);
    }

    @Override
    protected boolean arises(Standing standing) {
        return standing.lift().isPresent() && standing.supports().stream()
                .anyMatch(support -> support.holder() instanceof Holder.OnArm);
    }

    @Override
    protected List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        GearFacts.Lift lift = standing.lift().orElseThrow();
        List<Finding> findings = new ArrayList<>();
        for (GearFacts.ArmFacts arm : lift.arms()) {
            List<String> contacts = standing.supports().stream()
                    .filter(support -> support.holder() instanceof Holder.OnArm on && on.arm().id().equals(arm.id()))
                            .map(Support::contactId).toList();
            loads.most(contacts).ifPresent(most -> findings.add(judge(arm, lift, most, standing, subject, settings(reader).tightMargin())));
        }
        return findings;
    }

    private Finding judge(GearFacts.ArmFacts arm, GearFacts.Lift lift, VisitLoads.Total most, Standing standing, Subject subject,
            double margin) {
        double carried = Math.max(0, most.high()) / Constants.GRAVITY;
        FindingBuilder finding = finding(subject, arm.id(), arm.name()).situation("hanging still")
                .input("carries, masses as listed", Amount.mass(most.force() / Constants.GRAVITY), "worked out")
                .input("carries at most", Amount.mass(carried), "19 times in 20, any stiffness the shell may have");
        boolean ofArm = arm.ratedLoad().isPresent();
        Optional<Stated> stated = arm.ratedLoad().or(lift::ratedLoad).map(Stated::mass);
        if (stated.isEmpty()) {
            return finding.cantSay("Neither the rating of this arm nor that of the lift is in the files.",
                    List.of("rated load of " + arm.name() + " or of " + lift.name() + ": read it off the plate"));
        }
        double share = ofArm ? 1 : 1.0 / ARMS;
        stated.get().against(finding, carried, share, ofArm ? "rated load of the arm"
                : "a quarter of the rated load of the lift, since its plate names no arm (rule of the trade)");
        Verdict verdict = Verdict.of(carried, share * stated.get().low(), margin);
        if (verdict == Verdict.STOP) {
            PartsOff.remedies(standing).forEach(finding::remedy);
            finding.remedy(Remedy.advice("Bring the balance point nearer to the other arms."));
        }
        return finding.say(verdict, verdict == Verdict.STOP ? "This arm carries more than it is rated for."
                : "This arm takes its share.");
    }
}
