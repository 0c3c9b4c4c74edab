package cradlewright.analysis.checks.tip;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.FitProp;
import cradlewright.analysis.checks.KeepOff;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.load.HookHang;
import cradlewright.analysis.load.HookHangKey;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.load.TipAnswer;
import cradlewright.analysis.standing.Carriers;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.analysis.standing.WeightKey;
import cradlewright.mechanics.coupled.CoupledFormulas;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.tipping.TippingFormulas;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Does the car fall off its supports when somebody leans on it, pulls at it or stands on it? */
public final class TipOnDollyCheck extends PushedCheck {

    /** Creates the check. */
    public TipOnDollyCheck() {
        super(new CheckInfo("tip.on-dolly", "Does the car stay on its supports when it is pushed?",
                "statics; times the push must be held: common practice, no source", Cautions.TIPPING,
                List.of("where people lean, pull and stand", "place of each support and how it holds", "mass and balance point"),
                List.of(CoupledFormulas.TIPPING, TippingFormulas.PUSH, TippingFormulas.OVERHANG, TippingFormulas.RATIO)),
                TipAnswer.Question.ON_SUPPORTS);
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        boolean falls = VisitLoads.read(subject, reader, situation -> situation.kind() == Situation.Kind.AT_REST).all().stream()
                .anyMatch(loads -> loads.outcome() == Loads.Outcome.FALLS);
        // What hangs in one hook swings until its balance point is below the hook; lift.hanging answers for it.
        boolean hangs = falls && reader.read(HookHangKey.of(standing)).filter(HookHang::answers).isPresent();
        return hangs ? List.of() : falls ? List.of(fallsByItself(standing, subject)) : super.examine(standing, subject, reader);
    }

    @Override
    Optional<RigidTip> unfavourable(Standing standing, Reader reader) {
        if (standing.supports().stream().anyMatch(support -> support.hold() == Hold.BOLTED || !support.upright())) {
            return Optional.empty();
        }
        EstimatedBalance carried = reader.read(new WeightKey(standing.car().id(), standing.visit().id())).estimate().orElseThrow();
        List<Vec3> supports = standing.supports().stream().map(Support::inCarrier).toList();
        List<Vec3> points = Stream.concat(supports.stream(), standing.fittedProps().stream().flatMap(prop -> prop.at().stream())).toList();
        return Optional.of(new RigidTip(points, supports.stream().mapToDouble(Vec3::z).min().orElseThrow(),
                Carriers.toCarrier(carried, standing.setup()), 0));
    }

    @Override
    void remedies(FindingBuilder finding, TipAnswer answer, Verdict now, Standing standing, Reader reader) {
        KeepOff.remedy(answer.situation(), standing, settings(reader)).ifPresent(finding::remedy);
        FitProp.remedies(standing).forEach(finding::remedy);
        if (now == Verdict.STOP) {
            finding.remedy(Remedy.advice("Hold the body down at the far supports, or put a stand under the end in work."));
        }
    }
}
