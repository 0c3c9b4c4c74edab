package cradlewright.mechanics.frame;

import java.util.Arrays;
import java.util.List;

/**
 * Movements, reactions and internal forces of a frame under one load case. Immutable; members and reactions are worked out
 * when first asked for. On a free body movements are relative to its clamped node and the reaction of that node is the rest
 * that the loads leave unbalanced.
 */
public final class FrameResult {

    private final FrameStructure structure;
    private final LoadCase loads;
    private final double[] movements;
    /** Filled on demand; a state is immutable, so two threads that fill the same place do no harm. */
    private final MemberState[] states;
    private volatile double[] reactions;

    FrameResult(FrameStructure structure, LoadCase loads, double[] movements) {
        this.structure = structure;
        this.loads = loads;
        this.movements = movements;
        states = new MemberState[structure.model().members().size()];
    }

    /** Returns the loads, contact forces included. */
    public LoadCase loads() {
        return loads;
    }

    /** Returns the movement of a node, global axes; throws IllegalArgumentException for an unknown name. */
    public Motion motion(String node) {
        double[] six = six(movements, node);
        return new Motion(Vectors.vector(six, 0), Vectors.vector(six, 3));
    }

    /** Returns the movement of a point, global axes; throws IllegalArgumentException for an unknown owner or station. */
    public Motion motion(FramePoint point) {
        Motion foot = point.onMember() ? motion(point.owner(), point.distance()) : motion(point.owner());
        return foot.at(point.arm());
    }

    /**
     * Returns the movement of the axis of a member at a distance from the near end of its flexible part, global axes. See
     * {@link FrameFormulas#ALONG_MEMBER}.
     *
     * @throws IllegalArgumentException for an unknown name or a distance beyond the end
     */
    public Motion motion(String member, double distance) {
        return state(member).motion(structure.model().station(member, distance));
    }

    /** Returns what the support does to a node, global axes, zero at a node that is not held. */
    public ForceMoment reaction(String node) {
        double[] all = reactions;
        if (all == null) {
            all = structure.reactions(loads, movements);
            reactions = all;
        }
        double[] six = six(all, node);
        return new ForceMoment(Vectors.vector(six, 0), Vectors.vector(six, 3));
    }

    /** Returns what the joint does to the near end of the flexible part of a member, member axes. */
    public ForceMoment nearEnd(String member) {
        return state(member).end(0);
    }

    /** Returns what the joint does to the far end of the flexible part of a member, member axes. */
    public ForceMoment farEnd(String member) {
        return state(member).end(6);
    }

    /** Returns the internal forces at a distance from the near end; a load that stands exactly there is not counted. */
    public InternalForces forces(String member, double distance) {
        return forces(member, distance, CutSide.BEFORE);
    }

    /**
     * Returns the internal forces at a distance from the near end of the flexible part. See
     * {@link FrameFormulas#ALONG_MEMBER}.
     *
     * @throws IllegalArgumentException for an unknown name or a distance beyond the end
     */
    public InternalForces forces(String member, double distance, CutSide side) {
        return state(member).forces(structure.model().station(member, distance), side);
    }

    /**
     * Returns the cuts at which an internal force of the member can be largest: both ends, both sides of each load, and where
     * a moment has its peak between them; by rising distance.
     */
    public List<StationForces> criticalStations(String member) {
        return List.copyOf(state(member).critical());
    }

    private MemberState state(String member) {
        int index = structure.model().memberIndex(member);
        MemberState state = states[index];
        if (state == null) {
            state = structure.element(index).recover(movements, loads.spanLoads(index));
            states[index] = state;
        }
        return state;
    }

    private double[] six(double[] all, String node) {
        int at = 6 * structure.model().nodeIndex(node);
        return Arrays.copyOfRange(all, at, at + 6);
    }
}
