package cradlewright.mechanics.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;

import cradlewright.mechanics.castor.Range;
import cradlewright.mechanics.castor.Rolling;
import cradlewright.mechanics.contact.SupportRank;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.frame.CutSide;
import cradlewright.mechanics.frame.Dof;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.frame.FrameMember;
import cradlewright.mechanics.frame.FrameModel;
import cradlewright.mechanics.frame.FrameResult;
import cradlewright.mechanics.frame.FrameStructure;
import cradlewright.mechanics.frame.LoadAxes;
import cradlewright.mechanics.frame.LoadCase;
import cradlewright.mechanics.frame.MemberSection;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.lifting.SlingLegs;
import cradlewright.mechanics.mass.MassUncertainty;
import cradlewright.mechanics.tipping.FloorSlope;
import cradlewright.mechanics.tipping.SupportEdge;
import cradlewright.mechanics.tipping.SupportPolygon;
import cradlewright.mechanics.tipping.TipMargin;

/** Another route to formulas whose family has only published values or closed forms. */
class SecondRoutesTest {

    private static final MemberSection BEAM = MemberSection.withoutShear(2.1e11, 8.1e10, 5.4e-4, 2.54e-7, 1.34e-7, 2.93e-7);

    private static Vec3 random(Random random, double size) {
        return new Vec3(random.nextDouble(-size, size), random.nextDouble(-size, size), random.nextDouble(-size, size));
    }

    /** Both balances of a load on a slope in level and upright axes, solved for push and floor force. */
    @Test
    void pushOnASlopeByTwoBalances() {
        for (double slope : new double[] {0, 0.02, 0.06, 0.2}) {
            for (double c : new double[] {0.01, 0.03}) {
                // push F along (cos, sin), floor force N along (-sin, cos), rolling resistance c N against the push
                double cos = Math.cos(slope);
                double sin = Math.sin(slope);
                double levelN = -sin - c * cos;
                double uprightN = cos - c * sin;
                double push = -8000 * levelN / (cos * uprightN - sin * levelN);
                assertEquals(push, Rolling.upSlope(8000, slope, new Range(c, c)).low(), 1e-9 * 8000);
                assertEquals(push, Rolling.upSlope(8000, slope, new Range(0, c)).high(), 1e-9 * 8000);
            }
        }
    }

    /** Rank by singular values, margin by half planes through all pairs; points of a grid make lines and doubles frequent. */
    @Test
    void supportsByRankAndHalfPlanes() {
        Random random = new Random(20260201);
        int held = 0;
        for (int trial = 0; trial < 2000; trial++) {
            List<Vec3> supports = new ArrayList<>();
            int count = 3 + random.nextInt(5);
            double[][] rows = new double[count][];
            for (int i = 0; i < count; i++) {
                supports.add(new Vec3(random.nextInt(4), random.nextInt(3), 0));
                rows[i] = new double[] {1, supports.get(i).x(), supports.get(i).y()};
            }
            Vec3 balance = new Vec3(random.nextDouble(-1, 4), random.nextDouble(-1, 3), 0);
            SupportRank found = SupportRank.of(supports, balance);
            boolean full = new SingularValueDecomposition(MatrixUtils.createRealMatrix(rows)).getRank() == 3;
            assertEquals(full, found.hold() == SupportRank.Hold.HELD, "trial " + trial + " " + supports);
            if (full) {
                held++;
                assertEquals(marginByHalfPlanes(supports, balance), found.margin(), 1e-12, "trial " + trial);
            }
        }
        assertTrue(held > 100 && held < 1900, "held and not held must both have been met: " + held);
    }

    private static double marginByHalfPlanes(List<Vec3> supports, Vec3 point) {
        double least = Double.POSITIVE_INFINITY;
        for (Vec3 a : supports) {
            for (Vec3 b : supports) {
                if (!a.equals(b)) {
                    Vec3 inward = Vec3.UP.cross(b.minus(a).unit());
                    if (supports.stream().allMatch(s -> s.minus(a).dot(inward) >= -1e-12)) {
                        least = Math.min(least, point.minus(a).dot(inward));
                    }
                }
            }
        }
        return least;
    }

    private static FrameModel heldAtB(FrameMember member, Set<Dof> held) {
        return FrameModel.builder().node("a", Vec3.ZERO).node("b", new Vec3(1.7, 0, 0)).member(member).fixAll("a")
                .fix("b", held.toArray(Dof[]::new)).build();
    }

    /** A hinge at a node that is held is the same as a stiff end on a node that is free to turn. */
    @Test
    void hingesAsFreeNodes() {
        Random random = new Random(20260202);
        List<Dof> turns = List.of(Dof.RX, Dof.RY, Dof.RZ);
        for (int bits = 1; bits < 8; bits++) {
            Set<Dof> free = EnumSet.noneOf(Dof.class);
            for (int i = 0; i < 3; i++) {
                if ((bits >> i & 1) != 0) {
                    free.add(turns.get(i));
                }
            }
            FrameMember stiff = FrameMember.of("m", "a", "b", BEAM, Vec3.UP);
            FrameMember hinged = stiff.releasedFar(free.toArray(Dof[]::new));
            Set<Dof> held = EnumSet.allOf(Dof.class);
            held.removeAll(free);
            ForceMoment at = new ForceMoment(random(random, 900), random(random, 90));
            ForceMoment spread = new ForceMoment(random(random, 900), random(random, 90));
            FrameResult[] both = new FrameResult[2];
            for (int k = 0; k < 2; k++) {
                FrameModel model = k == 0 ? heldAtB(hinged, EnumSet.allOf(Dof.class)) : heldAtB(stiff, held);
                both[k] = FrameStructure.supported(model).solve(LoadCase.on(model).point("m", 0.6, at, LoadAxes.GLOBAL)
                        .uniform("m", 0.2, 1.5, spread, LoadAxes.GLOBAL).build());
            }
            for (String node : List.of("a", "b")) {
                ForceMoment rest = both[0].reaction(node).plus(both[1].reaction(node).times(-1));
                assertEquals(0, rest.force().norm(), 1e-6, free.toString());
                assertEquals(0, rest.moment().norm(), 1e-6, free.toString());
            }
            assertEquals(both[1].forces("m", 0.9, CutSide.AFTER).my(), both[0].forces("m", 0.9, CutSide.AFTER).my(), 1e-6);
            assertEquals(0, both[0].motion("m", 1.7).rotation().minus(both[1].motion("b").rotation()).norm(), 1e-9);
        }
    }

    /** The weight of a sloping arm as five hundred small forces. */
    @Test
    void ownWeightAsManySmallForces() {
        FrameModel model = FrameModel.builder().node("a", Vec3.ZERO).node("b", new Vec3(0.4, 1.2, 0.9))
                .member(FrameMember.of("m", "a", "b", BEAM, Vec3.UP).withDensity(7850)).fixAll("a").build();
        double length = model.axes("m").length();
        int pieces = 500;
        double piece = 7850 * 5.4e-4 * length / pieces * Constants.GRAVITY;
        LoadCase.Builder small = LoadCase.on(model);
        for (int i = 0; i < pieces; i++) {
            small.point("m", length * (i + 0.5) / pieces, new ForceMoment(new Vec3(0, 0, -piece), Vec3.ZERO), LoadAxes.GLOBAL);
        }
        FrameResult sum = FrameStructure.supported(model).solve(small.build());
        FrameResult own = FrameStructure.supported(model).solve(LoadCase.on(model).selfWeight().build());
        double sag = -sum.motion("b").translation().z();
        assertEquals(0, own.motion("b").translation().minus(sum.motion("b").translation()).norm(), 1e-5 * sag);
        assertEquals(0, own.reaction("a").moment().minus(sum.reaction("a").moment()).norm(), 1e-6);
    }

    /** The hook in balance: legs evenly round a circle, summed as vectors. */
    @Test
    void equalLegsByTheBalanceOfTheHook() {
        for (int legs = 2; legs <= 4; legs++) {
            for (double beta : new double[] {0, 0.3, Math.PI / 4, 1}) {
                Vec3 hook = Vec3.UP.times(2);
                Vec3 sum = Vec3.ZERO;
                for (int i = 0; i < legs; i++) {
                    double turn = 2 * Math.PI * i / legs;
                    Vec3 point = new Vec3(Math.cos(turn), Math.sin(turn), 0).times(2 * Math.tan(beta));
                    sum = sum.plus(point.minus(hook).unit().times(SlingLegs.equal(900, legs, beta)));
                }
                assertEquals(0, sum.plus(Vec3.UP.times(900)).norm(), 1e-9, legs + " legs at " + beta);
            }
        }
    }

    @Test
    void rectangularLimitsByDraws() {
        Random random = new Random(20260203);
        int draws = 400_000;
        double squares = 0;
        for (int i = 0; i < draws; i++) {
            double error = random.nextDouble(-3, 3);
            squares += error * error / draws;
        }
        assertEquals(Math.sqrt(squares), MassUncertainty.ofLimits(3), 0.005 * Math.sqrt(squares));
    }

    /** Gravity as a vector in axes of a floor that falls any way: where its line meets the floor, and turned until it tips. */
    @Test
    void slopesByTheLineOfGravity() {
        Random random = new Random(20260204);
        for (int trial = 0; trial < 300; trial++) {
            SupportPolygon polygon = SupportPolygon.of(List.of(new Vec3(-0.9, -0.5, 0), new Vec3(-0.8, 0.5, 0),
                    new Vec3(0.8, 0.4, 0), new Vec3(0.9, -0.6, 0)));
            Vec3 balance = new Vec3(random.nextDouble(-0.7, 0.7), random.nextDouble(-0.35, 0.35), random.nextDouble(0.4, 1.3));
            double way = random.nextDouble(0, 2 * Math.PI);
            double angle = random.nextDouble(0, 0.12);
            FloorSlope slope = new FloorSlope(new Vec3(Math.cos(way), Math.sin(way), 0), angle);
            Vec3 gravity = slope.downhill().times(Math.sin(angle)).minus(Vec3.UP.times(Math.cos(angle)));
            for (TipMargin margin : TipMargin.all(polygon, balance, slope)) {
                SupportEdge edge = margin.edge();
                assertEquals(inside(edge, balance, gravity), margin.distance(), 1e-12, "trial " + trial);
                double low = -1.5;
                double high = 1.5;
                for (int i = 0; i < 60; i++) {
                    double middle = (low + high) / 2;
                    Vec3 turned = turned(gravity, edge.outward(), middle);
                    if (turned.z() < 0 && inside(edge, balance, turned) > 0 || turned.z() >= 0 && middle < 0) {
                        low = middle;
                    } else {
                        high = middle;
                    }
                }
                assertEquals(low, margin.tipAngle(), 1e-9, "trial " + trial);
                // weight without its part along the edge, and its angle to the line from the balance point to the edge
                Vec3 along = Vec3.UP.cross(edge.outward());
                Vec3 across = gravity.minus(along.times(gravity.dot(along)));
                Vec3 toEdge = edge.start().minus(balance);
                toEdge = toEdge.minus(along.times(toEdge.dot(along)));
                double sense = Math.signum(edge.outward().cross(Vec3.UP).dot(along));
                double between = Math.atan2(sense * across.cross(toEdge).dot(along), across.dot(toEdge));
                assertEquals(5000 * across.norm() * between, margin.forceAngle(5000, slope), 1e-8 * 5000, "trial " + trial);
            }
        }
    }

    private static double inside(SupportEdge edge, Vec3 balance, Vec3 gravity) {
        Vec3 foot = balance.plus(gravity.times(-balance.z() / gravity.z()));
        return edge.start().minus(foot).dot(edge.outward());
    }

    /** Turns gravity outward over the edge. */
    private static Vec3 turned(Vec3 gravity, Vec3 outward, double angle) {
        double out = gravity.dot(outward);
        double down = -gravity.z();
        Vec3 along = gravity.minus(outward.times(out)).minus(Vec3.UP.times(-down));
        double sin = Math.sin(angle);
        double cos = Math.cos(angle);
        return along.plus(outward.times(out * cos + down * sin)).minus(Vec3.UP.times(down * cos - out * sin));
    }
}
