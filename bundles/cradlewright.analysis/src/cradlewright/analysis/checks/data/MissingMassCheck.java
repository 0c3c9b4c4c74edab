package cradlewright.analysis.checks.data;

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
import cradlewright.mechanics.mass.MassFormulas;
import java.util.List;

/** Has every part that is on a mass and a balance point? */
public final class MissingMassCheck extends VisitCheck {

    /** Creates the check. */
    public MissingMassCheck() {
        super(new CheckInfo("data.mass", "Has every part that is on a mass and a balance point?", "common practice, no source",
                Cautions.DATA,
                List.of("mass and balance point of every part that is on"), MassFormulas.all()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        if (standing.carrier() == CarrierKind.AWAY) {
            return List.of();
        }
        Weight weight = reader.read(new WeightKey(subject.ownerId(), standing.visit().id()));
        if (!weight.missing().isEmpty()) {
            return List.of(finding(subject, standing.visit().id(), standing.stage().name())
                    .cantSay("The weight is not known, because parts that are on have no mass or no place.", weight.missing()));
        }
        if (weight.estimate().isEmpty()) {
            return List.of(finding(subject, standing.visit().id(), standing.stage().name()).cantSay(
                    "Nothing that is carried has a mass.",
                            List.of("parts with a mass: enter them, or tick those that are on at this stage")));
        }
        return List.of(finding(subject, standing.visit().id(), standing.stage().name()).say(Verdict.HOLDS,
                "Every part that is on has a mass and a place."));
    }
}
