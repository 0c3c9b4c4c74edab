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
import cradlewright.analysis.standing.Carriers;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.analysis.standing.WeightKey;
import cradlewright.mechanics.contact.SupportRank;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.lifting.LiftingFormulas;
import cradlewright.mechanics.lifting.RollStability;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import cradlewright.quantity.Dimension;
import java.util.List;
import java.util.Optional;

/** Does the shell roll over in its straps? Asked where the balance point lies above the places where the straps hold. */
public final class RollCheck extends VisitCheck {

    /** Spacing of strap lines below which there is only one line, m. */
    private static final double ONE_LINE = 1e-6;

    /** Creates the check. */
    public RollCheck() {
        super(new CheckInfo("lift.roll", "Does the shell roll over in its straps?",
                "own derivation: two strap lines as springs", Cautions.LIFTING,
                List.of("places of the straps", "height of the balance point", "stiffness of the straps"),
                        List.of(LiftingFormulas.ROLL)));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        Optional<EstimatedBalance> estimate = reader.read(new WeightKey(subject.ownerId(), standing.visit().id())).estimate();
        if (standing.carrier() != CarrierKind.STRAPS || standing.supports().isEmpty() || estimate.isEmpty()) {
            return List.of();
        }
        return List.of(judge(standing, estimate.get(), settings(reader).tightMargin(), finding(subject, standing.visit().id(),
                subject.label())
                .situation("hanging still")));
    }

    private static Finding judge(Standing standing, EstimatedBalance estimate, double margin, FindingBuilder finding) {
        double lowest = standing.supports().stream().mapToDouble(s -> s.inCarrier().z()).min().orElseThrow();
        double above = Carriers.toCarrier(estimate.balance().point(), standing.setup()).z()
                + estimate.expanded(Quantity.Z) - lowest;
        finding.input("balance point above the straps at most", Amount.length(above), "19 times in 20, from the lowest strap");
        if (above <= 0) {
            return finding.say(Verdict.TIGHT, "It hangs below its straps and rights itself; it can still swing.");
        }
        if (SupportRank.of(standing.supports().stream().map(Support::inCarrier).toList(), Vec3.ZERO).hold() != SupportRank.Hold.HELD) {
            return oneLine(finding);
        }
        double middle = standing.supports().stream().mapToDouble(s -> s.onCar().y()).average().orElseThrow();
        List<Support> left = standing.supports().stream().filter(s -> s.onCar().y() < middle).toList();
        List<Support> right = standing.supports().stream().filter(s -> s.onCar().y() > middle).toList();
        double spacing = left.isEmpty() || right.isEmpty() ? 0 : across(right) - across(left);
        if (spacing <= ONE_LINE) {
            return oneLine(finding);
        }
        double weight = (estimate.balance().mass() + estimate.expanded(Quantity.MASS)) * Constants.GRAVITY;
        double stiffness = Math.min(stiffness(left), stiffness(right));
        boolean assumed = standing.supports().stream().anyMatch(Support::complianceAssumed);
        RollStability roll = new RollStability(stiffness, spacing, weight, above);
        finding.input("stiffness of the softer line of straps", new Amount(stiffness, Dimension.STIFFNESS), assumed
                ? "assumed, common practice, no source" : "from the straps")
                .input("between the lines of straps", Amount.length(spacing), "measured")
                .against(new Amount(roll.upsetting(), Dimension.TORSIONAL_STIFFNESS), new Amount(roll.restoring(),
                        Dimension.TORSIONAL_STIFFNESS),
                        "what the straps set against rolling, for each unit of angle");
        Verdict verdict = Verdict.of(roll.upsetting(), roll.restoring(), margin);
        if (verdict == Verdict.STOP) {
            return finding.remedy(Remedy.advice("Hold it higher, with the straps above the balance point, or set the lines further apart."))
                    .say(verdict, "The balance point lies above the straps and they are too soft or too close together: it rolls over.");
        }
        return finding.say(Verdict.TIGHT,
                "The balance point lies above the straps; they keep it upright as long as all of them stay tight.");
    }

    private static Finding oneLine(FindingBuilder finding) {
        return finding.remedy(Remedy.advice("Hang it in two lines of straps, well apart.")).say(Verdict.STOP,
                "All straps hold on one line and the balance point lies above it: it rolls over.");
    }

    private static double across(List<Support> line) {
        return line.stream().mapToDouble(s -> s.onCar().y()).average().orElseThrow();
    }

    private static double stiffness(List<Support> line) {
        return line.stream().mapToDouble(s -> 1 / s.compliance()).sum();
    }
}
