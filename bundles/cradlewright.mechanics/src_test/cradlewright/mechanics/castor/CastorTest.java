package cradlewright.mechanics.castor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.castor.CastorStates.State;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.formula.Formula;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.verify.CheckValues;

class CastorTest {

    private static final CheckValues VALUES = CheckValues.load("castor");
    private static final double G = Constants.GRAVITY;
    private static final double W = 900 * G;
    private static final double SIX_PERCENT = Math.atan(0.06);
    /** Front left, front right, rear right, rear left. */
    private static final List<Vec3> FOUR = List.of(at(-0.8, -0.4), at(-0.8, 0.4), at(0.8, 0.4), at(0.8, -0.4));
    private static final Vec3 BALANCE = at(-0.15, -0.05);

    private static Vec3 at(double x, double y) {
        return new Vec3(x, y, 0);
    }

    @Test
    void tradeRuleAndRigidFrameSideBySide() {
        CastorRule rule = CastorRule.compare(140, 760, FOUR, Vec3.ZERO);
        VALUES.check("E1.average", rule.average());
        VALUES.check("E1.trade-rule", rule.tradeRule());
        VALUES.check("E1.shock", CastorRule.shockRule(140, 760));
        VALUES.check("E1.service-low", CastorRule.SERVICE_FACTOR_LOW);
        VALUES.check("E1.service-high", CastorRule.SERVICE_FACTOR_HIGH);
        VALUES.check("E8.diagonal", rule.rigidWorst());
        assertEquals(rule.rigidWorst(), rule.cautious(), 0);
        assertThrows(IllegalArgumentException.class, () -> CastorRule.compare(140, 760, FOUR, at(2, 0)));
    }

    @Test
    void threeCastorsCarry() {
        CastorStates states = CastorStates.of(FOUR, BALANCE, W);
        assertEquals(2, states.states().size(), "the balance point off both diagonals lies in two of four triangles");
        State withoutRearLeft = state(states, List.of(0, 1, 2));
        VALUES.check("E2.no-RL.FL", withoutRearLeft.loads().get(0) / G);
        VALUES.check("E2.no-RL.FR", withoutRearLeft.loads().get(1) / G);
        VALUES.check("E2.no-RL.RR", withoutRearLeft.loads().get(2) / G);
        State withoutRearRight = state(states, List.of(0, 1, 3));
        VALUES.check("E2.no-RR.FL", withoutRearRight.loads().get(0) / G);
        VALUES.check("E2.no-RR.FR", withoutRearRight.loads().get(1) / G);
        VALUES.check("E2.no-RR.RL", withoutRearRight.loads().get(3) / G);
        VALUES.check("E2.worst", states.worst() / G);
        VALUES.check("E2.worst.FR", states.worst(1) / G);
        VALUES.check("E2.worst.RR", states.worst(2) / G);
        VALUES.check("E2.least.FL", states.least(0) / G);
        VALUES.check("E2.least.FR", states.least(1) / G);
        VALUES.check("E2.share", states.worst() / W);
        assertEquals(0, states.worstCastor());
        assertEquals(0, states.least(2), 0, "a castor of the light side can hang in the air");
        assertEquals((506.25 + 28.125) * G, states.leastSum(List.of(0, 1, 1)), 1e-6);
    }

    private static State state(CastorStates states, List<Integer> carrying) {
        return states.states().stream().filter(s -> s.carrying().equals(carrying)).findFirst().orElseThrow();
    }

    @Test
    void moreAndFewerCastors() {
        List<Vec3> six = List.of(at(-1.5, -0.5), at(-1.5, 0.5), at(0, -0.5), at(0, 0.5), at(1.5, -0.5), at(1.5, 0.5));
        CastorStates states = CastorStates.of(six, at(0.2, 0.1), 6000);
        VALUES.check("E2x.six.left-middle", states.worst(2));
        VALUES.check("E2x.six.right-middle", states.worst(3));
        VALUES.check("E2x.six.right-rear", states.worst(5));
        CastorStates three = CastorStates.of(List.of(at(0, -0.6), at(0, 0.6), at(1.8, -0.1)), at(0.75, -0.05), 6000);
        VALUES.check("B1.first", three.worst(0));
        VALUES.check("B1.third", three.worst(2));
    }

    @Test
    void whatFallsOverHasNoStates() {
        CastorStates outside = CastorStates.of(FOUR, at(0.81, 0), W);
        assertFalse(outside.stands());
        assertThrows(IllegalStateException.class, outside::worst);
        CastorStates inLine = CastorStates.of(List.of(at(0, 0), at(1, 0), at(2, 0)), at(1, 0), W);
        assertFalse(inLine.stands());
        CastorStates onEdge = CastorStates.of(FOUR, at(0.8, 0), W);
        assertEquals(W / 2, onEdge.worst(2), 1e-9 * W);
        assertThrows(IllegalArgumentException.class, () -> CastorStates.of(FOUR.subList(0, 2), BALANCE, W));
        assertThrows(IllegalArgumentException.class, () -> CastorStates.of(FOUR, at(Double.NaN, 0), W));
        assertThrows(IllegalArgumentException.class, () -> CastorStates.of(FOUR, BALANCE, 0));
        assertThrows(IllegalArgumentException.class, () -> outside.worst(4));
    }

    @Test
    void floorWarp() {
        VALUES.check("E9.unload", 1000 * FloorWarp.of(FOUR, Vec3.ZERO, W, same(2e6), 0).firstUnloading(0));
        FloorWarp flat = FloorWarp.of(FOUR, BALANCE, W, same(2e6), 0);
        VALUES.check("E2.elastic.FL", flat.load(0, 0, 0) / G);
        VALUES.check("E2.elastic.RR", flat.load(2, 0, 0) / G);
        List<Vec3> frame = List.of(at(-0.9, -0.5), at(-0.9, 0.5), at(0.9, 0.5), at(0.9, -0.5));
        VALUES.check("B3.low", FloorWarp.of(frame, Vec3.ZERO, 4000, same(1e6), 0).load(0, 0, 1e-3));
        double chassis = FloorWarp.torsionCompliance(1.0, 3390 * 180 / Math.PI);
        FloorWarp body = FloorWarp.of(frame, Vec3.ZERO, 4000, same(1e6), chassis);
        VALUES.check("B5.fe", body.load(0, 0, 1e-3));
        assertEquals(body.load(0, 0, 1e-3), body.load(2, 0, 1e-3), 1e-9);
        VALUES.check("B5.unload", 1000 * body.firstUnloading(0));
        double soft = FloorWarp.torsionCompliance(1.0, 934 * 180 / Math.PI);
        VALUES.check("B5.soft", 1000 * FloorWarp.of(frame, Vec3.ZERO, 4000, same(1e7), soft).firstUnloading(0));
        FloorWarp offCentre = FloorWarp.of(frame, at(-0.2, 0.05), 4000, same(1e6), 0);
        VALUES.check("B4.first", 1000 * offCentre.firstUnloading(0));
        assertEquals(0, offCentre.load(2, 0, offCentre.firstUnloading(0)), 1e-6);
        List<Vec3> pads = List.of(at(-0.9, -0.45), at(-0.9, 0.45), at(0.9, 0.5), at(0.9, -0.5));
        FloorWarp lift = FloorWarp.of(pads, at(0.131, 0), 748 * G, List.of(4e5, 4e5, 2.5e5, 2.5e5), 0);
        VALUES.check("G11.FL", lift.load(0, 0, 8e-3) / G);
        VALUES.check("G11.RL", lift.load(3, 0, 8e-3) / G);
        List<Vec3> threeInLine = List.of(at(0, 0), at(1, 0), at(2, 0), at(1, 1));
        assertThrows(IllegalArgumentException.class, () -> FloorWarp.of(threeInLine, at(1, 0.2), W, same(1e6), 0));
        assertThrows(IllegalArgumentException.class, () -> FloorWarp.of(FOUR, BALANCE, W, same(0), 0));
        assertThrows(IllegalArgumentException.class, () -> FloorWarp.torsionCompliance(1, 0));
    }

    private static List<Double> same(double stiffness) {
        return List.of(stiffness, stiffness, stiffness, stiffness);
    }

    @Test
    void pushIsARange() {
        Range polymer = Rolling.coefficient(TreadOnFloor.POLYMER_ON_CONCRETE, 0.0625, false);
        Range push = Rolling.level(W, polymer);
        VALUES.check("E3.two-percent", push.low());
        VALUES.check("E3.lever-arm", push.high());
        VALUES.check("E3.soft-floor",
                Rolling.level(W, Rolling.coefficient(TreadOnFloor.POLYMER_ON_CONCRETE, 0.0625, true)).high());
        VALUES.check("E3.lever-arm-small", Rolling.leverArmForce(W, 1.2e-3, 0.0625));
        VALUES.check("E3.arm.steel", 1000 * TreadOnFloor.STEEL_ON_STEEL.leverArm().low());
        VALUES.check("E3.arm.polymer-steel", 1000 * TreadOnFloor.POLYMER_ON_STEEL.leverArm().high());
        VALUES.check("E3.arm.polymer-concrete", 1000 * TreadOnFloor.POLYMER_ON_CONCRETE.leverArm().low());
        VALUES.check("E3.arm.hard-rubber-low", 1000 * TreadOnFloor.HARD_RUBBER_ON_CONCRETE.leverArm().low());
        VALUES.check("E3.arm.hard-rubber-high", 1000 * TreadOnFloor.HARD_RUBBER_ON_CONCRETE.leverArm().high());
        VALUES.check("E3.arm.medium-rubber-low", 1000 * TreadOnFloor.MEDIUM_RUBBER_ON_CONCRETE.leverArm().low());
        VALUES.check("E3.arm.medium-rubber-high", 1000 * TreadOnFloor.MEDIUM_RUBBER_ON_CONCRETE.leverArm().high());
        Range turned = Rolling.turnedStart(new Range(100, 200));
        VALUES.check("E3.turned-low", turned.low());
        VALUES.check("E3.turned-high", turned.high());
        Range steel = Rolling.coefficient(TreadOnFloor.STEEL_ON_STEEL, 0.0625, false);
        assertEquals(0.5 / 62.5, steel.low(), 1e-15);
        assertEquals(0.02, steel.high(), 0, "the percentage is the high end for a hard wheel");
        for (TreadOnFloor single : List.of(TreadOnFloor.STEEL_ON_STEEL, TreadOnFloor.POLYMER_ON_STEEL,
                TreadOnFloor.POLYMER_ON_CONCRETE)) {
            assertEquals(single.leverArm().low(), single.leverArm().high(), 0, "the source prints one figure");
        }
        assertThrows(IllegalArgumentException.class, () -> Rolling.leverArmForce(W, 5e-3, 0));
        assertThrows(IllegalArgumentException.class, () -> Rolling.level(W, new Range(-0.1, 0.1)));
        assertThrows(IllegalArgumentException.class, () -> new Range(2, 1));
    }

    @Test
    void slopeAndPeople() {
        Range two = new Range(0.02, 0.02);
        VALUES.check("E5.gravity", Rolling.upSlope(W, SIX_PERCENT, new Range(0, 0)).low());
        VALUES.check("E5.push", Rolling.upSlope(W, SIX_PERCENT, two).high());
        VALUES.check("E5.largest-slope", Rolling.LARGEST_SLOPE);
        Range hold = Rolling.holdBack(W, SIX_PERCENT, two);
        assertEquals(Rolling.upSlope(W, SIX_PERCENT, two).low() - 2 * 0.02 * W * Math.cos(SIX_PERCENT), hold.low(), 1e-9);
        VALUES.check("E5.men-start", PushGuidance.MEN.start());
        VALUES.check("E5.men-keep", PushGuidance.MEN.keep());
        VALUES.check("E5.women-start", PushGuidance.WOMEN.start());
        VALUES.check("E5.women-keep", PushGuidance.WOMEN.keep());
        VALUES.check("E5.people", PushGuidance.WOMEN.people(706.079, 0));
        assertEquals(2, PushGuidance.MEN.people(200, 101), "keeping in motion can govern");
        assertEquals(1, PushGuidance.MEN.people(0, 0));
    }

    @Test
    void steps() {
        VALUES.check("E4w.axle", StepClimb.axleForce(1000, 0.1, 0.02));
        VALUES.check("E4.textbook-wheel", StepClimb.axleForce(0.8 * 9.8, 0.06, 0.03));
        VALUES.check("E4.textbook-roller", StepClimb.axleForce(300, 0.25, 0.1));
        VALUES.check("E4.h3", StepClimb.axleForce(W / 2, 0.0625, 0.003));
        VALUES.check("E4.h5", StepClimb.axleForce(W / 2, 0.0625, 0.005));
        VALUES.check("E4.h20", StepClimb.axleForce(W / 2, 0.0625, 0.020));
        VALUES.check("E4.r100-h5", StepClimb.axleForce(W / 2, 0.1, 0.005));
        StepClimb low = StepClimb.of(W / 2, W / 2, 1.6, 0.0625, 0.005, 1.0);
        VALUES.check("E10.kappa-5", low.kappa());
        VALUES.check("E10.climb-5", low.climbForce());
        VALUES.check("E10.tip", low.tipForce());
        assertEquals(StepClimb.Outcome.CLIMBS, low.outcome());
        assertFalse(low.tipsAt(8000));
        StepClimb high = StepClimb.of(W / 2, W / 2, 1.6, 0.0625, 0.020, 1.0);
        VALUES.check("E10.kappa-20", high.kappa());
        VALUES.check("E10.climb-20", high.climbForce());
        assertEquals(StepClimb.Outcome.TIPS, high.outcome());
        assertTrue(high.tipsAt(high.tipForce()));
        VALUES.check("E4v.energy", StepClimb.energySpeed(0.005));
        VALUES.check("E4v.hit", StepClimb.plasticHitSpeed(0.0625, 0.005));
        StepClimb wall = StepClimb.of(W / 2, W / 2, 1.6, 0.0625, 0.0625, 0.06);
        assertEquals(StepClimb.Outcome.CANNOT, wall.outcome());
        assertEquals(StepClimb.Outcome.TIPS, StepClimb.of(W / 2, W / 2, 1.6, 0.0625, 0.07, 1).outcome());
        assertEquals(StepClimb.Outcome.TIPS, StepClimb.of(W / 2, W / 2, 0.9, 0.0625, 0.02, 1.0).outcome(),
                "no push climbs, so the tipping force comes first");
        assertThrows(IllegalArgumentException.class, () -> StepClimb.axleForce(1000, 0.1, 0.1));
    }

    @Test
    void swivelLead() {
        VALUES.check("E6.sweep", 1000 * SwivelLead.sweptRadius(0.05, 0.0625));
        SwivelLead.WorstTilt along = SwivelLead.worst(
                List.of(new SwivelLead.Castor(at(-0.8, -9), 0.05), new SwivelLead.Castor(at(-0.8, 9), 0.05),
                        new SwivelLead.Castor(at(0.8, 9), 0.05), new SwivelLead.Castor(at(0.8, -9), 0.05)),
                Vec3.ZERO);
        VALUES.check("E6.half-base", along.margin());
        assertEquals(1, Math.abs(along.direction().x()), 1e-12);
        SwivelLead.WorstTilt mixed = SwivelLead.worst(
                List.of(new SwivelLead.Castor(FOUR.get(0), 0.05), new SwivelLead.Castor(FOUR.get(1), 0.05),
                        new SwivelLead.Castor(FOUR.get(2), 0), new SwivelLead.Castor(FOUR.get(3), 0)),
                BALANCE);
        VALUES.check("E6.mixed", mixed.margin());
    }

    @Test
    void ratingConditions() {
        VALUES.check("E7.obstacle", 1000 * CastorLimits.testObstacle(0.125));
        VALUES.check("E7.crossings", CastorLimits.testCrossings(0.125));
        VALUES.check("E7.static", 300 * CastorLimits.STATIC_TEST);
        VALUES.check("E7.speed", CastorLimits.HIGHEST_SPEED);
        VALUES.check("E7.cold", CastorLimits.LOWEST_CELSIUS);
        VALUES.check("E7.warm", CastorLimits.HIGHEST_CELSIUS);
        assertTrue(CastorLimits.ratingHolds(20, 1.1));
        assertFalse(CastorLimits.ratingHolds(9, 1.1));
        assertFalse(CastorLimits.ratingHolds(31, 1.1));
        assertFalse(CastorLimits.ratingHolds(20, 1.2));
    }

    @Test
    void brakes() {
        VALUES.check("E7.brake-test", Brake.testForce(300));
        Brake.LineLoads lines = Brake.lineLoads(W, 1.6, 0.8, 0.95, SIX_PERCENT);
        VALUES.check("brake.down-line", lines.downhill());
        VALUES.check("brake.up-line", lines.uphill());
        Brake.Braked quarter = new Brake.Braked(W / 4 * Math.cos(SIX_PERCENT), 300);
        VALUES.check("brake.ratio", Brake.hold(W, SIX_PERCENT, List.of(quarter, quarter), 0.5).ratio());
        VALUES.check("brake.friction", Brake.hold(W, SIX_PERCENT, List.of(quarter, quarter), 0.2).ratio());
        assertEquals(0, Brake.hold(W, SIX_PERCENT, List.of(), 0.5).ratio(), 0);
        assertEquals(Double.POSITIVE_INFINITY, Brake.hold(W, 0, List.of(), 0.5).ratio(), 0);
        assertThrows(IllegalArgumentException.class, () -> Brake.lineLoads(W, 1.6, 1.7, 0.95, SIX_PERCENT));
    }

    @Test
    void runningAway() {
        double steep = Math.toRadians(30);
        VALUES.check("runaway.published", RunAway.acceleration(steep, 0.2));
        VALUES.check("runaway.snowboard", RunAway.acceleration(Math.toRadians(13), 0.2));
        VALUES.check("runaway.acceleration", RunAway.acceleration(SIX_PERCENT, 0.01));
        double speed = RunAway.speedAfter(5, SIX_PERCENT, 0.01);
        VALUES.check("runaway.speed", speed);
        VALUES.check("runaway.run-out", RunAway.runOut(speed, 0.01));
        assertEquals(RunAway.Verdict.ROLLS, RunAway.verdict(SIX_PERCENT, new Range(0.02, 0.059)));
        assertEquals(RunAway.Verdict.MAY_ROLL, RunAway.verdict(SIX_PERCENT, new Range(0.059, 0.061)));
        assertEquals(RunAway.Verdict.STANDS, RunAway.verdict(SIX_PERCENT, new Range(0.061, 0.08)));
        assertEquals(0, RunAway.speedAfter(5, SIX_PERCENT, 0.061), 0);
        assertEquals(0.06, RunAway.coefficientFromTest(SIX_PERCENT), 1e-15);
    }

    /** Numbers printed by others than the source of the formula. */
    @Test
    void secondSources() {
        VALUES.check("second.arm.steel", 1000 * TreadOnFloor.STEEL_ON_STEEL.leverArm().low());
        VALUES.check("second.arm.polymer-steel", 1000 * TreadOnFloor.POLYMER_ON_STEEL.leverArm().low());
        VALUES.check("second.arm.polymer-concrete", 1000 * TreadOnFloor.POLYMER_ON_CONCRETE.leverArm().high());
        VALUES.check("second.arm.hard-rubber-low", 1000 * TreadOnFloor.HARD_RUBBER_ON_CONCRETE.leverArm().low());
        VALUES.check("second.arm.hard-rubber-high", 1000 * TreadOnFloor.HARD_RUBBER_ON_CONCRETE.leverArm().high());
        VALUES.check("second.arm.medium-rubber-low", 1000 * TreadOnFloor.MEDIUM_RUBBER_ON_CONCRETE.leverArm().low());
        VALUES.check("second.arm.medium-rubber-high", 1000 * TreadOnFloor.MEDIUM_RUBBER_ON_CONCRETE.leverArm().high());
        VALUES.check("second.norm.obstacle", 1000 * CastorLimits.testObstacle(0.100));
        VALUES.check("second.norm.crossings", CastorLimits.testCrossings(0.100));
        VALUES.check("second.norm.static", 200 * CastorLimits.STATIC_TEST);
        VALUES.check("second.norm.brake", Brake.testForce(200) / G);
        VALUES.check("second.norm.speed", CastorLimits.HIGHEST_SPEED);
        VALUES.check("second.men-start", PushGuidance.MEN.start() / 10);
        VALUES.check("second.men-keep", PushGuidance.MEN.keep() / 10);
        VALUES.check("second.women-start", PushGuidance.WOMEN.start() / 10);
        VALUES.check("second.women-keep", PushGuidance.WOMEN.keep() / 10);
        VALUES.check("second.rule.six", CastorRule.tradeRule(150, 850, 6));
        VALUES.check("second.rule.four", CastorRule.tradeRule(150, 850, 4));
        VALUES.check("second.rule.shock", CastorRule.shockRule(150, 850));
        VALUES.check("second.rule.service-low", CastorRule.SERVICE_FACTOR_LOW);
        VALUES.check("second.rule.service-high", CastorRule.SERVICE_FACTOR_HIGH);
        VALUES.check("second.joint", DropFactor.ROLLING_OVER_JOINTS);
    }

    @Test
    void limitsOfTheRange() {
        Range none = new Range(0, 0);
        assertEquals(W * Math.sin(1), Brake.hold(W, 1, List.of(), 0.5).needed(), 1e-9 * W);
        assertThrows(IllegalArgumentException.class, () -> Brake.hold(W, 1.005, List.of(), 0.5));
        assertTrue(Brake.lineLoads(W, 1.6, 0.8, 0.95, 1).downhill() > 0);
        assertThrows(IllegalArgumentException.class, () -> Brake.lineLoads(W, 1.6, 0.8, 0.95, 1.005));
        assertFalse(CastorLimits.ratingHolds(-273, 1));
        assertThrows(IllegalArgumentException.class, () -> CastorLimits.ratingHolds(-274, 1));
        assertFalse(CastorLimits.ratingHolds(1000, 1));
        assertThrows(IllegalArgumentException.class, () -> CastorLimits.ratingHolds(1001, 1));
        assertEquals(900, CastorRule.tradeRule(140, 760, 2), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> CastorRule.tradeRule(140, 760, 65));
        assertTrue(PushGuidance.MEN.people(1e9, 1e9) > 1e6);
        assertThrows(IllegalArgumentException.class, () -> PushGuidance.MEN.people(1.001e9, 0));
        assertThrows(IllegalArgumentException.class, () -> PushGuidance.MEN.people(0, 1.001e9));
        assertEquals(W * Math.sin(1.57), Rolling.upSlope(W, 1.57, none).low(), 1e-9 * W);
        assertThrows(IllegalArgumentException.class, () -> Rolling.upSlope(W, 1.58, none));
        assertEquals(G * Math.sin(1), RunAway.acceleration(1, 0), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> RunAway.acceleration(1.005, 0));
        assertEquals(Math.tan(1), RunAway.coefficientFromTest(1), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> RunAway.coefficientFromTest(1.005));
    }

    @Test
    void linesOnASlopeByHand() {
        Brake.LineLoads lines = Brake.lineLoads(1000, 2, 1, 0.5, Math.asin(0.6));
        VALUES.check("lines.downhill", lines.downhill());
        VALUES.check("lines.uphill", lines.uphill());
    }

    @Test
    void drops() {
        VALUES.check("F9.step", DropFactor.of(0.005, 0.001));
        VALUES.check("F9.sudden", DropFactor.of(0, 0.001));
        double atRest = 5.0 / 90;
        VALUES.check("F9.textbook", DropFactor.of(0.2, atRest));
        VALUES.check("F9.textbook-deflection", 1000 * atRest * DropFactor.of(0.2, atRest));
        VALUES.check("F9.textbook-inch", 2 * DropFactor.of(12, 2));
        VALUES.check("F9.joints", DropFactor.ROLLING_OVER_JOINTS);
        assertThrows(IllegalArgumentException.class, () -> DropFactor.of(0.005, 0));
        assertThrows(IllegalArgumentException.class, () -> DropFactor.of(Double.NaN, 0.001));
    }

    @Test
    void formulasAreListedOnce() {
        assertEquals(CastorFormulas.all().size(), CastorFormulas.all().stream().map(Formula::id).distinct().count());
        assertTrue(CastorFormulas.all().stream().allMatch(formula -> formula.id().startsWith("castor.")));
    }
}
