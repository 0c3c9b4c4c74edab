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
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.castor.Brake;
import cradlewright.mechanics.castor.CastorFormulas;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Do the brakes hold it on the fall of the floor? */
public final class CastorBrakeCheck extends DollyLoadCheck {

    /** Friction of a tread on dry concrete that is not swept clean: common practice, no source. */
    private static final double FRICTION = 0.4;

    /** Creates the check. */
    public CastorBrakeCheck() {
        super(new CheckInfo("castor.brake", "Do the brakes hold it on the fall of the floor?",
                "brake test of EN 12530 and ISO 22881; friction common practice, no source", Cautions.CASTORS,
                List.of("fall of the floor", "which castors have brakes, and their rated load",
                        "mass and balance point of car and dolly"),
                List.of(CastorFormulas.BRAKE, CastorFormulas.THREE_CARRY)));
    }

    @Override
    protected boolean arises(Standing standing, Reader reader) {
        return onCastors(standing) && standing.dolly().orElseThrow().castors().stream().anyMatch(CastorBrakeCheck::braked);
    }

    private static boolean braked(CastorFacts castor) {
        return castor.brake() != CastorFacts.Brake.NONE;
    }

    @Override
    protected List<Finding> judge(DollyLoad load, Standing standing, Subject subject, Reader reader) {
        Fall fall = Fall.under(standing, settings(reader));
        FindingBuilder finding = fall.note(finding(subject, load.dolly().id(), load.dolly().name())
                .situation("left standing with its brakes set"))
                .input("friction of the treads on the floor", Amount.ratio(FRICTION), "dry concrete, common practice, no source");
        Set<Integer> braked = IntStream.range(0, load.wheels().size()).filter(i -> braked(load.wheels().get(i).castor())).boxed()
                .collect(Collectors.toSet());
        List<String> missing = missing(load, braked);
        if (!missing.isEmpty()) {
            return List.of(finding.cantSay("What the brakes hold cannot be told.", missing));
        }
        Optional<Brake> hold = WorstBrakes.of(load, fall, braked, FRICTION);
        if (hold.isEmpty()) {
            // It falls over on this slope, which another check says.
            return List.of();
        }
        Brake least = hold.get();
        double margin = settings(reader).tightMargin();
        finding.against(Amount.force(least.needed()), Amount.force(least.capacity()),
                "friction of the braked castors and their brake test, on the three castors of an uneven floor that are worst");
        Verdict verdict = Verdict.of(least.needed(), least.capacity(), margin);
        if (verdict != Verdict.HOLDS) {
            FeetDown.remedy("Put the feet down.", standing).ifPresent(finding::remedy);
            finding.remedy(Brakes.onAll("Fit brakes to all castors, and set them all.", load.dolly()));
        }
        if (verdict == Verdict.STOP) {
            finding.remedy(Remedy.advice("Chock the wheels, or turn it across the fall."));
        }
        return List.of(finding.say(verdict, verdict == Verdict.STOP ? "The brakes do not hold it on this fall."
                : "The brakes hold it on this fall."));
    }

    private static List<String> missing(DollyLoad load, Set<Integer> braked) {
        return braked.stream().sorted().map(load.wheels()::get)
                .filter(wheel -> wheel.type().flatMap(CastorType::ratedLoad).filter(rated -> rated.low() > 0).isEmpty())
                .map(wheel -> "rated load of castor " + wheel.castor().name()).toList();
    }
}
