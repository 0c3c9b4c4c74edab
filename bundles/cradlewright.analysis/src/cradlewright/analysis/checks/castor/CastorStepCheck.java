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
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.castor.CastorFormulas;
import cradlewright.mechanics.castor.PushGuidance;
import cradlewright.mechanics.castor.StepClimb;
import cradlewright.mechanics.geometry.Vec3;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Does it get over the step on its way, or tip there? */
public final class CastorStepCheck extends DollyLoadCheck {

    /** Height at which people push, m: common practice, no source. */
    private static final double PUSH_HEIGHT = 1.0;

    /** A way over the step: what the castors in front and behind carry, N, and how far apart they are, m. */
    private record Way(String words, double front, double rear, double base) {

        StepClimb climb(double diameter, double step, double height) {
            return StepClimb.of(front, rear, base, diameter / 2, step, height);
        }
    }

    /** Creates the check. */
    public CastorStepCheck() {
        super(new CheckInfo("castor.step", "Does it get over the step on its way, or tip there?",
                "own derivation, checked by solving the equilibrium equations; height of the push common practice, no source",
                Cautions.CASTORS + " Nobody stands in front of a dolly that may roll.",
                List.of("height of the step on the way in", "wheel diameter of each castor type",
                        "mass and balance point of car and dolly"),
                List.of(CastorFormulas.STEP_CLIMB, CastorFormulas.PUSH_GUIDANCE)));
    }

    @Override
    protected boolean arises(Standing standing, Reader reader) {
        return step(standing, reader) > 0;
    }

    private static Optional<Value> stated(Standing standing) {
        return standing.place().flatMap(PlaceFacts::step);
    }

    private static double step(Standing standing, Reader reader) {
        return stated(standing).map(Value::high).orElse(settings(reader).step());
    }

    @Override
    protected List<Finding> judge(DollyLoad load, Standing standing, Subject subject, Reader reader) {
        double step = step(standing, reader);
        double margin = settings(reader).tightMargin();
        FindingBuilder finding = finding(subject, load.dolly().id(), load.dolly().name()).situation("pushed over a step")
                .input("height of the step", Amount.length(step), stated(standing).isPresent() ? "stated for this place"
                        : "not stated for this place: settled by the shop, else common practice, no source")
                .input("height of the push", Amount.length(PUSH_HEIGHT), "common practice, no source");
        List<String> missing = load.wheels().stream().filter(wheel -> wheel.type().flatMap(CastorType::wheelDiameter).isEmpty())
                .map(wheel -> "wheel diameter of castor " + wheel.castor().name()).toList();
        if (!missing.isEmpty()) {
            return List.of(finding.cantSay("How its wheels get over a step cannot be told.", missing));
        }
        List<Way> ways = Stream.of(1, -1).flatMap(sign -> way("lengthwise", load, new Vec3(sign, 0, 0)).stream()).toList();
        if (ways.size() < 2) {
            // The balance point may lie beyond the castors: it falls over without any step, which another check says.
            return List.of();
        }
        double diameter = load.wheels().stream().mapToDouble(wheel -> wheel.type().flatMap(CastorType::wheelDiameter)
                .orElseThrow().low())
                .min().orElseThrow();
        Way worst = worst(ways, diameter, step);
        StepClimb climb = worst.climb(diameter, step, PUSH_HEIGHT);
        Verdict verdict = verdict(climb, margin);
        if (Double.isFinite(climb.climbForce()) && Double.isFinite(climb.tipForce())) {
            finding.against(Amount.force(climb.climbForce()), Amount.force(climb.tipForce()),
                    "push at which the castors behind lift")
                    .input("people that this push takes", Amount.ratio(PushGuidance.MEN.people(climb.climbForce(), 0)),
                            "guidance L23: a filter, not a limit");
        }
        if (verdict != Verdict.HOLDS) {
            CastorTypes.largerWheel(standing, load, diameter,
                    wheel -> verdict(worst(ways, wheel, step).climb(wheel, step, PUSH_HEIGHT), margin), reader).forEach(finding::remedy);
            Verdict low = Verdict.worst(ways.stream().map(way -> verdict(way.climb(diameter, step, diameter / 2), margin))
                    .toList());
            if (low.compareTo(verdict) < 0) {
                finding.remedy(Remedy.alone("Pull it low, by a strap at the height of the axles.", low));
            }
            finding.remedy(Remedy.advice("Lay a ramp of sheet or wedges before the step."));
        }
        return List.of(finding.say(verdict, words(climb, verdict) + sideways(load, diameter, step, margin, verdict)));
    }

    private static String words(StepClimb climb, Verdict verdict) {
        if (verdict != Verdict.STOP) {
            return "It gets over the step.";
        }
        return Double.isInfinite(climb.kappa()) ? "The step is as high as the axles: no push gets it over."
                : "It tips over the castors at the step before they climb it.";
    }

    private static String sideways(DollyLoad load, double diameter, double step, double margin, Verdict lengthwise) {
        List<Way> ways = load.rollsSideways() ? Stream.of(1, -1).flatMap(sign -> way("sideways", load, new Vec3(0, sign, 0))
                .stream()).toList()
                : List.of();
        boolean worse = ways.stream().anyMatch(way -> verdict(way.climb(diameter, step, PUSH_HEIGHT), margin) == Verdict.STOP);
        return worse && lengthwise != Verdict.STOP ? " Pushed sideways it would tip: take it over lengthwise." : "";
    }

    private static Way worst(List<Way> ways, double diameter, double step) {
        return ways.stream().max(Comparator.comparingDouble(way -> use(way.climb(diameter, step, PUSH_HEIGHT)))).orElseThrow();
    }

    private static double use(StepClimb climb) {
        return Double.isInfinite(climb.climbForce()) ? Double.POSITIVE_INFINITY : climb.climbForce() / climb.tipForce();
    }

    private static Verdict verdict(StepClimb climb, double margin) {
        return climb.outcome() == StepClimb.Outcome.CLIMBS ? Verdict.of(climb.climbForce(), climb.tipForce(), margin)
                : Verdict.STOP;
    }

    /** Castors between the first and the last line are left out: with them in the air the others carry most. */
    private static Optional<Way> way(String words, DollyLoad load, Vec3 towards) {
        double front = load.castors().stream().mapToDouble(at -> at.dot(towards)).max().orElseThrow();
        double rear = load.castors().stream().mapToDouble(at -> at.dot(towards)).min().orElseThrow();
        double balance = load.both().worst(0, towards).point().dot(towards);
        double onFront = (balance - rear) / (front - rear);
        return onFront > 0 && onFront < 1
                ? Optional.of(new Way(words, load.weightHigh() * onFront, load.weightHigh() * (1 - onFront), front - rear))
                : Optional.empty();
    }
}
