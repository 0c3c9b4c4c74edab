package cradlewright.analysis.checks.lift;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.lifting.ArmReach;
import cradlewright.mechanics.lifting.LiftingFormulas;
import cradlewright.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * Does the arm reach its lift point? The last tenth of the longest reach is TIGHT like that of any capacity: the car is set between the
 * columns by eye, and an arm that is nearly all out has nothing left for that. The shortest reach is a plain stop: an arm that is all in
 * is none the worse for it, so only the way left is shown. The lift point counts at the worst place within its give or take.
 */
public final class ArmReachCheck extends VisitCheck {

    /** Rounding of an angle, rad: a direction on the very edge of the swing still counts as within. */
    private static final double ROUNDING = 1e-9;
    private static final Remedy SWING = Remedy.advice("Use another arm for this lift point or set the car further forward or back.");
    private static final Remedy MEASURE = Remedy.advice("Measure the lift point from the marks again, with less give or take.");

    /** Creates the check. */
    public ArmReachCheck() {
        super(new CheckInfo("lift.reach", "Does each arm reach its lift point?", "plate and manual of the lift", Cautions.LIFTING,
                List.of("pivot, shortest and longest reach and swing of each arm", "where the car stands on the lift"),
                List.of(LiftingFormulas.ARM_REACH)));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (Support support : standing.supports()) {
            if (support.holder() instanceof Holder.OnArm on) {
                findings.add(examine(support, on.arm(), subject, settings(reader).tightMargin()));
            }
        }
        return findings;
    }

    private Finding examine(Support support, GearFacts.ArmFacts arm, Subject subject, double margin) {
        FindingBuilder finding = finding(subject, arm.id(), arm.name());
        if (arm.pivot().isEmpty() || arm.reachMin().isEmpty() || arm.reachMax().isEmpty()) {
            return finding.cantSay("How far this arm reaches is not in the files.",
                    List.of("pivot, shortest and longest reach of " + arm.name() + ": measure them or see the manual"));
        }
        Vec3 across = support.inCarrier().minus(arm.pivot().get());
        double distance = Math.hypot(across.x(), across.y());
        double longest = arm.reachMax().get().low();
        double shortest = arm.reachMin().get().high();
        double give = Value.COVERAGE * support.placeUncertainty();
        double far = distance + give;
        double near = Math.max(0, distance - give);
        finding.against(Amount.length(far), Amount.length(longest), "longest reach of the arm")
                .input("shortest reach", Amount.length(shortest), "manual or measured");
        if (give > 0) {
            finding.shown("from the pivot to the lift point", Amount.length(distance), "plane geometry")
                    .shown("give or take of the lift point", Amount.length(give), "19 times in 20");
        }
        Verdict verdict = near < shortest ? Verdict.STOP : Verdict.of(far, longest, margin);
        if (verdict == Verdict.STOP) {
            return outOfReach(finding, far > longest, distance > longest || distance < shortest);
        }
        finding.shown("left before the arm is all out", Amount.length(longest - far), "plane geometry")
                .shown("left before it is all in", Amount.length(near - shortest), "plane geometry");
        if (arm.azimuthFrom().isEmpty() || arm.azimuthTo().isEmpty()) {
            return finding.cantSay("The arm is long enough, but how far it swings is not in the files.",
                    List.of("direction from which and up to which " + arm.name() + " swings: measure both or see the manual"));
        }
        double from = arm.azimuthFrom().get().si();
        ArmReach reach = new ArmReach(arm.pivot().get(), shortest, longest, from, swing(from, arm.azimuthTo().get().si()), 0, 0);
        ArmReach.Reach found = reach.to(support.inCarrier());
        finding.input("direction of the lift point from the pivot", new Amount(found.azimuth(), Dimension.ANGLE),
                "zero is rearward, to the right counts up");
        if (!found.swingFits()) {
            return finding.remedy(SWING).say(Verdict.STOP, "This arm does not swing that far round.");
        }
        if (!swingsAlwaysTo(reach, found, give)) {
            return finding.remedy(SWING).remedy(MEASURE)
                    .say(Verdict.STOP, "This arm may not swing far enough round: the place of the lift point is not known that well.");
        }
        return finding.say(verdict, verdict == Verdict.HOLDS ? "The arm reaches its lift point."
                : "The arm reaches its lift point, but is nearly all out.");
    }

    private static Finding outOfReach(FindingBuilder finding, boolean tooFar, boolean certain) {
        finding.remedy(Remedy.advice(tooFar ? "Set the car closer to this column or choose a lift point nearer to it."
                : "Set the car further from this column or choose a lift point further away."));
        if (certain) {
            return finding.say(Verdict.STOP, tooFar ? "The lift point lies beyond the reach of this arm."
                    : "The lift point lies too close for this arm.");
        }
        return finding.remedy(MEASURE).say(Verdict.STOP, tooFar
                ? "The lift point may lie beyond the reach of this arm: its place is not known that well."
                : "The lift point may lie too close for this arm: its place is not known that well.");
    }

    /** Tells whether the arm swings to every place in the circle of what the place of the lift point may be off by. */
    private static boolean swingsAlwaysTo(ArmReach reach, ArmReach.Reach found, double give) {
        if (give >= found.distance()) {
            return reach.swing() >= 2 * Math.PI;
        }
        double aside = Math.asin(give / found.distance());
        double full = 2 * Math.PI;
        double past = ((found.azimuth() - reach.swingFrom()) % full + full) % full;
        return reach.swing() >= full || past - aside >= -ROUNDING && past + aside <= reach.swing() + ROUNDING;
    }

    /** Returns the angle from one direction on to another, a full turn when they lie a turn apart. */
    private static double swing(double from, double to) {
        double turn = 2 * Math.PI;
        return to - from >= turn ? turn : ((to - from) % turn + turn) % turn;
    }
}
