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
import cradlewright.analysis.checks.RatedForce;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.LiftPointFacts;
import cradlewright.analysis.load.HookHang;
import cradlewright.analysis.load.HookHangKey;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import cradlewright.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Does each lift point of the car take what it carries? */
public final class PointCapacityCheck extends LoadedVisitCheck {

    /** Creates the check. */
    public PointCapacityCheck() {
        super(new CheckInfo("lift.point-capacity", "Does each lift point of the car take what it carries?",
                "rating of the lift point; load factor against a design resistance EN 1990 Table A1.2(B) (from memory)",
                        Cautions.LIFTING,
                List.of("what each lift point can take and what that is rated by", "mass and balance point"),
                List.of(CoupledFormulas.ASSEMBLY, CoupledFormulas.STIFFNESS_SWEEP, ContactFormulas.ENERGY,
                        ContactFormulas.GRADIENT_BOUNDS)));
    }

    @Override
    protected boolean arises(Standing standing) {
        return standing.supports().stream().anyMatch(support -> support.liftPoint().isPresent());
    }

    @Override
    protected boolean answersWithoutLoads(Standing standing, Reader reader) {
        return reader.read(HookHangKey.of(standing)).filter(HookHang::answers).isPresent();
    }

    @Override
    protected List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        Optional<HookHang> hook = reader.read(HookHangKey.of(standing));
        if (hook.isPresent() && !hook.get().stays()) {
            // It does not stay on its lift points: lift.strap and lift.hanging stop it.
            return List.of();
        }
        for (Support support : standing.supports()) {
            List<String> leans = hook.map(hang -> hang.missingAt(List.of(support))).orElse(List.of());
            Optional<HookHang.Leg> leg = hook.flatMap(hang -> hang.leg(support));
            // How hard a leg pulls follows from how it hangs, also where nothing would hold it level.
            Optional<VisitLoads.Total> pull = leg.map(found -> new VisitLoads.Total(Situation.atRest(), found.pull(), found.pull(),
                    found.high())).or(() -> loads.most(List.of(support.contactId())));
            support.liftPoint().flatMap(point -> leans.isEmpty()
                    ? pull.flatMap(most -> judge(point, leg, standing, most, subject, settings(reader).tightMargin()))
                    : Optional.of(leaning(point, subject, leans))).ifPresent(findings::add);
        }
        return findings;
    }

    private Finding leaning(LiftPointFacts point, Subject subject, List<String> missing) {
        return finding(subject, point.id(), point.name()).situation("hanging still")
                .cantSay("The strap here leans, and how far does not follow from what is written down: it pulls harder, and to the side.",
                        missing);
    }

    private Optional<Finding> judge(LiftPointFacts point, Optional<HookHang.Leg> leg, Standing standing, VisitLoads.Total most,
            Subject subject, double margin) {
        double carried = Math.max(0, most.high());
        FindingBuilder finding = finding(subject, point.id(), point.name()).situation(most.situation().words())
                .input("carries at most", Amount.force(carried), "19 times in 20, any stiffness the shell may have");
        leg.ifPresent(found -> finding.shown("the strap pulls away from upright by at most", new Amount(found.lean(), Dimension.ANGLE),
                "from the lengths of the straps; 19 times in 20"));
        if (point.capacity().isEmpty() || point.basis().isEmpty()) {
            if (!standing.lifted()) {
                return Optional.empty();
            }
            return Optional.of(finding.cantSay("What this lift point can take is not in the files.", List.of(point.capacity()
                    .isEmpty()
                    ? "what " + point.name()
                            + " can take: from the maker of the car, or lift on it once in steps and look at the sheet each time"
                    : "what the number for " + point.name()
                            + " is rated by: working load limit, rated load or design resistance")));
        }
        RatedForce rated = new RatedForce(point.capacity().get(), point.basis().get());
        rated.against(finding, carried);
        Verdict verdict = Verdict.of(rated.demand(carried), rated.low(), margin);
        if (verdict == Verdict.STOP) {
            PartsOff.remedies(standing).forEach(finding::remedy);
            return Optional.of(finding.remedy(Remedy.advice("Spread the load over a plate, or use more lift points."))
                    .say(verdict, "This lift point carries more than it is rated for."));
        }
        boolean straps = standing.carrier() == CarrierKind.STRAPS;
        return Optional.of(finding.say(straps ? Verdict.TIGHT : verdict, straps
                ? "This lift point takes it, but hangs in a strap." : "This lift point takes it."));
    }
}
