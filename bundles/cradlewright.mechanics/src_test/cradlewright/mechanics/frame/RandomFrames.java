package cradlewright.mechanics.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;

import cradlewright.mechanics.geometry.Vec3;

/** Random connected frames and loads for the property tests; the same seed gives the same frame, however it is turned. */
final class RandomFrames {

    static final int NODES = 6;

    private RandomFrames() {
    }

    static MemberSection section(Random random) {
        double j = 1e-7 * (1 + 9 * random.nextDouble());
        double shear = random.nextBoolean() ? MemberSection.NO_SHEAR : 1e-4 * (1 + random.nextDouble());
        return new MemberSection(2.1e11, 8.1e10, 5e-4 * (1 + random.nextDouble()), 1e-7 * (1 + 9 * random.nextDouble()),
                1e-7 * (1 + 9 * random.nextDouble()), j, shear, 2e-4);
    }

    static Vec3 vector(Random random, double size) {
        return new Vec3(size * (2 * random.nextDouble() - 1), size * (2 * random.nextDouble() - 1),
                size * (2 * random.nextDouble() - 1));
    }

    static FrameModel.Builder frame(Random random, UnaryOperator<Vec3> turn) {
        FrameModel.Builder frame = FrameModel.builder();
        for (int i = 0; i < NODES; i++) {
            frame.node("n" + i, turn.apply(place(i, vector(random, 0.5))));
        }
        for (FrameMember member : members(random, turn)) {
            frame.member(member);
        }
        return frame;
    }

    /** In line, scattered sideways, never closer than 0.3 m along the line. */
    private static Vec3 place(int i, Vec3 scatter) {
        return new Vec3(0.6 * i + 0.3 * scatter.x(), scatter.y(), scatter.z());
    }

    private static List<FrameMember> members(Random random, UnaryOperator<Vec3> turn) {
        List<FrameMember> members = new ArrayList<>();
        for (int i = 1; i < NODES; i++) {
            members.add(FrameMember.of("m" + i, "n" + (i - 1), "n" + i, section(random), turn.apply(new Vec3(0.1, 0.3, 1)))
                    .withDensity(7850));
        }
        members.add(FrameMember.of("brace", "n0", "n3", section(random), turn.apply(new Vec3(0.1, 0.3, 1)))
                .withRigidEnds(turn.apply(vector(random, 0.05)), turn.apply(vector(random, 0.05))).releasedNear(Dof.RY, Dof.RZ));
        members.add(FrameMember.of("tie", "n2", "n5", section(random), turn.apply(new Vec3(0.1, 0.3, 1))).releasedFar(Dof.RX));
        return members;
    }

    static LoadCase loads(FrameModel model, Random random, UnaryOperator<Vec3> turn) {
        LoadCase.Builder loads = LoadCase.on(model);
        for (int i = 0; i < NODES; i++) {
            loads.action(FramePoint.node("n" + i, turn.apply(vector(random, 0.1))),
                    new ForceMoment(turn.apply(vector(random, 1000)), turn.apply(vector(random, 100))));
        }
        loads.uniform("m2", turn.apply(vector(random, 500)), LoadAxes.GLOBAL);
        loads.uniform("brace", 0.2, 0.7, new ForceMoment(vector(random, 500), vector(random, 50)), LoadAxes.MEMBER);
        loads.action(FramePoint.member("tie", 0.3, turn.apply(vector(random, 0.1))),
                new ForceMoment(turn.apply(vector(random, 500)), turn.apply(vector(random, 50))));
        return loads.build();
    }

    /** The loads, made to balance by a force and a couple at one node. */
    static LoadCase balanced(LoadCase loads, String node) {
        ForceMoment rest = loads.resultant();
        Vec3 place = loads.model().node(node).position();
        ForceMoment at = rest.seenFrom(place.times(-1)).times(-1);
        return loads.plus(LoadCase.on(loads.model()).action(FramePoint.node(node), at).build());
    }
}
