package cradlewright.analysis.checks.joint;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.dolly.DollyCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.JointFacts;
import cradlewright.mechanics.joint.BoltSpacing;
import cradlewright.mechanics.joint.HoleKind;
import cradlewright.mechanics.joint.HolePosition;
import cradlewright.mechanics.joint.JointFormulas;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Are the bolts far enough from each other and from the edges? A pitch that is too long for the sheet only tightens the answer. */
public final class SpacingCheck extends DollyCheck {

    /** Creates the check. */
    public SpacingCheck() {
        super(new CheckInfo("joint.spacing", "Are the bolts far enough from each other and from the edges?",
                "EN 1993-1-8 Table 3.3, thin sheet EN 1993-1-3 Table 8.4", Cautions.JOINTS,
                List.of("size, rows, columns and distances of the bolts", "distances to end and edge", "thickness of the plate"),
                List.of(JointFormulas.SPACING)));
    }

    @Override
    protected List<Finding> examine(DollyFacts dolly, Subject subject, Reader reader) {
        return dolly.joints().stream().flatMap(joint -> joint instanceof JointFacts.Bolted bolted ? Stream.of(bolted) : Stream.empty())
                .map(joint -> examine(joint, subject, reader)).toList();
    }

    private Finding examine(JointFacts.Bolted joint, Subject subject, Reader reader) {
        FindingBuilder finding = finding(subject, joint.id(), joint.name());
        Optional<Bolts> bolts = Bolts.of(joint, reader);
        List<String> missing = new ArrayList<>(Bolts.missing(joint, reader));
        if (bolts.isPresent()) {
            if (bolts.get().position().isEmpty()) {
                missing.add("distances from the bolts of " + joint.name() + " to end and edge of the sheet");
            }
            if (bolts.get().plate().isEmpty()) {
                missing.add("thickness of the plate of " + joint.name());
            }
        }
        return missing.isEmpty() ? judge(bolts.orElseThrow(), finding) : finding.cantSay("This joint is not fully described.", missing);
    }

    private static Finding judge(Bolts bolts, FindingBuilder finding) {
        HolePosition position = bolts.position().orElseThrow();
        // End and edge trade places with the direction of the force: the rules are asked both ways.
        HolePosition turned = new HolePosition(position.edge(), position.gauge(), position.end(), position.pitch());
        BoltSpacing spacing = new BoltSpacing(bolts.hole(), bolts.plate().orElseThrow(), hole(bolts.holes()), false);
        List<BoltSpacing.Violation> found = Stream.of(position, turned).flatMap(p -> spacing.check(p).stream()).toList();
        Optional<BoltSpacing.Violation> near = found.stream().filter(violation -> violation.found() < violation.limit()).findFirst();
        if (near.isPresent()) {
            BoltSpacing.Violation broken = near.get();
            return finding.atLeast(Amount.length(broken.limit()), Amount.length(broken.found()),
                    "least distance, measured from the middle of the holes")
                    .remedy(Remedy.advice("Drill farther from the edge and from the next hole, or take a smaller bolt."))
                    .say(Verdict.STOP, "Too close: " + words(broken) + " is below the least one.");
        }
        if (!found.isEmpty()) {
            BoltSpacing.Violation broken = found.get(0);
            return finding.against(Amount.length(broken.found()), Amount.length(broken.limit()),
                    "largest distance, measured from the middle of the holes")
                    .remedy(Remedy.advice("Put a bolt between, or take a thicker plate.")).say(Verdict.TIGHT,
                    "Far apart for the sheet: it may gape or bulge between the bolts, since "
                            + words(broken)
                            + " is above the largest one.");
        }
        return finding.say(Verdict.HOLDS, "All distances keep to the rules, whichever way the joint is pushed.");
    }

    private static String words(BoltSpacing.Violation broken) {
        return switch (broken.distance()) {
            case END -> "the distance from a hole to the end of the sheet";
            case EDGE -> "the distance from a hole to the edge of the sheet";
            case PITCH -> "the distance from hole to hole along the push";
            case GAUGE -> "the distance from hole to hole across the push";
        };
    }

    private static HoleKind hole(JointFacts.Holes holes) {
        return switch (holes) {
            case NORMAL -> HoleKind.NORMAL;
            case OVERSIZE -> HoleKind.OVERSIZE;
            case SLOT -> HoleKind.SLOT_ALONG;
        };
    }
}
