package cradlewright.mechanics.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.verify.CheckValues;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Members that twist about a shear centre beside their centroid. */
class ShearCentreTest {

    private static final CheckValues VALUES = CheckValues.load("frame");
    private static final double LENGTH = 1.2;
    private static final MemberSection AT_CENTROID = new MemberSection(2.1e11, 8.1e10, 7.68e-4, 118.016e-8, 18.4832e-8, 4096e-12,
            3.84e-4, 2.5e-4);

    private static FrameModel.Builder beam(MemberSection section) {
        return FrameModel.builder().node("a", Vec3.ZERO).node("b", new Vec3(LENGTH, 0, 0))
                .member(FrameMember.of("m", "a", "b", section, Vec3.UP));
    }

    private static FrameResult solve(LoadCase loads) {
        return FrameStructure.supported(loads.model()).solve(loads);
    }

    @Test
    void aLoadOverTheCentroidTwistsAChannel() {
        MemberSection channel = MemberSection.withoutShear(2.1e11, 8.1e10, 7.68e-4, 118.016e-8, 18.4832e-8, 4096e-12)
                .withShearCentre(-0.030, 0);
        FrameModel model = beam(channel).fix("a", Dof.UX, Dof.UY, Dof.UZ, Dof.RX, Dof.RZ).fix("b", Dof.UY, Dof.UZ, Dof.RX, Dof.RZ).build();
        FrameResult result = solve(LoadCase.on(model).point("m", LENGTH / 2, new ForceMoment(new Vec3(0, 0, -1000), Vec3.ZERO),
                LoadAxes.GLOBAL).build());
        VALUES.check("shear-centre.torque", Math.abs(result.forces("m", 0, CutSide.AFTER).t()));
        assertEquals(0, result.forces("m", 0, CutSide.AFTER).t() + result.forces("m", LENGTH, CutSide.BEFORE).t(), 1e-9);
        Motion middle = result.motion("m", LENGTH / 2);
        VALUES.check("shear-centre.twist", Math.abs(middle.rotation().x()));
        VALUES.check("shear-centre.sag", -1e3 * middle.translation().z());
    }

    /** Second route: the member line drawn through the shear centre, loads and what is looked at on arms from there. */
    @Test
    void sameAsALineThroughTheShearCentre() {
        Random random = new Random(20);
        for (int i = 0; i < 20; i++) {
            Vec3 offset = new Vec3(0, random.nextDouble(-0.05, 0.05), random.nextDouble(-0.05, 0.05));
            Vec3 back = offset.times(-1);
            Vec3 tip = new Vec3(0, random.nextDouble(-1e3, 1e3), random.nextDouble(-1e3, 1e3));
            Vec3 turn = new Vec3(random.nextDouble(-50, 50), random.nextDouble(-50, 50), random.nextDouble(-50, 50));
            Vec3 span = new Vec3(0, random.nextDouble(-1e3, 1e3), random.nextDouble(-1e3, 1e3));
            double at = random.nextDouble(0.1, 1.1);
            FrameModel centroid = beam(AT_CENTROID.withShearCentre(offset.y(), offset.z())).fixAll("a").build();
            FrameModel shear = beam(AT_CENTROID).fixAll("a").build();
            FrameResult one = solve(LoadCase.on(centroid).force(FramePoint.node("b"), tip).point("m", at, new ForceMoment(span, turn),
                    LoadAxes.GLOBAL).uniform("m", span, LoadAxes.GLOBAL).build());
            FrameResult other = solve(LoadCase.on(shear).force(FramePoint.node("b", back), tip)
                    .point("m", at, new ForceMoment(span, turn.plus(back.cross(span))), LoadAxes.GLOBAL)
                    .uniform("m", 0, LENGTH, new ForceMoment(span, back.cross(span)), LoadAxes.GLOBAL).build());
            for (double x : new double[] {0, 0.37, LENGTH}) {
                InternalForces f = one.forces("m", x, x == 0 ? CutSide.AFTER : CutSide.BEFORE);
                InternalForces g = other.forces("m", x, x == 0 ? CutSide.AFTER : CutSide.BEFORE);
                assertEquals(g.t(), f.t(), 1e-8);
                assertEquals(g.my(), f.my(), 1e-8);
                assertEquals(g.mz(), f.mz(), 1e-8);
                Motion moved = other.motion("m", x);
                Vec3 twist = new Vec3(moved.rotation().x(), 0, 0);
                assertEquals(0, one.motion("m", x).translation().minus(moved.translation().plus(twist.cross(back))).norm(), 1e-10);
                assertEquals(0, one.motion("m", x).rotation().minus(moved.rotation()).norm(), 1e-10);
            }
        }
    }
}
