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
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.analysis.standing.WeightKey;
import cradlewright.mechanics.lifting.LiftingFormulas;
import cradlewright.mechanics.lifting.ShareLimits;
import cradlewright.mechanics.lifting.TwoPostShare;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Does the car lie far enough forward and back on the arms? Limits come from the plate of the lift; without them the rule of thumb
 * is shown and the answer is CAN'T SAY.
 */
public final class LiftShareCheck extends VisitCheck {

    /** Creates the check. */
    public LiftShareCheck() {
        super(new CheckInfo("lift.share", "Is the weight shared between front and rear arms as the lift's plate allows?",
                "DGUV information 208-015 section 3, plate and manual of the lift", Cautions.LIFTING + " Ask again before engine, gearbox, axle or doors come off.",
                List.of("front to rear limits on the plate of the lift", "places of the four pads", "balance point"),
                List.of(LiftingFormulas.TWO_POST_SHARE)));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        Optional<EstimatedBalance> estimate = reader.read(new WeightKey(subject.ownerId(), standing.visit().id())).estimate();
        if (standing.carrier() != CarrierKind.LIFT || standing.lift().isEmpty() || estimate.isEmpty() || standing.supports().size() != 4) {
            return List.of();
        }
        List<Double> xs = standing.supports().stream().map(Support::onCar).map(p -> p.x()).sorted().toList();
        double front = (xs.get(0) + xs.get(1)) / 2;
        double rear = (xs.get(2) + xs.get(3)) / 2;
        FindingBuilder finding = finding(subject, standing.lift().get().id(), standing.lift().get().name()).situation("hanging still");
        if (!(rear > front)) {
            return List.of(finding.cantSay("The four pads do not lie two in front and two behind.", List.of("places of the four lift points: measure them from the marks")));
        }
        return List.of(examine(standing.lift().get(), estimate.get(), front, rear, finding));
    }

    private static Finding examine(GearFacts.Lift lift, EstimatedBalance estimate, double front, double rear, FindingBuilder finding) {
        double mass = estimate.balance().mass();
        double x = estimate.balance().point().x();
        double give = estimate.expanded(Quantity.X);
        TwoPostShare share = new TwoPostShare(mass, x, front, rear);
        finding.input("mass", Amount.mass(mass), "sum of the parts that are on").input("balance point behind the front pads", Amount.length(x - front), "from the parts list")
                .input("give or take", Amount.length(give), "19 times in 20").input("front pads to rear pads", Amount.length(rear - front), "measured")
                .input("on the front arms", Amount.mass(share.front()), "by moments").input("on the rear arms", Amount.mass(share.rear()), "by moments");
        if (share.goesOver()) {
            return finding.remedy(Remedy.advice("Do not raise it: set the arms so that the balance point lies between front and rear pads."))
                    .say(Verdict.STOP, "The balance point does not lie between front and rear pads: the car goes over the end.");
        }
        if (lift.frontRearLow().isEmpty() || lift.frontRearHigh().isEmpty()) {
            ShareLimits rule = ShareLimits.general(lift.ratedLoad().map(v -> v.si()).orElse(1.0));
            boolean held = share.within(rule);
            return finding.cantSay("The plate limits of " + lift.name() + " are not in the files. By the rule of thumb for lifts of its size the share would "
                    + (held ? "be allowed." : "not be allowed."), List.of("smallest and largest front to rear share of " + lift.name() + ": see its plate or manual"));
        }
        ShareLimits limits = new ShareLimits(lift.frontRearLow().get(), lift.frontRearHigh().get());
        boolean nominal = share.within(limits);
        boolean ends = new TwoPostShare(mass, x - give, front, rear).within(limits) && new TwoPostShare(mass, x + give, front, rear).within(limits);
        double ratio = share.ratio().orElseThrow();
        boolean tooLight = ratio < 1;
        finding.against(Amount.ratio(tooLight ? 1 / ratio : ratio), Amount.ratio(tooLight ? 1 / limits.lowest() : limits.highest()),
                "limit on the plate, " + (tooLight ? "rear over front" : "front over rear"));
        if (nominal && ends) {
            return finding.say(Verdict.HOLDS, "Front and rear arms share the weight as the plate allows, also at the ends of what is known.");
        }
        TwoPostShare.Window window = TwoPostShare.window(front, rear, limits);
        double shift = x < window.from() ? x - give - window.from() : x + give - window.to();
        finding.remedy(Remedy.advice(String.format(Locale.ROOT, "Set all four pads further %s by about %d mm, if sound lift points lie there and the arms reach.",
                shift > 0 ? "back" : "forward", Math.round(1000 * Math.abs(shift)))));
        return finding.say(Verdict.STOP, (tooLight ? "Too much lies on the rear arms" : "Too much lies on the front arms")
                + (nominal ? " at the unfavourable end of what is known." : " for the plate of this lift."));
    }
}
