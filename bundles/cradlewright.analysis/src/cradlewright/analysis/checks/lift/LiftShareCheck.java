package cradlewright.analysis.checks.lift;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.Swap;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Carriers;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.analysis.standing.Weight;
import cradlewright.analysis.standing.WeightKey;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.lifting.LiftingFormulas;
import cradlewright.mechanics.lifting.ShareLimits;
import cradlewright.mechanics.lifting.TwoPostShare;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import cradlewright.mechanics.mass.EstimatedBalance;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Does the car lie far enough forward and back on the arms? Limits come from the plate of the lift; without them the rule of thumb
 * is shown and the answer is CAN'T SAY. The plate speaks of the front and rear arms of the lift: whoever drives in tail first has the
 * rear of the car on the front arms.
 */
public final class LiftShareCheck extends VisitCheck {

    /** Creates the check. */
    public LiftShareCheck() {
        super(new CheckInfo("lift.share", "Is the weight shared between front and rear arms as the lift's plate allows?",
                "DGUV information 208-015 section 3, plate and manual of the lift",
                Cautions.LIFTING + " Ask again before engine, gearbox, axle or doors come off.",
                List.of("smallest and largest front over rear on the plate of the lift", "places of the four pads", "balance point"),
                List.of(LiftingFormulas.TWO_POST_SHARE)));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        Weight weight = reader.read(new WeightKey(subject.ownerId(), standing.visit().id()));
        if (standing.carrier() != CarrierKind.LIFT || standing.lift().isEmpty() || weight.estimate().isEmpty()
                || standing.supports().size() != 4) {
            return List.of();
        }
        List<Double> xs = standing.supports().stream().map(Support::inCarrier).map(Vec3::x).sorted().toList();
        double front = (xs.get(0) + xs.get(1)) / 2;
        double rear = (xs.get(2) + xs.get(3)) / 2;
        FindingBuilder finding = finding(subject, standing.lift().get().id(), standing.lift().get().name()).situation("hanging still");
        if (!(rear > front)) {
            return List.of(finding.cantSay("The four pads do not lie two in front and two behind.",
                    List.of("places of the four lift points: measure them from the marks")));
        }
        if (!weight.missing().isEmpty()) {
            return List.of(finding.cantSay("Parts that are on have no mass or no place, so the share is not known.",
                    weight.missing()));
        }
        Pads pads = Pads.of(standing, weight.estimate().get(), front, rear);
        return List.of(pads.judge(standing.lift().get(), settings(reader).tightMargin(), finding));
    }

    /**
     * The car on its four pads, along the lift.
     *
     * @param standing the visit
     * @param mass kg
     * @param balance place of the balance point, m
     * @param give how far off that may be, 19 times in 20, m
     * @param front place of the front pads, m
     * @param rear place of the rear pads, m
     * @param turned whether the car stands with its tail to the front of the lift
     */
    private record Pads(Standing standing, double mass, double balance, double give, double front, double rear, boolean turned) {

        /** Share by which the pads are moved further than they must, so that rounding does not decide. */
        private static final double SPARE = 1e-6;
        private static final String PLATE = "limit on the plate, front over rear";

        static Pads of(Standing standing, EstimatedBalance estimate, double front, double rear) {
            SetupFacts setup = standing.setup();
            double c = Math.cos(setup.heading());
            double s = Math.sin(setup.heading());
            // Covariance turned into the direction of the lift (JCGM 100, 5.2.2; from memory).
            double variance = c * c * estimate.covariance(Quantity.X, Quantity.X) - 2 * c * s * estimate.covariance(Quantity.X, Quantity.Y)
                    + s * s * estimate.covariance(Quantity.Y, Quantity.Y);
            return new Pads(standing, estimate.balance().mass(), Carriers.toCarrier(estimate.balance().point(), setup).x(),
                    EstimatedBalance.COVERAGE * Math.sqrt(Math.max(0, variance)), front, rear, c < 0);
        }

        Finding judge(GearFacts.Lift lift, double tightMargin, FindingBuilder finding) {
            TwoPostShare share = share(0);
            finding.input("mass", Amount.mass(share.mass()), "sum of the parts that are on")
                    .input("balance point behind the front pads", Amount.length(share.balancePoint() - front), "from the parts list")
                    .input("give or take", Amount.length(give), "19 times in 20")
                    .input("front pads to rear pads", Amount.length(rear - front), "measured")
                    .input("on the front arms", Amount.mass(share.front()), "by moments")
                    .input("on the rear arms", Amount.mass(share.rear()), "by moments");
            if (share.goesOver()) {
                return finding.remedy(Remedy.advice(
                        "Do not raise it: set the arms so that the balance point lies between front and rear pads."))
                        .say(Verdict.STOP, "The balance point does not lie between front and rear pads: the car goes over the end.");
            }
            if (share(-give).goesOver() || share(give).goesOver()) {
                return finding.remedy(Remedy.advice("Do not raise it: weigh the car to know the balance point better."))
                        .say(Verdict.STOP, "At the unfavourable end of what is known the balance point does not lie between front "
                                + "and rear pads.");
            }
            if (lift.frontRearLow().isEmpty() || lift.frontRearHigh().isEmpty()) {
                boolean held = share.within(ShareLimits.general(lift.ratedLoad().map(Value::si).orElse(1.0)));
                return finding.cantSay("The plate limits of " + lift.name() + " are not in the files. By the rule of thumb for lifts "
                        + "of its size the share would " + (held ? "be allowed." : "not be allowed."),
                        List.of("smallest and largest front over rear of " + lift.name() + ": see its plate or manual"));
            }
            return judge(new ShareLimits(lift.frontRearLow().get(), lift.frontRearHigh().get()), tightMargin, finding);
        }

        /** Judges each end by the balance point that loads it most; the share is front over rear, as on the plate, at both ends. */
        private Finding judge(ShareLimits limits, double tightMargin, FindingBuilder finding) {
            double frontOverRear = share(-give).ratio().orElseThrow();
            double rearOverFront = 1 / share(give).ratio().orElseThrow();
            boolean frontGoverns = frontOverRear / limits.highest() >= rearOverFront * limits.lowest();
            finding.input("front over rear, best estimate", Amount.ratio(share(0).ratio().orElseThrow()), "by moments");
            if (frontGoverns) {
                finding.against(Amount.ratio(frontOverRear), Amount.ratio(limits.highest()), PLATE);
            } else {
                finding.atLeast(Amount.ratio(limits.lowest()), Amount.ratio(1 / rearOverFront), PLATE);
            }
            Verdict verdict = frontGoverns ? Verdict.of(frontOverRear, limits.highest(), tightMargin)
                    : Verdict.of(rearOverFront, 1 / limits.lowest(), tightMargin);
            if (verdict != Verdict.STOP) {
                return finding.say(verdict, "Front and rear arms share the weight as the plate allows, also at the ends of what is known.");
            }
            remedy(limits, frontGoverns, finding);
            return finding.say(Verdict.STOP, "Too much lies on the " + (frontGoverns ? "front" : "rear") + " arms"
                    + (share(0).within(limits) ? " at the unfavourable end of what is known." : " for the plate of this lift."));
        }

        private void remedy(ShareLimits limits, boolean frontGoverns, FindingBuilder finding) {
            TwoPostShare.Window window = TwoPostShare.window(front, rear, limits);
            if (2 * give > window.to() - window.from()) {
                finding.remedy(Remedy.advice(
                        "Weigh the car to know the balance point better: no place of the pads keeps to the plate at both ends."));
                return;
            }
            double shift = frontGoverns ? window.from() - (balance - give) : balance + give - window.to();
            // Where on the car: its own front lies to the rear of the lift when it stands there turned.
            String way = frontGoverns == turned ? "back" : "forward";
            double along = frontGoverns ? -shift : shift;
            finding.shown("all pads further " + way + " by at least", Amount.length(shift), "worked out")
                    .remedy(Remedy.trial("Set all four pads further " + way
                            + " by the length shown, if sound lift points lie there and the arms reach.", moved(along * (1 + SPARE))));
        }

        /** The pads at places that are no lift points of the files: whether the metal there is sound is another check's question. */
        private Trial moved(double along) {
            Map<String, Vec3> onCar = standing.supports().stream().collect(Collectors.toMap(Support::contactId, Support::onCar));
            double heading = standing.setup().heading();
            Vec3 step = new Vec3(along * Math.cos(heading), -along * Math.sin(heading), 0);
            return Trial.records(Swap.contacts(standing, contact -> onCar.containsKey(contact.id()),
                    contact -> contact.at(onCar.get(contact.id()).plus(step))),
                    standing.supports().stream().map(Support::objectId).toArray(String[]::new));
        }

        /** Returns the share with the balance point that much further back, m. */
        private TwoPostShare share(double back) {
            return new TwoPostShare(mass, balance + back, front, rear);
        }
    }
}
