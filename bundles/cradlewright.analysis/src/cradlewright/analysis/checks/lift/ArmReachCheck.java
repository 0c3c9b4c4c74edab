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
 * is none the worse for it, so only the way left is shown.
 */
public final class ArmReachCheck extends VisitCheck {

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
        finding.against(Amount.length(distance), Amount.length(longest), "longest reach of the arm")
                .input("shortest reach", Amount.length(shortest), "manual or measured");
        Verdict verdict = distance < shortest ? Verdict.STOP : Verdict.of(distance, longest, margin);
        if (verdict != Verdict.STOP) {
            finding.shown("left before the arm is all out", Amount.length(longest - distance), "plane geometry")
                    .shown("left before it is all in", Amount.length(distance - shortest), "plane geometry");
        }
        if (verdict == Verdict.STOP) {
            return finding.remedy(Remedy.advice(distance > longest
                    ? "Set the car closer to this column or choose a lift point nearer to it."
                    : "Set the car further from this column or choose a lift point further away."))
                    .say(Verdict.STOP, distance > longest ? "The lift point lies beyond the reach of this arm."
                    : "The lift point lies too close for this arm.");
        }
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
            return finding.remedy(Remedy.advice("Use another arm for this lift point or set the car further forward or back."))
                    .say(Verdict.STOP, "This arm does not swing that far round.");
        }
        return finding.say(verdict, verdict == Verdict.HOLDS ? "The arm reaches its lift point."
                : "The arm reaches its lift point, but is nearly all out.");
    }

    /** Returns the angle from one direction on to another, a full turn when they lie a turn apart. */
    private static double swing(double from, double to) {
        double turn = 2 * Math.PI;
        return to - from >= turn ? turn : ((to - from) % turn + turn) % turn;
    }
}
