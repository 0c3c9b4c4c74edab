package cradlewright.analysis.checks.joint;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.dolly.DollyCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Is it known how the members of a dolly that was made here are joined? An end needs no joint of its own where nothing else meets it,
 * where a member of the same section runs on in line, or where all other ends are made fast to it.
 */
public final class MissingJointCheck extends DollyCheck {

    /** Cosine of the angle up to which two members lie in line: half a degree. */
    private static final double IN_LINE = Math.cos(Math.toRadians(0.5));

    private record End(MemberFacts member, String nodeId, Optional<String> jointId, Vec3 outward) {
    }

    /** Creates the check. */
    public MissingJointCheck() {
        super(new CheckInfo("joint.missing", "Is it known how the members of the dolly are joined?", "EN 1993-1-8 2.1", Cautions.JOINTS,
                List.of("joint at each end of each member"), List.of()));
    }

    @Override
    protected List<Finding> examine(DollyFacts dolly, Subject subject, Reader reader) {
        boolean madeHere = dolly.build() == DollyFacts.Build.OWN || dolly.build() == DollyFacts.Build.WELDED;
        if (!madeHere || dolly.members().isEmpty()) {
            return List.of();
        }
        List<End> ends = dolly.members().stream().flatMap(member -> ends(member, dolly).stream()).toList();
        List<String> open = ends.stream().filter(end -> open(end, ends, dolly))
                .map(end -> "joint of " + end.member.name() + " at " + dolly.node(end.nodeId).map(NodeFacts::name).orElse(end.nodeId))
                        .toList();
        if (open.isEmpty()) {
            return List.of(finding(subject, dolly.id(), dolly.name())
                    .say(Verdict.HOLDS, "Every end that meets another member has its joint."));
        }
        return List.of(finding(subject, dolly.id(), dolly.name())
                .cantSay("Nobody said how some members are joined, so their joints are not looked at.",
                open));
    }

    private static List<End> ends(MemberFacts member, DollyFacts dolly) {
        Optional<Vec3> from = member.fromId().flatMap(dolly::node).flatMap(NodeFacts::at);
        Optional<Vec3> to = member.toId().flatMap(dolly::node).flatMap(NodeFacts::at);
        List<End> ends = new ArrayList<>();
        if (from.isPresent() && to.isPresent() && to.get().minus(from.get()).norm() > 0) {
            Vec3 along = to.get().minus(from.get()).unit();
            ends.add(new End(member, member.fromId().orElseThrow(), member.jointFromId(), along.times(-1)));
            ends.add(new End(member, member.toId().orElseThrow(), member.jointToId(), along));
        }
        return ends;
    }

    /** Of the ends that meet, the one that the others are made fast to needs no joint; a member that runs through is that one. */
    private static boolean open(End end, List<End> all, DollyFacts dolly) {
        List<End> meeting = all.stream().filter(other -> other.nodeId.equals(end.nodeId)).toList();
        if (joined(end, dolly) || runsOn(end, meeting)) {
            return false;
        }
        return meeting.stream().anyMatch(other -> other != end && (runsOn(other, meeting) || !joined(other, dolly)));
    }

    private static boolean joined(End end, DollyFacts dolly) {
        return end.jointId.flatMap(id -> CarFacts.find(dolly.joints(), id)).isPresent();
    }

    private static boolean runsOn(End end, List<End> meeting) {
        return meeting.stream().anyMatch(other -> end.member.sectionId().equals(other.member.sectionId())
                && end.outward.dot(other.outward) < -IN_LINE);
    }
}
