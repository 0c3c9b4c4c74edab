package cradlewright.analysis.dolly;

import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/** Finds which part of a dolly lies beyond the pin of its rocking end. */
final class RockingEndFinder {

    private final DollyFacts dolly;

    RockingEndFinder(DollyFacts dolly) {
        this.dolly = dolly;
    }

    /**
     * Returns the part that turns; nothing without a pin.
     *
     * @param memberMass mass of a member, kg
     * @param castorMass mass of a castor, kg
     * @throws IllegalArgumentException when there is more than one pin, or the pin does not part the dolly, in words for the builder
     */
    Optional<RockingEnd> find(ToDoubleFunction<MemberFacts> memberMass, ToDoubleFunction<CastorFacts> castorMass) {
        List<MemberFacts> pinned = dolly.members().stream().filter(m -> m.releaseFrom().turns() || m.releaseTo().turns()).toList();
        if (pinned.isEmpty()) {
            return Optional.empty();
        }
        MemberFacts member = pinned.get(0);
        if (pinned.size() > 1 || member.releaseFrom().turns() && member.releaseTo().turns()) {
            throw new IllegalArgumentException("one pin for the rocking end, not several: else nothing keeps the dolly from rolling over");
        }
        String beyond = (member.releaseTo().turns() ? member.toId() : member.fromId()).orElseThrow();
        String before = (member.releaseTo().turns() ? member.fromId() : member.toId()).orElseThrow();
        Set<String> nodes = reachable(beyond, member);
        if (nodes.contains(before)) {
            throw new IllegalArgumentException(member.name() + ": a pin that parts the dolly; other members tie both sides of it together");
        }
        Vec3 pin = place(beyond);
        double mass = 0;
        Vec3 moment = Vec3.ZERO;
        for (MemberFacts other : dolly.members()) {
            if (other != member && nodes.contains(other.fromId().orElseThrow())) {
                double m = memberMass.applyAsDouble(other);
                mass += m;
                moment = moment.plus(place(other.fromId().get()).plus(place(other.toId().orElseThrow())).times(m / 2));
            }
        }
        for (CastorFacts castor : dolly.castors()) {
            if (castor.nodeId().filter(nodes::contains).isPresent()) {
                double m = castorMass.applyAsDouble(castor);
                mass += m;
                moment = moment.plus(place(castor.nodeId().get()).times(m));
            }
        }
        return Optional.of(new RockingEnd(pin, place(beyond).minus(place(before)), nodes, mass, mass > 0 ? moment.times(1 / mass) : pin));
    }

    private Set<String> reachable(String start, MemberFacts without) {
        Set<String> nodes = new HashSet<>(Set.of(start));
        Deque<String> next = new ArrayDeque<>(nodes);
        while (!next.isEmpty()) {
            String node = next.pop();
            for (MemberFacts member : dolly.members()) {
                if (member != without && (member.fromId().filter(node::equals).isPresent() || member.toId().filter(node::equals)
                        .isPresent())) {
                    member.fromId().filter(nodes::add).ifPresent(next::push);
                    member.toId().filter(nodes::add).ifPresent(next::push);
                }
            }
        }
        return nodes;
    }

    private Vec3 place(String nodeId) {
        return dolly.node(nodeId).flatMap(NodeFacts::at).orElseThrow();
    }
}
