package cradlewright.analysis.checks.lift;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Weight;
import cradlewright.analysis.standing.WeightKey;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import cradlewright.mechanics.mass.MassFormulas;
import java.util.List;

/** At what reading of the scales does raising stop? For whoever stands at the controls. */
public final class ScaleStopCheck extends VisitCheck {

    /** Creates the check. */
    public ScaleStopCheck() {
        super(new CheckInfo("lift.scale-stop", "At what reading of the scales does raising stop?", "common practice, no source",
                Cautions.LIFTING,
                List.of("mass of every part that is on"), List.of(MassFormulas.BALANCE, MassFormulas.UNCERTAINTY)));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        Weight weight = reader.read(new WeightKey(subject.ownerId(), standing.visit().id()));
        if (!standing.lifted() || weight.estimate().isEmpty()) {
            return List.of();
        }
        if (!weight.missing().isEmpty()) {
            return List.of(finding(subject, standing.visit().id(), subject.label())
                    .cantSay("Parts without a mass are on, so no reading can be given.",
                    weight.missing()));
        }
        EstimatedBalance estimate = weight.estimate().get();
        double mass = estimate.balance().mass();
        double give = estimate.expanded(Quantity.MASS);
        return List.of(finding(subject, standing.visit().id(), subject.label()).situation("being raised")
                .input("mass as listed", Amount.mass(mass), "sum of the parts that are on").input("give or take",
                        Amount.mass(give), "19 times in 20")
                .shown("stop raising above this reading of all scales together", Amount.mass(mass + give),
                        "mass as listed and its give or take")
                .say(standing.carrier() == CarrierKind.STRAPS ? Verdict.TIGHT : Verdict.HOLDS,
                        "When the scales together show more than the listed mass and its give or take, stop: something is still fast."));
    }
}
