package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The members of a dolly that are one length of the same section: each begins where the one before ends, in the same direction and
 * with the same side up. What warps in one warps on in the next.
 */
final class MembersInLine {

    /** Cosine of the angle up to which two members lie in line: half a degree. */
    private static final double IN_LINE = Math.cos(Math.toRadians(0.5));

    private final DollyFacts dolly;

    private MembersInLine(DollyFacts dolly) {
        this.dolly = dolly;
    }

    /** Returns for the id of each member the ids of the members of its line in their order, itself among them. */
    static Map<String, List<String>> of(DollyFacts dolly) {
        return new MembersInLine(dolly).lines();
    }

    private Map<String, List<String>> lines() {
        Map<String, MemberFacts> next = new HashMap<>();
        Map<String, MemberFacts> before = new HashMap<>();
        for (MemberFacts member : dolly.members()) {
            List<MemberFacts> on = dolly.members().stream().filter(other -> runsOn(member, other)).toList();
            if (on.size() == 1 && before.putIfAbsent(on.get(0).id(), member) == null) {
                next.put(member.id(), on.get(0));
            }
        }
        Map<String, List<String>> lines = new HashMap<>();
        for (MemberFacts member : dolly.members()) {
            if (!before.containsKey(member.id())) {
                List<String> line = new ArrayList<>();
                for (MemberFacts m = member; m != null; m = next.get(m.id())) {
                    line.add(m.id());
                }
                line.forEach(id -> lines.put(id, line));
            }
        }
        return lines;
    }

    private boolean runsOn(MemberFacts member, MemberFacts other) {
        Optional<Vec3> one = direction(member);
        Optional<Vec3> two = direction(other);
        return one.isPresent() && two.isPresent() && one.get().dot(two.get()) > IN_LINE
                && member.toId().equals(other.fromId()) && member.sectionId().equals(other.sectionId()) && member.up().equals(other.up())
                && !member.releaseTo().turns() && !other.releaseFrom().turns();
    }

    private Optional<Vec3> direction(MemberFacts member) {
        Optional<Vec3> from = member.fromId().flatMap(dolly::node).flatMap(NodeFacts::at);
        Optional<Vec3> to = member.toId().flatMap(dolly::node).flatMap(NodeFacts::at);
        return from.flatMap(start -> to.map(end -> end.minus(start))).filter(along -> along.norm() > 0).map(Vec3::unit);
    }
}
