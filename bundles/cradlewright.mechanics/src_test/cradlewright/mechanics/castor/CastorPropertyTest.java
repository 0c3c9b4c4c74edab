package cradlewright.mechanics.castor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.tipping.SupportPolygon;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

class CastorPropertyTest {

    private static final double W = 7000;

    private static List<Vec3> castors(Random random, int count) {
        List<Vec3> castors = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            castors.add(new Vec3(random.nextDouble(-2, 2), random.nextDouble(-0.8, 0.8), 0));
        }
        return castors;
    }

    private static Vec3 inside(Random random, List<Vec3> castors) {
        Vec3 sum = Vec3.ZERO;
        double weights = 0;
        for (Vec3 castor : castors) {
            double weight = random.nextDouble(0.05, 1);
            sum = sum.plus(castor.times(weight));
            weights += weight;
        }
        return sum.times(1 / weights);
    }

    @Property(seed = "5101", tries = 200)
    void everyStateBalances(@ForAll long seed, @ForAll @IntRange(min = 3, max = 8) int count) {
        Random random = new Random(seed);
        List<Vec3> castors = castors(random, count);
        Vec3 balance = inside(random, castors);
        CastorStates states = CastorStates.of(castors, balance, W);
        assertTrue(states.stands());
        for (CastorStates.State state : states.states()) {
            double sum = 0;
            Vec3 moment = Vec3.ZERO;
            for (int i = 0; i < count; i++) {
                assertTrue(state.loads().get(i) >= 0);
                sum += state.loads().get(i);
                moment = moment.plus(castors.get(i).minus(balance).times(state.loads().get(i)));
            }
            assertEquals(W, sum, 1e-9 * W);
            assertEquals(0, moment.norm(), 1e-8 * W);
        }
    }

    /** Any loads that balance, here random mixtures of random positive loads, stay between the bounds of the states. */
    @Property(seed = "5102", tries = 200)
    void noBalancedLoadsExceedTheWorstState(@ForAll long seed, @ForAll @IntRange(min = 3, max = 8) int count) {
        Random random = new Random(seed);
        List<Vec3> castors = castors(random, count);
        double[] loads = random.doubles(count, 0, 1).map(v -> v * v * v).toArray();
        double sum = 0;
        Vec3 balance = Vec3.ZERO;
        for (int i = 0; i < count; i++) {
            sum += loads[i];
            balance = balance.plus(castors.get(i).times(loads[i]));
        }
        CastorStates states = CastorStates.of(castors, balance.times(1 / sum), W);
        for (int i = 0; i < count; i++) {
            double load = loads[i] / sum * W;
            assertTrue(load <= states.worst(i) + 1e-6 * W && load >= states.least(i) - 1e-6 * W);
        }
    }

    /** The elastic loads of four castors (a stationary point of the energy found without the class under test) stay below. */
    @Property(seed = "5103", tries = 100)
    void worstStateIsNeverBelowTheElasticLoads(@ForAll @Scale(4) @DoubleRange(min = -0.3, max = 0.3) double x,
            @ForAll @Scale(4) @DoubleRange(min = -0.15, max = 0.15) double y,
            @ForAll @Scale(4) @DoubleRange(min = -0.002, max = 0.002) double low) {
        List<Vec3> castors = List.of(new Vec3(-0.8, -0.4, 0), new Vec3(-0.8, 0.4, 0), new Vec3(0.8, 0.4, 0),
                new Vec3(0.8, -0.4, 0));
        double stiffness = 1e6;
        double[] elastic = new double[4];
        for (int i = 0; i < 4; i++) {
            double shares = 0.25 + castors.get(i).x() * x / 2.56 + castors.get(i).y() * y / 0.64;
            elastic[i] = W * shares + (i % 2 == 0 ? -1 : 1) * stiffness * low / 4;
        }
        CastorStates states = CastorStates.of(castors, new Vec3(x, y, 0), W);
        FloorWarp warp = FloorWarp.of(castors, new Vec3(x, y, 0), W, List.of(stiffness, stiffness, stiffness, stiffness), 0);
        boolean touching = true;
        for (double load : elastic) {
            touching &= load >= 0;
        }
        for (int i = 0; i < 4; i++) {
            assertEquals(elastic[i], warp.load(i, 0, low), 1e-8 * W);
            assertTrue(!touching || elastic[i] <= states.worst(i) + 1e-9 * W);
        }
    }

    @Property(seed = "5104", tries = 100)
    void mirrorShiftAndScale(@ForAll long seed, @ForAll @IntRange(min = 3, max = 8) int count) {
        Random random = new Random(seed);
        List<Vec3> castors = castors(random, count);
        Vec3 balance = inside(random, castors);
        Vec3 shift = new Vec3(random.nextDouble(-5, 5), random.nextDouble(-5, 5), 0);
        CastorStates states = CastorStates.of(castors, balance, W);
        CastorStates mirrored = CastorStates.of(castors.stream().map(CastorPropertyTest::mirror).toList(), mirror(balance), W);
        CastorStates shifted = CastorStates.of(castors.stream().map(shift::plus).toList(), balance.plus(shift), W);
        CastorStates heavier = CastorStates.of(castors, balance, 3 * W);
        for (int i = 0; i < count; i++) {
            assertEquals(states.worst(i), mirrored.worst(i), 1e-7 * W);
            assertEquals(states.worst(i), shifted.worst(i), 1e-7 * W);
            assertEquals(3 * states.worst(i), heavier.worst(i), 1e-7 * W);
        }
    }

    private static Vec3 mirror(Vec3 point) {
        return new Vec3(point.x(), -point.y(), point.z());
    }

    /** Equal leads: hull margin less the lead; and no random position of the swivels is worse than the answer. */
    @Property(seed = "5105", tries = 100)
    void swivelsInRandomPositionsAreNeverWorse(@ForAll long seed, @ForAll @IntRange(min = 4, max = 7) int count) {
        Random random = new Random(seed);
        List<Vec3> axes = castors(random, count);
        Vec3 balance = inside(random, axes);
        double lead = random.nextDouble(0, 0.06);
        List<SwivelLead.Castor> same = axes.stream().map(axis -> new SwivelLead.Castor(axis, lead)).toList();
        SwivelLead.WorstTilt equal = SwivelLead.worst(same, balance);
        assertEquals(SupportPolygon.of(axes).margin(balance) - lead, equal.margin(), 1e-9);
        List<SwivelLead.Castor> mixed = new ArrayList<>();
        for (Vec3 axis : axes) {
            mixed.add(new SwivelLead.Castor(axis, random.nextDouble(0, 0.06)));
        }
        double worst = SwivelLead.worst(mixed, balance).margin();
        for (int n = 0; n < 50; n++) {
            List<Vec3> contacts = mixed.stream().map(castor -> {
                double angle = random.nextDouble(0, 2 * Math.PI);
                return castor.axis().plus(new Vec3(Math.cos(angle), Math.sin(angle), 0).times(castor.lead()));
            }).toList();
            assertTrue(SupportPolygon.of(contacts).margin(balance) >= worst - 1e-12);
        }
        Vec3 tilt = SwivelLead.worst(mixed, balance).direction();
        List<Vec3> back = mixed.stream().map(castor -> castor.axis().minus(tilt.times(castor.lead()))).toList();
        assertEquals(worst, SupportPolygon.of(back).margin(balance), 1e-9, "the worst position exists");
    }

    /** The forces found satisfy balance of forces and moments, and the contact force points through the axle. */
    @Property(seed = "5106", tries = 200)
    void climbingForceBalances(@ForAll @Scale(4) @DoubleRange(min = 0.2, max = 0.8) double share,
            @ForAll @Scale(4) @DoubleRange(min = 0.8, max = 2.5) double base,
            @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 0.6) double stepOfRadius,
            @ForAll @Scale(4) @DoubleRange(min = 0.03, max = 1.3) double height) {
        double radius = 0.08;
        double step = stepOfRadius * radius;
        StepClimb climb = StepClimb.of(share * W, (1 - share) * W, base, radius, step, height);
        double angle = Math.acos((radius - step) / radius);
        assertEquals(Math.tan(angle), climb.kappa(), 1e-9 * climb.kappa());
        if (Double.isFinite(climb.climbForce())) {
            double blocked = climb.climbForce() / Math.tan(angle);
            double other = W - blocked;
            double moment = other * base - (1 - share) * W * base + climb.climbForce() * (height - radius);
            assertEquals(0, moment, 1e-9 * (W + climb.climbForce()) * base, "moments about the blocked axle");
            assertEquals(climb.outcome() == StepClimb.Outcome.CLIMBS, other >= -1e-9 * W);
        }
    }

    /** Marching the drop in time reaches the same greatest spring force. */
    @Property(seed = "5107", tries = 20)
    void dropFactorByMarchingInTime(@ForAll @Scale(4) @DoubleRange(min = 0, max = 0.05) double height,
            @ForAll @Scale(4) @DoubleRange(min = 0.0005, max = 0.01) double atRest) {
        double speed = Math.sqrt(2 * Constants.GRAVITY * height);
        double depth = 0;
        double greatest = 0;
        double dt = Math.sqrt(atRest / Constants.GRAVITY) / 20_000;
        while (speed >= 0) {
            speed += Constants.GRAVITY * (1 - (depth + speed * dt / 2) / atRest) * dt;
            depth += speed * dt;
            greatest = Math.max(greatest, depth / atRest);
        }
        assertEquals(DropFactor.of(height, atRest), greatest, 1e-3 * greatest);
    }

    @Property(seed = "5108", tries = 100)
    void aSteeperSlopeIsNeverEasier(@ForAll @Scale(4) @DoubleRange(min = 0, max = 0.2) double slope,
            @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.1) double more) {
        Range coefficient = new Range(0.01, 0.04);
        assertTrue(Rolling.upSlope(W, slope + more, coefficient).high() > Rolling.upSlope(W, slope, coefficient).high());
        assertTrue(Rolling.holdBack(W, slope + more, coefficient).high() > Rolling.holdBack(W, slope, coefficient).high());
        List<Brake.Braked> braked = List.of(new Brake.Braked(W / 4, 300));
        assertTrue(Brake.hold(W, slope + more, braked, 0.4).ratio() < Brake.hold(W, slope, braked, 0.4).ratio());
        assertTrue(RunAway.speedAfter(3, slope + more, 0.02) >= RunAway.speedAfter(3, slope, 0.02));
        double speed = RunAway.speedAfter(3, slope, 0.02);
        double energy = Math.max(0, Constants.GRAVITY * 3 * (Math.sin(slope) - 0.02 * Math.cos(slope)));
        assertEquals(energy, speed * speed / 2, 1e-12, "fall less friction work is motion");
        Brake.LineLoads gentle = Brake.lineLoads(W, 1.6, 0.7, 0.9, slope);
        Brake.LineLoads steep = Brake.lineLoads(W, 1.6, 0.7, 0.9, slope + more);
        assertTrue(steep.uphill() < gentle.uphill());
        double turning = gentle.downhill() * 0.7 - gentle.uphill() * 0.9;
        assertEquals(W * Math.sin(slope) * 0.9, turning, 1e-9 * W, "moments about the floor below the balance point");
    }
}
