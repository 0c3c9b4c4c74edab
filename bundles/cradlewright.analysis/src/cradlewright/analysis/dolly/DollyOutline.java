package cradlewright.analysis.dolly;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What of a dolly a drawing shows. */
public final class DollyOutline {

    private DollyOutline() {
    }

    /**
     * A member as a line.
     *
     * @param from its start in the axes of the dolly, m
     * @param to its end in the axes of the dolly, m
     */
    public record Edge(Vec3 from, Vec3 to) {
    }

    /** Returns the members whose ends are known. */
    public static List<Edge> edges(DollyFacts dolly) {
        List<Edge> edges = new ArrayList<>();
        for (MemberFacts member : dolly.members()) {
            Optional<Vec3> from = member.fromId().flatMap(dolly::node).flatMap(NodeFacts::at);
            Optional<Vec3> to = member.toId().flatMap(dolly::node).flatMap(NodeFacts::at);
            if (from.isPresent() && to.isPresent()) {
                edges.add(new Edge(from.get(), to.get()));
            }
        }
        return edges;
    }

    /** Returns where a castor is, or nothing when that is not in the files. */
    public static Optional<Vec3> castor(DollyFacts dolly, String castorId) {
        return CarFacts.find(dolly.castors(), castorId).flatMap(CastorFacts::nodeId).flatMap(dolly::node).flatMap(NodeFacts::at);
    }
}
