package cradlewright.mechanics.frame;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/** A frame as drawn: nodes, members, supports; immutable. A model without supports describes a free body. */
public final class FrameModel {

    private static final double BEYOND = 1e-9;

    private final List<FrameNode> nodes;
    private final List<FrameMember> members;
    private final Map<String, Integer> nodeIndex = new LinkedHashMap<>();
    private final Map<String, Integer> memberIndex = new LinkedHashMap<>();
    private final List<MemberAxes> axes = new ArrayList<>();
    private final Map<String, Map<Dof, Double>> supports;

    private FrameModel(Builder builder) {
        nodes = List.copyOf(builder.nodes);
        members = List.copyOf(builder.members);
        for (FrameNode node : nodes) {
            requireNew(nodeIndex.put(node.name(), nodeIndex.size()), "node", node.name());
        }
        for (FrameMember member : members) {
            requireNew(memberIndex.put(member.name(), memberIndex.size()), "member", member.name());
            axes.add(MemberAxes.of(member, node(member.from()).position(), node(member.to()).position()));
        }
        Map<String, Map<Dof, Double>> copy = new LinkedHashMap<>();
        builder.supports.forEach((name, stiffness) -> copy.put(
                node(name).name(), Collections.unmodifiableMap(new EnumMap<>(stiffness))));
        supports = Collections.unmodifiableMap(copy);
        if (nodes.isEmpty()) {
            throw new IllegalArgumentException("a frame needs a node or more");
        }
    }

    private static void requireNew(Integer before, String kind, String name) {
        if (before != null) {
            throw new IllegalArgumentException(kind + " " + name + " stands twice in the frame");
        }
    }

    /** Returns an empty builder. */
    public static Builder builder() {
        return new Builder();
    }

    /** Returns the nodes in the order in which they were added. */
    public List<FrameNode> nodes() {
        return nodes;
    }

    /** Returns the members in the order in which they were added. */
    public List<FrameMember> members() {
        return members;
    }

    /** Returns a node; throws IllegalArgumentException for an unknown name. */
    public FrameNode node(String name) {
        return nodes.get(nodeIndex(name));
    }

    /** Returns a member; throws IllegalArgumentException for an unknown name. */
    public FrameMember member(String name) {
        return members.get(memberIndex(name));
    }

    /** Returns place and axes of a member; throws IllegalArgumentException for an unknown name. */
    public MemberAxes axes(String member) {
        return axes.get(memberIndex(member));
    }

    /** Returns for each supported node the stiffness of its held freedoms in N/m or N*m/rad, infinite where fixed. */
    public Map<String, Map<Dof, Double>> supports() {
        return supports;
    }

    /** Returns the place of a point; throws IllegalArgumentException for an unknown owner or a station beyond the end. */
    public Vec3 position(FramePoint point) {
        if (!point.onMember()) {
            return node(point.owner()).position().plus(point.arm());
        }
        return axes(point.owner()).point(station(point.owner(), point.distance())).plus(point.arm());
    }

    /** Returns the distance, cut to the length of the member where it only exceeds it by rounding. */
    double station(String member, double distance) {
        double length = axes(member).length();
        Require.within(distance, 0, length * (1 + BEYOND), "distance along member " + member);
        return Math.min(distance, length);
    }

    int nodeIndex(String name) {
        return index(nodeIndex, name, "node");
    }

    int memberIndex(String name) {
        return index(memberIndex, name, "member");
    }

    private static int index(Map<String, Integer> map, String name, String kind) {
        Integer index = map.get(name);
        if (index == null) {
            throw new IllegalArgumentException("the frame has no " + kind + " " + name);
        }
        return index;
    }

    /** Collects nodes, members and supports; {@link #build()} checks that they fit together. */
    public static final class Builder {

        private final List<FrameNode> nodes = new ArrayList<>();
        private final List<FrameMember> members = new ArrayList<>();
        private final Map<String, Map<Dof, Double>> supports = new LinkedHashMap<>();

        private Builder() {
        }

        /** Adds a node. */
        public Builder node(String name, Vec3 position) {
            nodes.add(new FrameNode(name, position));
            return this;
        }

        /** Adds a member. */
        public Builder member(FrameMember member) {
            members.add(member);
            return this;
        }

        /** Fixes freedoms of a node. */
        public Builder fix(String node, Dof... dofs) {
            for (Dof dof : dofs) {
                hold(node, dof, Double.POSITIVE_INFINITY);
            }
            return this;
        }

        /** Fixes all six freedoms of a node. */
        public Builder fixAll(String node) {
            return fix(node, Dof.values());
        }

        /**
         * Holds a freedom of a node by a spring to the ground, which pushes and pulls.
         *
         * @param stiffness N/m or N*m/rad
         * @throws IllegalArgumentException if the stiffness is not above zero or the freedom is held already
         */
        public Builder spring(String node, Dof dof, double stiffness) {
            Require.positive(stiffness, "spring stiffness at node " + node);
            hold(node, dof, stiffness);
            return this;
        }

        private void hold(String node, Dof dof, double stiffness) {
            Map<Dof, Double> held = supports.computeIfAbsent(node, key -> new EnumMap<>(Dof.class));
            if (held.put(dof, stiffness) != null) {
                throw new IllegalArgumentException("freedom " + dof + " of node " + node + " is held twice");
            }
        }

        /**
         * Returns the model.
         *
         * @throws IllegalArgumentException for a name that stands twice or is unknown, or a member without length or axes
         */
        public FrameModel build() {
            return new FrameModel(this);
        }
    }
}
