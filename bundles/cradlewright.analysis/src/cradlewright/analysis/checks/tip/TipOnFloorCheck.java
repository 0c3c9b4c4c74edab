package cradlewright.analysis.checks.tip;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.DollyLoad;
import cradlewright.analysis.checks.FeetDown;
import cradlewright.analysis.checks.FitProp;
import cradlewright.analysis.checks.KeepOff;
import cradlewright.analysis.checks.TipOnFloor;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.load.TipAnswer;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.castor.CastorFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import cradlewright.mechanics.tipping.TippingFormulas;
import java.util.List;
import java.util.Optional;

/** Does the dolly with the car on it fall over on the floor when somebody leans on the car, pulls at it or stands on it? */
public final class TipOnFloorCheck extends PushedCheck {

    /** Creates the check. */
    public TipOnFloorCheck() {
        super(new CheckInfo("tip.on-floor", "Does the dolly with the car on it stay on the floor when it is pushed?",
                "statics; castors in their worst position ISO 22915-16; times the push must be held: common practice, no source",
                Cautions.TIPPING,
                List.of("where people lean, pull and stand", "place and lead of each castor",
                        "mass and balance point of car and dolly"),
                List.of(CoupledFormulas.TIPPING, TippingFormulas.PUSH, TippingFormulas.OVERHANG, TippingFormulas.RATIO,
                        CastorFormulas.SWIVEL_LEAD)),
                TipAnswer.Question.ON_FLOOR);
    }

    @Override
    Optional<RigidTip> unfavourable(Standing standing, Reader reader) {
        DollyLoad load = DollyLoad.of(standing, reader);
        TipOnFloor floor = TipOnFloor.of(standing, load.dolly(), reader);
        return Optional.of(new RigidTip(floor.points(), 0, load.both(), floor.inward()));
    }

    @Override
    void remedies(FindingBuilder finding, TipAnswer answer, Verdict now, Standing standing, Reader reader) {
        KeepOff.remedy(answer.situation(), standing, settings(reader)).ifPresent(finding::remedy);
        FeetDown.remedy("Put the feet down first.", standing).ifPresent(finding::remedy);
        FitProp.remedies(standing).forEach(finding::remedy);
        if (now == Verdict.STOP) {
            finding.remedy(Remedy.advice("Work at it lower down or from the other side, or put a stand under that end."));
        }
    }
}
