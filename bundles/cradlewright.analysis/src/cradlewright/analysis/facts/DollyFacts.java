package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * A dolly with its fixtures.
 *
 * @param mass in kg; worked out from the members when empty
 * @param balancePoint in the axes of the dolly
 * @param ratedLoad plate rating in kg
 * @param examination tag and examination dates
 * @param heights how the heights of its fixtures were found; nothing when nobody said
 */
public record DollyFacts(String id, String name, Build build, Optional<Value> mass, Optional<Vec3> balancePoint,
        Optional<Value> ratedLoad, Examination examination, List<NodeFacts> nodes, List<MemberFacts> members, List<JointFacts> joints,
        List<CastorFacts> castors, List<FootFacts> feet, List<FixtureFacts> fixtures, List<PropFacts> props,
                Optional<Heights> heights) implements Fact {

    /** How the heights of the fixtures were found. */
    public enum Heights {
        /** Measured on the dolly as it stands on its castors: what it sags by itself is in the numbers. */
        STANDING,
        /** Read off the drawing of a dolly that does not sag. */
        DRAWING
    }

    /** How it came about. */
    public enum Build {
        OWN, BOUGHT, WELDED, TIMBER
    }

    /** Returns the node of that id. */
    public Optional<NodeFacts> node(String nodeId) {
        return CarFacts.find(nodes, nodeId);
    }

    /** Tells whether its heights are those of the standing dolly, as they are taken to be when nobody said. */
    public boolean measuredStanding() {
        return heights.orElse(Heights.STANDING) == Heights.STANDING;
    }

    /** Returns the point of the node or member that a fixture stands on; nothing when the files do not say where that is. */
    public Optional<Vec3> base(FixtureFacts fixture) {
        return fixture.nodeId().isPresent() ? fixture.nodeId().flatMap(this::node).flatMap(NodeFacts::at) : fixture.on().flatMap(this::at);
    }

    private Optional<Vec3> at(FixtureFacts.Station station) {
        Optional<MemberFacts> member = CarFacts.find(members, station.memberId());
        Optional<Vec3> from = member.flatMap(MemberFacts::fromId).flatMap(this::node).flatMap(NodeFacts::at);
        Optional<Vec3> to = member.flatMap(MemberFacts::toId).flatMap(this::node).flatMap(NodeFacts::at);
        if (from.isEmpty() || to.isEmpty() || station.distance().isEmpty()) {
            return Optional.empty();
        }
        Vec3 along = to.get().minus(from.get());
        double share = station.distance().get().si() / along.norm();
        return share >= 0 && share <= 1 ? Optional.of(from.get().plus(along.times(share))) : Optional.empty();
    }

    /** Returns the fixture of that id. */
    public Optional<FixtureFacts> fixture(String fixtureId) {
        return CarFacts.find(fixtures, fixtureId);
    }


    /** Returns this dolly on other castors. */
    public DollyFacts withCastors(List<CastorFacts> other) {
        return new DollyFacts(id, name, build, mass, balancePoint, ratedLoad, examination, nodes, members,
                joints, other, feet, fixtures, props, heights);
    }

    /** Returns this dolly of other members. */
    public DollyFacts withMembers(List<MemberFacts> other) {
        return new DollyFacts(id, name, build, mass, balancePoint, ratedLoad, examination, nodes, other,
                joints, castors, feet, fixtures, props, heights);
    }

    /** Returns this dolly with the joint of that id replaced. */
    public DollyFacts with(JointFacts joint) {
        return new DollyFacts(id, name, build, mass, balancePoint, ratedLoad, examination, nodes, members,
                CarFacts.replace(joints, joint), castors, feet, fixtures, props, heights);
    }

    /** Returns this dolly on its screw feet. */
    public DollyFacts feetDown() {
        return new DollyFacts(id, name, build, mass, balancePoint, ratedLoad, examination, nodes, members,
                joints, castors, feet.stream().map(FootFacts::lowered).toList(), fixtures, props, heights);
    }

    /** Returns this dolly with the prop of that id replaced. */
    public DollyFacts with(PropFacts prop) {
        return new DollyFacts(id, name, build, mass, balancePoint, ratedLoad, examination, nodes, members,
                joints, castors, feet, fixtures, CarFacts.replace(props, prop), heights);
    }

    /** Returns this dolly with the corner of that id replaced. */
    public DollyFacts with(NodeFacts node) {
        return new DollyFacts(id, name, build, mass, balancePoint, ratedLoad, examination, CarFacts.replace(nodes, node), members,
                joints, castors, feet, fixtures, props, heights);
    }

    /** Returns this dolly with the fixture of that id replaced. */
    public DollyFacts with(FixtureFacts fixture) {
        return new DollyFacts(id, name, build, mass, balancePoint, ratedLoad, examination, nodes, members,
                joints, castors, feet, CarFacts.replace(fixtures, fixture), props, heights);
    }

    /** Returns this dolly standing higher by that much, m. */
    public DollyFacts raised(double by) {
        Vec3 up = Vec3.UP.times(by);
        List<NodeFacts> higher = nodes.stream().map(node -> new NodeFacts(node.id(), node.name(), node.at().map(up::plus))).toList();
        return new DollyFacts(id, name, build, mass, balancePoint.map(up::plus), ratedLoad, examination, higher, members, joints, castors,
                feet, fixtures, props, heights);
    }
}
