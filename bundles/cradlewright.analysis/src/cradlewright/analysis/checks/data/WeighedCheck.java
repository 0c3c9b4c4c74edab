package cradlewright.analysis.checks.data;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.standing.Disagreement;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Weighed;
import cradlewright.analysis.standing.WeighedKey;
import cradlewright.analysis.standing.Weight;
import cradlewright.analysis.standing.WeightKey;
import cradlewright.mechanics.mass.MassFormulas;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Do the scales agree with the parts list? The loads are worked out from the list; when the scales say something else nobody can say which
 * of the two is wrong, so the answer is never STOP, but CAN'T SAY.
 */
public final class WeighedCheck extends VisitCheck {

    /** Creates the check. */
    public WeighedCheck() {
        super(new CheckInfo("data.weighed", "Do the scales agree with the parts list?", "JCGM 100, 5.1.2 and 6.2 (from memory)",
                Cautions.DATA,
                List.of("a weighing of this stage: what each scale showed and where it touched"), List.of(MassFormulas.POSE_LEVEL)));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        Optional<Weighed> weighed = reader.read(new WeighedKey(subject.ownerId(), standing.visit().id()));
        Weight weight = reader.read(new WeightKey(subject.ownerId(), standing.visit().id()));
        if (weighed.isEmpty() || weight.estimate().isEmpty() || !weight.missing().isEmpty()) {
            return List.of();
        }
        FindingBuilder finding = finding(subject, weighed.get().weighingId(), standing.stage().name());
        if (weighed.get().level().isEmpty()) {
            return List.of(finding.cantSay("It was weighed, but the readings are not complete.", weighed.get().missing()));
        }
        List<Disagreement> all = Disagreement.of(weighed.get().level().get(), weight.estimate().get());
        all.forEach(one -> finding.input(one.what() + ", parts list", one.listed(), "sum of the parts that are on")
                .input(one.what() + ", scales", one.weighed(), "weighed"));
        Disagreement worst = all.stream().max(Comparator.comparingDouble(Disagreement::use)).orElseThrow();
        finding.against(worst.apart(), worst.allowed(), "give or take of list and scales together, " + worst.what());
        if (worst.within()) {
            return List.of(finding.say(Verdict.HOLDS, "Scales and parts list say the same within what is known of both."));
        }
        return List.of(finding.remedy(Remedy.advice("Weigh again, level, with every scale at zero before; then look for parts that are "
                + "ticked but"
                + " not on, or on but not ticked, and for the masses that were guessed.")).cantSay(
                        "Scales and parts list lie further apart than what is known of both allows: the " + worst.what() + ".",
                        List.of("which of the two is right")));
    }
}
