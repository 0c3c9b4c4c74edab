package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The end of a member that meets others in a joint that nobody entered. An end needs no joint of its own where nothing else meets it,
 * where a member of the same section runs on in line, or where all other ends are made fast to it.
 *
 * @param member the member
 * @param nodeId where that end is
 */
public record OpenEnd(MemberFacts member, String nodeId) {

    /** Cosine of the angle up to which two members lie in line: half a degree. */
    private static final double IN_LINE = Math.cos(Math.toRadians(0.5));

    private record End(MemberFacts member, String nodeId, Optional<String> jointId, Vec3 outward) {
    }

    /** Returns those of a dolly, in the order of its members. */
    public static List<OpenEnd> of(DollyFacts dolly) {
        List<End> ends = dolly.members().stream().flatMap(member -> ends(member, dolly).stream()).toList();
        return ends.stream().filter(end -> open(end, ends, dolly)).map(end -> new OpenEnd(end.member, end.nodeId)).toList();
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
