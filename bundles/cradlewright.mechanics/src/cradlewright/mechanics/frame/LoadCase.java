package cradlewright.mechanics.frame;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/** Loads on a frame and movements forced upon its supports; immutable, bound to its model. */
public final class LoadCase {

    private final FrameModel model;
    /** Six numbers a node: force and moment about it, global axes. */
    private final double[] nodes;
    /** For each member its loads between the nodes. */
    private final List<List<SpanLoad>> members;
    private final Map<Integer, Map<Dof, Double>> settlements;

    private LoadCase(FrameModel model) {
        this.model = model;
        nodes = new double[6 * model.nodes().size()];
        members = new ArrayList<>(Collections.nCopies(model.members().size(), List.of()));
        settlements = new LinkedHashMap<>();
    }

    /** Returns a builder of loads on a model. */
    public static Builder on(FrameModel model) {
        return new Builder(Objects.requireNonNull(model, "model"));
    }

    /** Returns a case without loads. */
    public static LoadCase none(FrameModel model) {
        return on(model).build();
    }

    /** Returns the model that carries the loads. */
    public FrameModel model() {
        return model;
    }

    /** Returns this case times a factor, settlements included; throws IllegalArgumentException if it is not finite. */
    public LoadCase times(double factor) {
        Require.finite(factor, "load factor");
        LoadCase result = new LoadCase(model);
        result.addTimes(this, factor);
        return result;
    }

    /** Returns both cases together; throws IllegalArgumentException if they belong to different models. */
    public LoadCase plus(LoadCase other) {
        return plusTimes(List.of(other), new double[] {1});
    }

    LoadCase plusTimes(List<LoadCase> others, double[] factors) {
        LoadCase result = new LoadCase(model);
        result.addTimes(this, 1);
        for (int i = 0; i < factors.length; i++) {
            others.get(i).requireOn(model);
            if (factors[i] != 0) {
                result.addTimes(others.get(i), factors[i]);
            }
        }
        return result;
    }

    private void addTimes(LoadCase other, double factor) {
        Vectors.addTimes(nodes, factor, other.nodes);
        for (int member = 0; member < members.size(); member++) {
            for (SpanLoad load : other.members.get(member)) {
                addSpan(member, load.times(factor));
            }
        }
        other.settlements.forEach((node, held) -> held.forEach((dof, amount) -> settlements
                .computeIfAbsent(node, key -> new EnumMap<>(Dof.class)).merge(dof, factor * amount, Double::sum)));
    }

    private void addSpan(int member, SpanLoad load) {
        if (members.get(member).isEmpty()) {
            members.set(member, new ArrayList<>());
        }
        members.get(member).add(load);
    }

    void requireOn(FrameModel wanted) {
        if (model != wanted) {
            throw new IllegalArgumentException("the load case belongs to another frame model");
        }
    }

    /** Returns the sum of all loads with its moment about the origin; reactions and settlements do not enter. */
    public ForceMoment resultant() {
        ForceMoment sum = ForceMoment.ZERO;
        for (ForceMoment part : contributions()) {
            sum = sum.plus(part);
        }
        return sum;
    }

    /** Each node load and each member load by itself, moments about the origin. */
    List<ForceMoment> contributions() {
        List<ForceMoment> parts = new ArrayList<>();
        for (int node = 0; 6 * node < nodes.length; node++) {
            if (isLoaded(node)) {
                ForceMoment load = new ForceMoment(Vectors.vector(nodes, 6 * node), Vectors.vector(nodes, 6 * node + 3));
                parts.add(load.seenFrom(model.nodes().get(node).position()));
            }
        }
        for (int member = 0; member < members.size(); member++) {
            if (!members.get(member).isEmpty()) {
                addContributions(member, parts);
            }
        }
        return parts;
    }

    private void addContributions(int index, List<ForceMoment> parts) {
        FrameMember member = model.members().get(index);
        MemberAxes axes = model.axes(member.name());
        BeamSpan span = new BeamSpan(member.section(), axes.length());
        for (SpanLoad load : members.get(index)) {
            ForceMoment local = span.sum(List.of(load));
            parts.add(new ForceMoment(axes.toGlobal(local.force()), axes.toGlobal(local.moment())).seenFrom(axes.origin()));
        }
    }

    private boolean isLoaded(int node) {
        for (int i = 6 * node; i < 6 * node + 6; i++) {
            if (nodes[i] != 0) {
                return true;
            }
        }
        return false;
    }

    /** Adds the loads that act on the nodes themselves to the actions on all freedoms. */
    void addNodeLoads(double[] actions) {
        Vectors.addTimes(actions, 1, nodes);
    }

    List<SpanLoad> spanLoads(int member) {
        return Collections.unmodifiableList(members.get(member));
    }

    boolean hasSettlements() {
        return !settlements.isEmpty();
    }

    double settlement(int node, Dof dof) {
        return settlements.getOrDefault(node, Map.of()).getOrDefault(dof, 0.0);
    }

    /** Collects loads; each call adds to what is there. */
    public static final class Builder {

        private final LoadCase loads;

        private Builder(FrameModel model) {
            loads = new LoadCase(model);
        }

        /** Adds a force at a point of the frame, global axes. */
        public Builder force(FramePoint point, Vec3 force) {
            return action(point, new ForceMoment(force, Vec3.ZERO));
        }

        /**
         * Adds a force and a moment about the point, global axes.
         *
         * @throws IllegalArgumentException for an unknown owner or a station beyond the end of its member
         */
        public Builder action(FramePoint point, ForceMoment action) {
            ForceMoment carried = action.seenFrom(point.arm());
            if (point.onMember()) {
                return point(point.owner(), point.distance(), carried, LoadAxes.GLOBAL);
            }
            int at = 6 * loads.model.nodeIndex(point.owner());
            for (Dof dof : Dof.values()) {
                loads.nodes[at + dof.ordinal()] += carried.component(dof);
            }
            return this;
        }

        /**
         * Adds a force and a moment at a station of a member.
         *
         * @throws IllegalArgumentException for an unknown member or a station beyond its end
         */
        public Builder point(String member, double distance, ForceMoment action, LoadAxes axes) {
            double start = loads.model.station(member, distance);
            loads.addSpan(loads.model.memberIndex(member),
                    new SpanLoad(start, 0, local(member, action.force(), axes), local(member, action.moment(), axes)));
            return this;
        }

        /** Adds a uniform force over the whole flexible part of a member, N/m. */
        public Builder uniform(String member, Vec3 force, LoadAxes axes) {
            return uniform(member, 0, loads.model.axes(member).length(), new ForceMoment(force, Vec3.ZERO), axes);
        }

        /** Adds a uniform torque about the axis of a member over its whole flexible part, N*m/m. */
        public Builder uniformTorque(String member, double torque) {
            return uniform(member, 0, loads.model.axes(member).length(), new ForceMoment(Vec3.ZERO, new Vec3(torque, 0, 0)),
                    LoadAxes.MEMBER);
        }

        /**
         * Adds a uniform force and moment per metre of member between two stations.
         *
         * @throws IllegalArgumentException for an unknown member, a station beyond its end or an empty stretch
         */
        public Builder uniform(String member, double from, double to, ForceMoment perMetre, LoadAxes axes) {
            double start = loads.model.station(member, from);
            double stop = loads.model.station(member, to);
            if (!(start < stop)) {
                throw new IllegalArgumentException("a uniform load on member " + member + " must begin before it ends, found "
                        + from + " to " + to);
            }
            int index = loads.model.memberIndex(member);
            SpanLoad load = new SpanLoad(start, 1, local(member, perMetre.force(), axes),
                    local(member, perMetre.moment(), axes));
            loads.addSpan(index, load);
            if (stop < loads.model.axes(member).length()) {
                loads.addSpan(index, new SpanLoad(stop, 1, load.force().times(-1), load.moment().times(-1)));
            }
            return this;
        }

        private Vec3 local(String member, Vec3 vector, LoadAxes axes) {
            return axes == LoadAxes.MEMBER ? vector : loads.model.axes(member).toMember(vector);
        }

        /** Adds the weight of the flexible part of each member that has a density. See {@link FrameFormulas#SELF_WEIGHT}. */
        public Builder selfWeight() {
            for (FrameMember member : loads.model.members()) {
                if (member.density() > 0) {
                    double perMetre = member.density() * member.section().area() * Constants.GRAVITY;
                    uniform(member.name(), Vec3.UP.times(-perMetre), LoadAxes.GLOBAL);
                }
            }
            return this;
        }

        /**
         * Moves the ground under a held freedom, fixed or sprung.
         *
         * @param amount m or rad along the global axis
         * @throws IllegalArgumentException if the freedom is not held or the amount not finite
         */
        public Builder settle(String node, Dof dof, double amount) {
            Require.finite(amount, "settlement of node " + node);
            if (!loads.model.supports().getOrDefault(node, Map.of()).containsKey(dof)) {
                throw new IllegalArgumentException("freedom " + dof + " of node " + node + " is not held, it cannot be moved");
            }
            loads.settlements.computeIfAbsent(loads.model.nodeIndex(node), key -> new EnumMap<>(Dof.class)).merge(dof, amount,
                    Double::sum);
            return this;
        }

        /** Returns the load case; later calls to this builder do not change it. */
        public LoadCase build() {
            return loads.times(1);
        }
    }
}
