package cradlewright.analysis.checks.castor;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.DollyLoad;
import cradlewright.analysis.checks.DollyLoadCheck;
import cradlewright.analysis.checks.Fall;
import cradlewright.analysis.checks.FeetDown;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.castor.CastorFormulas;
import cradlewright.mechanics.castor.Range;
import cradlewright.mechanics.castor.Rolling;
import cradlewright.mechanics.castor.RunAway;
import cradlewright.quantity.Dimension;
import java.util.List;

/** Can it roll off by itself? */
public final class CastorRunAwayCheck extends DollyLoadCheck {

    /** Way over which the speed is told, m. */
    private static final double WAY = 5;

    /** Creates the check. */
    public CastorRunAwayCheck() {
        super(new CheckInfo("castor.run-away", "Can it roll off by itself?", "motion down a slope (physics texts)",
                Cautions.CASTORS,
                List.of("fall of the floor", "which castors have brakes"), List.of(CastorFormulas.RUN_AWAY)));
    }

    @Override
    protected boolean arises(Standing standing, Reader reader) {
        return onCastors(standing);
    }

    @Override
    protected List<Finding> judge(DollyLoad load, Standing standing, Subject subject, Reader reader) {
        Fall fall = Fall.under(standing, settings(reader));
        boolean braked = load.wheels().stream().anyMatch(wheel -> wheel.castor().brake() != CastorFacts.Brake.NONE);
        boolean outdoors = standing.place().filter(place -> place.outdoors() || place.kind() == PlaceFacts.Kind.YARD).isPresent();
        FindingBuilder finding = fall.note(finding(subject, load.dolly().id(), load.dolly().name())
                .situation("left standing on its castors"));
        // Tables of rolling friction are made for pushing and tell nothing about how easily good castors roll: the low end is
        // zero.
        double high = Treads.missing(load).isEmpty() ? Treads.coefficient(load, false).high() : Rolling.HARD_FLOOR;
        RunAway.Verdict rolls = RunAway.verdict(fall.angle(), new Range(0, high));
        if (rolls == RunAway.Verdict.STANDS) {
            return List.of(finding.say(Verdict.HOLDS, "On level floor it stays where it is."));
        }
        finding.input("rolling coefficient, at least", Amount.ratio(0), "not tested on these castors")
                .input("speed after a short way", new Amount(RunAway.speedAfter(WAY, fall.angle(), 0), Dimension.SPEED),
                        "at the end of the way below, as if nothing held it")
                .input("that way", Amount.length(WAY), "chosen for this figure");
        FeetDown.remedy("Put the feet down.", standing).ifPresent(finding::remedy);
        if (braked) {
            finding.remedy(Remedy.advice("Set the brakes before you let go of it, and chock a wheel."));
        } else {
            finding.remedy(Brakes.onAll("Fit brakes to all castors.", load.dolly()))
                    .remedy(Remedy.advice("Chock the wheels on both sides."));
        }
        boolean slope = outdoors || fall.measured();
        Verdict verdict = slope ? braked ? Verdict.TIGHT : Verdict.STOP : braked ? Verdict.HOLDS : Verdict.TIGHT;
        return List.of(finding.say(verdict, (rolls == RunAway.Verdict.ROLLS ? "It rolls off by itself"
                : "It may roll off by itself")
                + (braked ? " while its brakes are off." : ", and it has no brakes.")));
    }
}
