package yard.checks;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.standing.Weight;
import cradlewright.analysis.standing.WeightKey;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import java.util.List;
import java.util.Optional;

/** A house rule of one yard, as an example of a check that another bundle adds: nobody moves more than a certain mass alone. */
public final class PushedByOneCheck implements Check {

    private static final double LIMIT = 300;
    private static final double TIGHT_MARGIN = 0.1;
    private static final CheckInfo INFO = new CheckInfo("yard.pushed-by-one", "May one person move this alone?",
            "rule of this yard", "Two people move what one cannot stop.", List.of("mass of what is carried"), List.of());

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public Scope scope() {
        return Scope.VISIT;
    }

    @Override
    public List<Finding> examine(Subject subject, Reader reader) {
        Weight weight = reader.read(new WeightKey(subject.ownerId(), subject.visitId().orElseThrow()));
        FindingBuilder finding = new FindingBuilder(INFO, subject, subject.ownerId(), subject.label());
        Optional<EstimatedBalance> estimate = weight.estimate();
        if (estimate.isEmpty() || !weight.missing().isEmpty()) {
            return List.of(finding.cantSay("Nobody knows what this weighs.", List.of("the mass of every part that is on")));
        }
        double heaviest = estimate.get().balance().mass() + estimate.get().expanded(Quantity.MASS);
        Verdict verdict = Verdict.of(heaviest, LIMIT, TIGHT_MARGIN);
        return List.of(finding.against(Amount.mass(heaviest), Amount.mass(LIMIT), "rule of this yard")
                .say(verdict, verdict == Verdict.STOP ? "Too heavy for one." : "One can move it."));
    }
}
