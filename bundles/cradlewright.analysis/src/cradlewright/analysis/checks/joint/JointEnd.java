package cradlewright.analysis.checks.joint;

import cradlewright.analysis.checks.dolly.LoadedMember;
import cradlewright.analysis.load.Situation;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An end of a member that a joint makes fast.
 *
 * @param member the member
 * @param near whether it is the end at which the member begins
 */
record JointEnd(LoadedMember member, boolean near) {

    /** Moments below this share of force times one metre and moment are rounding of the solver. */
    private static final double ROUNDING = 1e-9;

    /**
     * What the joint carries at that end in one situation.
     *
     * @param situation what happens
     * @param action in the axes of the member: x along it, z over its height
     */
    record Action(Situation situation, ForceMoment action) {
    }

    /** Returns the ends that a joint makes fast. */
    static List<JointEnd> of(String jointId, List<LoadedMember> members) {
        List<JointEnd> ends = new ArrayList<>();
        for (LoadedMember member : members) {
            if (member.facts().jointFromId().equals(Optional.of(jointId))) {
                ends.add(new JointEnd(member, true));
            }
            if (member.facts().jointToId().equals(Optional.of(jointId))) {
                ends.add(new JointEnd(member, false));
            }
        }
        return ends;
    }

    /** Returns what the joint carries in every situation, rounding left out. */
    List<Action> actions() {
        return member.taken().stream().map(taken ->
                new Action(taken.situation(), clean(near ? taken.load().nearEnd() : taken.load().farEnd()))).toList();
    }

    private static ForceMoment clean(ForceMoment action) {
        double least = ROUNDING * (action.force().norm() + action.moment().norm());
        return new ForceMoment(clean(action.force(), least), clean(action.moment(), least));
    }

    private static Vec3 clean(Vec3 v, double least) {
        return new Vec3(clean(v.x(), least), clean(v.y(), least), clean(v.z(), least));
    }

    private static double clean(double value, double least) {
        return Math.abs(value) <= least ? 0 : value;
    }
}
