package cradlewright.analysis.checks.lift;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.PartsOff;
import cradlewright.analysis.checks.Stated;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Weight;
import cradlewright.analysis.standing.WeightKey;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.MassFormulas;
import java.util.ArrayList;
import java.util.List;

/** Is the lift or hoist rated for all that hangs on it? */
public final class LiftTotalCheck extends VisitCheck {

    /** Creates the check. */
    public LiftTotalCheck() {
        super(new CheckInfo("lift.total", "Is the lift or hoist rated for all that is on it?",
                "EN 1493; rated load of the plate, of a boom that of the hole in use", Cautions.LIFTING,
                List.of("rated load on the plate of the lift or hoist",
                        "the hole of its boom that the hook is in, and what it is rated for",
                        "mass of what is lifted"), MassFormulas.all()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        Weight weight = reader.read(new WeightKey(subject.ownerId(), standing.visit().id()));
        if (!standing.lifted() || weight.estimate().isEmpty()) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        standing.lift().ifPresent(lift -> findings.add(examine(lift, weight, standing, subject, reader)));
        standing.hoist().ifPresent(hoist -> findings.add(examine(hoist, weight, standing, subject, reader)));
        return findings;
    }

    private Finding examine(GearFacts gear, Weight weight, Standing standing, Subject subject, Reader reader) {
        EstimatedBalance estimate = weight.estimate().orElseThrow();
        FindingBuilder finding = finding(subject, gear.id(), gear.name()).situation("hanging still").input("mass, best estimate",
                Amount.mass(estimate.balance().mass()), "sum of the parts that are on").input("give or take",
                        Amount.mass(estimate.expanded(Quantity.MASS)),
                        "19 times in 20");
        RatingInUse rating = RatingInUse.of(gear, standing.setup());
        if (rating.value().isEmpty()) {
            return finding.cantSay("The rated load of " + gear.name() + " is not in the files.", rating.missing());
        }
        Stated rated = Stated.mass(rating.value().get());
        double asked = estimate.balance().mass() + estimate.expanded(Quantity.MASS);
        Verdict verdict = Verdict.of(asked, rated.low(), settings(reader).tightMargin());
        if (verdict != Verdict.STOP && !rating.missing().isEmpty()) {
            return finding.cantSay("What " + gear.name() + " is rated for as it is used is not known.", rating.missing());
        }
        rated.against(finding, asked, rating.of());
        if (verdict != Verdict.STOP && !weight.missing().isEmpty()) {
            return finding.cantSay("Parts that are on have no mass or no place, so what hangs on it is not known.", weight.missing());
        }
        if (verdict == Verdict.STOP) {
            PartsOff.remedies(standing).forEach(finding::remedy);
            finding.remedy(Remedy.advice("Use gear of a higher rating."));
        }
        return finding.say(verdict, verdict == Verdict.STOP ? "More hangs on it than it is rated for."
                : "It is rated for what hangs on it.");
    }
}
