package cradlewright.analysis.checks.tip;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.DollyLoad;
import cradlewright.analysis.checks.DollyLoadCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.castor.CastorFormulas;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.tipping.KerbHit;
import cradlewright.mechanics.tipping.TippingFormulas;
import cradlewright.quantity.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Does a rolling dolly stay on its castors when they are stopped dead? */
public final class TipKerbCheck extends DollyLoadCheck {

    private static final Vec3 ALONG = new Vec3(1, 0, 0);
    private static final Vec3 ACROSS = new Vec3(0, 1, 0);

    /** A way to roll and how fast it may be stopped dead. */
    private record Way(String words, double distance, double height, double speed) {
    }

    /** Creates the check. */
    public TipKerbCheck() {
        super(new CheckInfo("tip.kerb", "Does it stay upright when its castors are stopped dead while it rolls?",
                "rigid body that is stopped at its foot: textbooks of dynamics (from memory); own derivation", Cautions.TIPPING,
                List.of("place and lead of each castor", "mass and balance point of car and dolly"),
                List.of(TippingFormulas.KERB, CastorFormulas.SWIVEL_LEAD)));
    }

    @Override
    protected boolean arises(Standing standing, Reader reader) {
        return true;
    }

    @Override
    protected List<Finding> judge(DollyLoad load, Standing standing, Subject subject, Reader reader) {
        SettingsFacts settings = settings(reader);
        FindingBuilder finding = finding(subject, load.dolly().id(), load.dolly().name()).situation("rolled against a stop");
        List<String> missing = new ArrayList<>(Leads.missing(load));
        if (load.balance().z() <= 0) {
            missing.add("height of the balance point above the floor");
        }
        if (!missing.isEmpty()) {
            return List.of(finding.cantSay("When it goes over its castors cannot be worked out.", missing));
        }
        Way along = worst(List.of(way("lengthwise", load, ALONG), way("lengthwise", load, ALONG.times(-1))));
        Way worst = load.rollsSideways()
                ? worst(List.of(along, way("sideways", load, ACROSS), way("sideways", load, ACROSS.times(-1))))
                : along;
        double pace = settings.walkingSpeed();
        Verdict verdict = Verdict.of(pace, worst.speed(), settings.tightMargin());
        finding.atLeast(new Amount(pace, Dimension.SPEED), new Amount(worst.speed(), Dimension.SPEED),
                "slowest pace at which it could go over the stopped castors, whatever its parts weigh where")
                .input("height of the balance point, at its unfavourable end", Amount.length(worst.height()),
                        "car and dolly together, 19 times in 20")
                .input("balance point behind the stopped castors, at the same end", Amount.length(Math.max(0, worst.distance())),
                        "castors trailing");
        if (verdict != Verdict.HOLDS) {
            Verdict lengthwise = Verdict.of(pace, along.speed(), settings.tightMargin());
            if (lengthwise.compareTo(verdict) < 0) {
                finding.remedy(Remedy.alone("Move it lengthwise only.", lengthwise));
            }
            finding.remedy(Remedy.trial("Move it at half the walking pace.", Trial.here(Change.of(settings.withWalkingSpeed(pace / 2)))));
        }
        if (verdict == Verdict.STOP) {
            finding.remedy(Remedy.advice("Sweep the way, close the gaps in it, and have one person walk ahead."));
        }
        return List.of(finding.say(verdict, verdict == Verdict.STOP ? "Rolled " + worst.words()
                + " at walking pace it may go over its castors."
                : "At walking pace it comes back down on its castors."));
    }

    private static Way worst(List<Way> ways) {
        return ways.stream().min(Comparator.comparingDouble(Way::speed)).orElseThrow();
    }

    /**
     * The castors in front trail, so they touch the floor behind their axes; those farthest in front count. The pace grows with R - h,
     * R the distance of the balance point from the stopped castors and h its height, so that is asked at its least.
     */
    private static Way way(String words, DollyLoad load, Vec3 towards) {
        double front = load.wheels().stream().mapToDouble(wheel -> wheel.at().dot(towards) - Leads.of(wheel)).max().orElseThrow();
        double listed = front - load.balance().dot(towards);
        double radius = Math.hypot(listed, load.balance().z());
        Vec3 worse = towards.times(listed / radius).plus(Vec3.UP.times(1 - load.balance().z() / radius));
        Vec3 end = load.both().worst(0, worse).point();
        double distance = front - end.dot(towards);
        double height = Math.max(load.balance().z(), end.z());
        return new Way(words, distance, height, listed > 0 && distance > 0 ? KerbHit.of(height, distance, 0).lowSpeed() : 0);
    }
}
