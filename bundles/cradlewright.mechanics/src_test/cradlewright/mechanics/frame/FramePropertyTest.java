package cradlewright.mechanics.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.UnaryOperator;

import cradlewright.mechanics.geometry.Vec3;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** What must hold for every frame, whatever its shape. */
class FramePropertyTest {

    private static final UnaryOperator<Vec3> AS_IT_IS = v -> v;

    @Property(seed = "61", tries = 50)
    void stiffnessIsSymmetricAndSixRigidMotionsCostNothing(@ForAll @LongRange(min = 0, max = 99999) long seed) {
        Random random = new Random(seed);
        double length = 0.1 + 2 * random.nextDouble();
        double[][] k = BeamElement.stiffness(RandomFrames.section(random), length);
        double largest = 0;
        for (double[] row : k) {
            for (double value : row) {
                largest = Math.max(largest, Math.abs(value));
            }
        }
        for (int i = 0; i < 12; i++) {
            for (int j = 0; j < 12; j++) {
                assertEquals(k[i][j], k[j][i], 0);
            }
        }
        for (Dof dof : Dof.values()) {
            double[] motion = rigid(dof, length);
            for (double force : Vectors.times(k, motion)) {
                assertEquals(0, force, 1e-12 * largest, dof.toString());
            }
        }
    }

    private static double[] rigid(Dof dof, double length) {
        double[] six = new double[6];
        six[dof.ordinal()] = 1;
        Motion near = new Motion(Vectors.vector(six, 0), Vectors.vector(six, 3));
        Motion far = near.at(new Vec3(length, 0, 0));
        double[] all = new double[12];
        for (Dof each : Dof.values()) {
            all[each.ordinal()] = near.component(each);
            all[6 + each.ordinal()] = far.component(each);
        }
        return all;
    }

    /**
     * Independent route: give of the cantilever by the virtual work of unit loads, integrated numerically (Gauss, two
     * points are exact for moments of first degree); the block of the far end must be its inverse.
     */
    @Property(seed = "62", tries = 50)
    void stiffnessIsTheInverseOfTheGiveFoundByVirtualWork(@ForAll @LongRange(min = 0, max = 99999) long seed) {
        Random random = new Random(seed);
        MemberSection s = RandomFrames.section(random);
        double length = 0.1 + 2 * random.nextDouble();
        double[][] give = new double[6][6];
        for (double point : new double[] {-1 / Math.sqrt(3), 1 / Math.sqrt(3)}) {
            double lever = length * (1 - point) / 2;
            for (int i = 0; i < 6; i++) {
                for (int j = 0; j < 6; j++) {
                    double[] a = cut(i, lever);
                    double[] b = cut(j, lever);
                    double work = a[0] * b[0] / (s.e() * s.area()) + a[1] * b[1] / (s.g() * s.shearAreaY())
                            + a[2] * b[2] / (s.g() * s.shearAreaZ()) + a[3] * b[3] / (s.g() * s.j())
                            + a[4] * b[4] / (s.e() * s.iy()) + a[5] * b[5] / (s.e() * s.iz());
                    give[i][j] += length / 2 * work;
                }
            }
        }
        double[][] k = BeamElement.stiffness(s, length);
        for (int i = 0; i < 6; i++) {
            for (int j = 0; j < 6; j++) {
                double sum = 0;
                for (int m = 0; m < 6; m++) {
                    sum += k[6 + i][6 + m] * give[m][j];
                }
                assertEquals(i == j ? 1 : 0, sum, 1e-8, i + " " + j);
            }
        }
    }

    /** Force and moment at a cut, the lever away from the free end, of a unit action there: M + r x F with r along x. */
    private static double[] cut(int action, double lever) {
        double[] six = new double[6];
        six[action] = 1;
        Vec3 force = Vectors.vector(six, 0);
        Vec3 moment = Vectors.vector(six, 3).plus(new Vec3(lever, 0, 0).cross(force));
        return new double[] {force.x(), force.y(), force.z(), moment.x(), moment.y(), moment.z()};
    }

    @Property(seed = "63", tries = 40)
    void wholeNodesAndMembersBalance(@ForAll @LongRange(min = 0, max = 99999) long seed) {
        Random random = new Random(seed);
        FrameModel model = RandomFrames.frame(random, AS_IT_IS).fixAll("n0").fix("n4", Dof.UZ)
                .spring("n5", Dof.UY, 1e5).build();
        LoadCase loads = RandomFrames.loads(model, random, AS_IT_IS).plus(LoadCase.on(model).selfWeight().build());
        FrameResult result = FrameStructure.supported(model).solve(loads);
        ForceMoment sum = loads.resultant();
        for (String node : new String[] {"n0", "n4", "n5"}) {
            sum = sum.plus(result.reaction(node).seenFrom(model.node(node).position()));
        }
        assertEquals(0, sum.force().norm(), 1e-6);
        assertEquals(0, sum.moment().norm(), 1e-6);
        assertEquals(-1e5 * result.motion("n5").translation().y(), result.reaction("n5").force().y(), 1e-6);
        assertEquals(0, result.reaction("n2").force().norm(), 0);
        for (FrameMember member : model.members()) {
            double length = model.axes(member.name()).length();
            ForceMoment far = result.farEnd(member.name());
            InternalForces cut = result.forces(member.name(), length);
            assertClose(far.force(), new Vec3(cut.n(), cut.vy(), cut.vz()), 1e-5);
            assertClose(far.moment(), new Vec3(cut.t(), cut.my(), cut.mz()), 1e-5);
            Motion end = result.motion(FramePoint.node(member.to(), member.rigidTo()));
            assertClose(end.translation(), result.motion(member.name(), length).translation(), 1e-9);
        }
        assertEquals(0, result.nearEnd("brace").moment().y(), 1e-6, "released");
        assertEquals(0, result.nearEnd("brace").moment().z(), 1e-6, "released");
        assertEquals(0, result.farEnd("tie").moment().x(), 1e-6, "released");
    }

    @Property(seed = "64", tries = 40)
    void turningTheWholeFrameTurnsTheAnswer(@ForAll @LongRange(min = 0, max = 99999) long seed) {
        Random way = new Random(seed + 1);
        Vec3 x = RandomFrames.vector(way, 1).unit();
        Vec3 y = x.cross(RandomFrames.vector(way, 1)).unit();
        Vec3 z = x.cross(y);
        UnaryOperator<Vec3> turn = v -> x.times(v.x()).plus(y.times(v.y())).plus(z.times(v.z()));
        FrameResult straight = fixedAtOneNode(seed, AS_IT_IS);
        FrameResult turned = fixedAtOneNode(seed, turn);
        for (int i = 0; i < RandomFrames.NODES; i++) {
            assertClose(turn.apply(straight.motion("n" + i).translation()), turned.motion("n" + i).translation(), 1e-8);
            assertClose(turn.apply(straight.motion("n" + i).rotation()), turned.motion("n" + i).rotation(), 1e-8);
        }
        for (String member : new String[] {"m1", "m4", "brace", "tie"}) {
            assertClose(straight.forces(member, 0.2), turned.forces(member, 0.2), 1e-4);
        }
    }

    private static FrameResult fixedAtOneNode(long seed, UnaryOperator<Vec3> turn) {
        Random random = new Random(seed);
        FrameModel model = RandomFrames.frame(random, turn).fixAll("n1").build();
        return FrameStructure.supported(model).solve(RandomFrames.loads(model, random, turn));
    }

    @Property(seed = "65", tries = 40)
    void aNodePutIntoAMemberChangesNothing(@ForAll @LongRange(min = 0, max = 99999) long seed,
            @ForAll @IntRange(min = 1, max = 9) int tenths) {
        Random random = new Random(seed);
        MemberSection section = RandomFrames.section(random);
        Vec3 end = new Vec3(1, 0.4, 0.3).plus(RandomFrames.vector(random, 0.2));
        Vec3 turn = new Vec3(0, 0.3, 1);
        FrameModel whole = FrameModel.builder().node("a", Vec3.ZERO).node("b", end)
                .member(FrameMember.of("m", "a", "b", section, turn)).fixAll("a").fix("b", Dof.UX, Dof.UZ).build();
        double length = whole.axes("m").length();
        double cut = length * tenths / 10;
        FrameModel split = FrameModel.builder().node("a", Vec3.ZERO).node("c", end.times(tenths / 10.0)).node("b", end)
                .member(FrameMember.of("near", "a", "c", section, turn)).member(FrameMember.of("far", "c", "b", section, turn))
                .fixAll("a").fix("b", Dof.UX, Dof.UZ).build();
        ForceMoment spread = new ForceMoment(RandomFrames.vector(random, 900), RandomFrames.vector(random, 90));
        ForceMoment at = new ForceMoment(RandomFrames.vector(random, 900), RandomFrames.vector(random, 90));
        FrameResult one = FrameStructure.supported(whole).solve(LoadCase.on(whole)
                .uniform("m", 0, length, spread, LoadAxes.MEMBER).point("m", cut, at, LoadAxes.GLOBAL).build());
        FrameResult two = FrameStructure.supported(split).solve(LoadCase.on(split)
                .uniform("near", 0, cut, spread, LoadAxes.MEMBER)
                .uniform("far", 0, length - cut, spread, LoadAxes.MEMBER).action(FramePoint.node("c"), at).build());
        assertClose(two.motion("c").translation(), one.motion("m", cut).translation(), 1e-9);
        assertClose(two.motion("c").rotation(), one.motion("m", cut).rotation(), 1e-9);
        assertClose(two.motion("b").translation(), one.motion("b").translation(), 1e-9);
        assertClose(two.forces("near", cut), one.forces("m", cut, CutSide.BEFORE), 1e-5);
        assertClose(two.forces("far", 0, CutSide.AFTER), one.forces("m", cut, CutSide.AFTER), 1e-5);
        assertClose(two.motion("near", cut / 2).translation(), one.motion("m", cut / 2).translation(), 1e-9);
        assertClose(two.motion("far", (length - cut) / 3).translation(), one.motion("m", cut + (length - cut) / 3).translation(),
                1e-9);
        ForceMoment sum = one.loads().resultant();
        assertClose(sum.force(), two.loads().resultant().force(), 1e-8);
        assertClose(sum.moment(), two.loads().resultant().moment(), 1e-8);
    }

    @Property(seed = "66", tries = 40)
    void theClampOfAFreeBodyDoesNotMatter(@ForAll @LongRange(min = 0, max = 99999) long seed,
            @ForAll @IntRange(min = 0, max = RandomFrames.NODES - 1) int other) {
        Random random = new Random(seed);
        FrameModel model = RandomFrames.frame(random, AS_IT_IS).build();
        LoadCase loads = RandomFrames.balanced(RandomFrames.loads(model, random, AS_IT_IS), "n3");
        FrameStructure structure = FrameStructure.freeBody(model);
        FrameResult a = structure.solve(loads);
        FrameResult b = FrameStructure.freeBody(model, "n" + other).solve(loads);
        assertEquals(0, a.reaction(structure.clampNode()).force().norm(), 1e-6);
        assertEquals(0, a.reaction(structure.clampNode()).moment().norm(), 1e-6);
        for (FrameMember member : model.members()) {
            assertClose(a.forces(member.name(), 0.1), b.forces(member.name(), 0.1), 1e-4);
        }
        double stretchA = a.motion("n5").translation().minus(a.motion("n0").translation())
                .dot(model.node("n5").position().minus(model.node("n0").position()));
        double stretchB = b.motion("n5").translation().minus(b.motion("n0").translation())
                .dot(model.node("n5").position().minus(model.node("n0").position()));
        assertEquals(stretchA, stretchB, 1e-9, "distances change alike");
    }

    @Property(seed = "67", tries = 40)
    void noCutBetweenTheCriticalStationsIsWorse(@ForAll @LongRange(min = 0, max = 99999) long seed) {
        Random random = new Random(seed);
        FrameModel model = RandomFrames.frame(random, AS_IT_IS).fixAll("n0").build();
        FrameResult result = FrameStructure.supported(model).solve(RandomFrames.loads(model, random, AS_IT_IS));
        for (String member : new String[] {"m2", "brace", "tie"}) {
            double length = model.axes(member).length();
            double[] most = new double[6];
            for (StationForces station : result.criticalStations(member)) {
                widen(most, station.forces());
            }
            for (int i = 0; i <= 200; i++) {
                double[] here = new double[6];
                widen(here, result.forces(member, length * i / 200));
                for (int c = 0; c < 6; c++) {
                    assertTrue(here[c] <= most[c] + 1e-6, member + " at " + i + "/200: " + here[c] + " above " + most[c]);
                }
            }
        }
    }

    private static void widen(double[] most, InternalForces f) {
        double[] six = {f.n(), f.vy(), f.vz(), f.t(), f.my(), f.mz()};
        for (int i = 0; i < 6; i++) {
            most[i] = Math.max(most[i], Math.abs(six[i]));
        }
    }

    private static void assertClose(Vec3 wanted, Vec3 found, double tolerance) {
        assertEquals(0, wanted.minus(found).norm(), tolerance * Math.max(1, wanted.norm()), wanted + " " + found);
    }

    private static void assertClose(InternalForces wanted, InternalForces found, double tolerance) {
        assertClose(new Vec3(wanted.n(), wanted.vy(), wanted.vz()), new Vec3(found.n(), found.vy(), found.vz()), tolerance);
        assertClose(new Vec3(wanted.t(), wanted.my(), wanted.mz()), new Vec3(found.t(), found.my(), found.mz()), tolerance);
    }
}
