package cradlewright.analysis.checks.lift;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Weighed;
import cradlewright.analysis.standing.WeighedKey;
import cradlewright.analysis.standing.Weight;
import cradlewright.analysis.standing.WeightKey;
import java.util.List;
import java.util.Optional;

/** Does what is lifted rest on a guess? */
public final class GuessedMassCheck extends VisitCheck {

    /** Share of the whole from which guesses matter: common practice, no source. */
    private static final double SHARE = 0.05;

    /** Creates the check. */
    public GuessedMassCheck() {
        super(new CheckInfo("lift.guessed-mass", "Does what is lifted rest on a guessed mass?", "common practice, no source",
                Cautions.LIFTING,
                List.of("source of each mass"), List.of()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        if (!standing.lifted()) {
            return List.of();
        }
        Weight weight = reader.read(new WeightKey(subject.ownerId(), standing.visit().id()));
        if (weight.estimate().isEmpty()) {
            return List.of();
        }
        double total = weight.estimate().get().balance().mass();
        FindingBuilder finding = finding(subject, standing.visit().id(), subject.label())
                .input("mass of what is lifted", Amount.mass(total), "sum of the parts that are on")
                .input("of this only guessed", Amount.mass(weight.guessedMass()), "guessed");
        Optional<Weighed> weighed = reader.read(new WeighedKey(subject.ownerId(), standing.visit().id()));
        if (weighed.isPresent() && weighed.get().agreesWith(weight)) {
            return List.of(finding.say(Verdict.HOLDS, "It was weighed with these parts on, and the parts list says the same."));
        }
        if (weight.guessedMass() > SHARE * total) {
            return List.of(finding.cantSay("More than one part in twenty of the mass is only guessed: "
                    + String.join(", ", weight.guessed()) + ".",
                    List.of("a weighed mass: put a scale into each strap or under each pad at lift-off and enter the readings")));
        }
        if (!weight.missing().isEmpty()) {
            return List.of(finding.cantSay("Parts that are on have no mass or no place, so their share is not known.", weight.missing()));
        }
        return List.of(finding.say(Verdict.HOLDS, "Weighed or taken from a sheet, but for at most one part in twenty."));
    }
}
