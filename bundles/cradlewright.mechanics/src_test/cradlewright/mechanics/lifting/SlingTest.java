package cradlewright.mechanics.lifting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.lifting.SlingModeFactor.Mode;
import cradlewright.mechanics.verify.CheckValues;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SlingTest {

    private final CheckValues values = CheckValues.load("lifting");

    @Test
    void equalLegs() {
        for (int b : new int[] {0, 15, 30, 45, 60}) {
            TwoLegSling sling = new TwoLegSling(10_000, Math.toRadians(b));
            values.check("G4." + b, sling.legForce() / 1000);
            assertTrue(sling.allowed());
            // the two legs together hold the weight and pull against each other
            assertEquals(10_000, 2 * sling.legForce() * Math.cos(Math.toRadians(b)), 1e-8);
            assertEquals(sling.squeeze(), sling.legForce() * Math.sin(Math.toRadians(b)), 1e-8);
        }
        assertFalse(new TwoLegSling(1, Math.toRadians(60.1)).allowed());
        for (int a : new int[] {90, 60, 45, 30}) {
            values.check("G4f." + a, SlingLegs.angleFactor(Math.toRadians(a)));
        }
        double beta = Math.toRadians(30);
        values.check("G7.two", SlingLegs.fourOnTwoLegBasis(700, beta));
        values.check("G7.three", SlingLegs.equal(700, 3, beta));
        values.check("G7.four", SlingLegs.equal(700, 4, beta));
    }

    @Test
    void unequalLegs() {
        SlingLegs.Two t = SlingLegs.two(8000, 1.5, 0.8, 1.4);
        values.check("G5.S1", t.firstLength());
        values.check("G5.S2", t.secondLength());
        values.check("G5.T1", t.first() / 1000);
        values.check("G5.T2", t.second() / 1000);
    }

    @Property(seed = "61", tries = 300)
    void unequalLegsAreInEquilibrium(@ForAll @DoubleRange(min = 0.3, max = 4) double h,
            @ForAll @DoubleRange(min = 0, max = 2) double d1, @ForAll @DoubleRange(min = 0.01, max = 2) double d2) {
        SlingLegs.Two t = SlingLegs.two(8000, h, d1, d2);
        assertEquals(8000, t.first() * h / t.firstLength() + t.second() * h / t.secondLength(), 1e-8);
        assertEquals(0, t.first() * d1 / t.firstLength() - t.second() * d2 / t.secondLength(), 1e-8);
    }

    @Test
    void threeLegs() {
        List<Double> t = SlingLegs.three(9000, new Vec3(0.4 / 3, 0, 1.6),
                List.of(new Vec3(0.9, -0.5, 0), new Vec3(0.9, 0.5, 0), new Vec3(-1.1, 0, 0)));
        for (int i = 0; i < 3; i++) {
            values.check("G6." + (i + 1), t.get(i) / 1000);
        }
    }

    @Test
    void tripodByHand() {
        double half = 0.75 / 2;
        double side = 0.75 * Math.sqrt(3) / 2;
        for (double leg : SlingLegs.three(6000, Vec3.UP,
                List.of(new Vec3(0.75, 0, 0), new Vec3(-half, side, 0), new Vec3(-half, -side, 0)))) {
            values.check("tripod", leg / 1000);
        }
    }

    @Property(seed = "62", tries = 300)
    void threeLegsAreInEquilibrium(@ForAll @DoubleRange(min = -0.3, max = 0.3) double x,
            @ForAll @DoubleRange(min = -0.2, max = 0.2) double y, @ForAll @DoubleRange(min = -0.3, max = 0.5) double z) {
        Vec3 hook = new Vec3(x, y, 1.8);
        List<Vec3> points = List.of(new Vec3(0.9, -0.6, z), new Vec3(0.8, 0.7, 0), new Vec3(-1.1, 0, 0.1));
        List<Double> t = SlingLegs.three(9000, hook, points);
        Vec3 sum = Vec3.UP.times(-9000);
        for (int i = 0; i < 3; i++) {
            assertTrue(t.get(i) > 0);
            sum = sum.plus(hook.minus(points.get(i)).unit().times(t.get(i)));
        }
        assertEquals(0, sum.norm(), 1e-8);
    }

    @Test
    void fourStiffLegs() {
        List<Vec3> square = List.of(new Vec3(0.8, -0.8, 0), new Vec3(0.8, 0.8, 0), new Vec3(-0.8, 0.8, 0),
                new Vec3(-0.8, -0.8, 0));
        double beta = Math.atan2(0.8 * Math.sqrt(2), 1.5);
        for (double most : SlingLegs.fourStiff(700, new Vec3(0, 0, 1.5), square)) {
            assertEquals(SlingLegs.fourOnTwoLegBasis(700, beta), most, 1e-9);
        }
        // the balance point off the middle: any mixture of the three-leg states that holds the load stays below
        Vec3 hook = new Vec3(0.2, 0.1, 1.5);
        List<Double> most = SlingLegs.fourStiff(700, hook, square);
        double[] seen = new double[4];
        for (double preload = -600; preload <= 600; preload += 0.1) {
            double[] t = withPreload(hook, square, preload);
            if (t[0] >= 0 && t[1] >= 0 && t[2] >= 0 && t[3] >= 0) {
                for (int i = 0; i < 4; i++) {
                    seen[i] = Math.max(seen[i], t[i]);
                }
            }
        }
        for (int i = 0; i < 4; i++) {
            assertEquals(most.get(i), seen[i], 0.3);
        }
    }

    @Test
    void aMeasuredFourLegSlingLeftTwoLegsIdle() {
        double[] leg = {348, 23, 303, 18};
        double diagonal = leg[0] + leg[2];
        values.check("B6.diagonal", diagonal / (diagonal + leg[1] + leg[3]));
        // upright legs on a square: the warp force is what each leg of one diagonal has above the even share
        List<Pad> pads = List.of(new Pad(1, -1, 1e6, 0), new Pad(1, 1, 1e6, 0), new Pad(-1, 1, 1e6, 0), new Pad(-1, -1, 1e6, 0));
        double sum = diagonal + leg[1] + leg[3];
        double x = (leg[0] + leg[1] - leg[2] - leg[3]) / sum;
        double y = (leg[1] + leg[2] - leg[0] - leg[3]) / sum;
        List<Double> even = new FourPads(pads, sum, x, y, 0).loads().loads();
        values.check("B6.warp", leg[0] - even.get(0));
        values.check("B6.leg", SlingLegs.fourOnTwoLegBasis(700, 0));
        assertTrue(leg[0] <= SlingLegs.fourOnTwoLegBasis(700, 0));
        assertTrue(leg[0] > SlingLegs.equal(700, 3, 0));
    }

    @Test
    void modeFactors() {
        double at45 = Math.toRadians(45);
        double at60 = Math.toRadians(60);
        values.check("mode.straight", SlingModeFactor.factor(Mode.STRAIGHT, 0));
        values.check("mode.choked", SlingModeFactor.factor(Mode.CHOKED, 0));
        values.check("mode.basket-parallel", SlingModeFactor.factor(Mode.BASKET_PARALLEL, 0));
        values.check("mode.basket.45", SlingModeFactor.factor(Mode.BASKET, at45));
        values.check("mode.basket.60", SlingModeFactor.factor(Mode.BASKET, at60));
        values.check("mode.two.45", SlingModeFactor.factor(Mode.TWO_LEGS, at45));
        values.check("mode.two.60", SlingModeFactor.factor(Mode.TWO_LEGS, at60));
        values.check("mode.three.45", SlingModeFactor.factor(Mode.THREE_LEGS, at45));
        values.check("mode.three.60", SlingModeFactor.factor(Mode.THREE_LEGS, at60));
        values.check("mode.four.45", SlingModeFactor.factor(Mode.FOUR_LEGS, at45));
        values.check("mode.four.60", SlingModeFactor.factor(Mode.FOUR_LEGS, at60));
        values.check("rope.one", SlingModeFactor.factor(Mode.STRAIGHT, 0));
        values.check("rope.two.45", SlingModeFactor.factor(Mode.TWO_LEGS, at45));
        values.check("rope.two.60", SlingModeFactor.factor(Mode.TWO_LEGS, at60));
        values.check("rope.four.45", SlingModeFactor.factor(Mode.FOUR_LEGS, at45));
        values.check("rope.four.60", SlingModeFactor.factor(Mode.FOUR_LEGS, at60));
        values.check("G14.choked", SlingModeFactor.capacity(Mode.CHOKED, 0, 2000) / 1000);
        values.check("G14.two", SlingModeFactor.capacityChoked(Mode.TWO_LEGS, at45, 2000) / 1000);
        for (Mode m : Mode.values()) {
            assertEquals(0, SlingModeFactor.factor(m, Math.toRadians(60.1)), m + " beyond 60 degrees");
        }
        assertEquals(0, SlingModeFactor.factor(Mode.STRAIGHT, Math.toRadians(6.1)));
        assertEquals(1, SlingModeFactor.factor(Mode.STRAIGHT, Math.toRadians(5.9)));
        assertEquals(1.4, SlingModeFactor.factor(Mode.TWO_LEGS, Math.toRadians(44.9)));
        assertEquals(1.0, SlingModeFactor.factor(Mode.TWO_LEGS, Math.toRadians(45.1)));
        assertThrows(IllegalArgumentException.class, () -> SlingModeFactor.capacityChoked(Mode.BASKET, 0, 1));
    }

    /** Numbers printed by others than the source of the formula. */
    @Test
    void modeFactorsOfASecondSource() {
        double at45 = Math.toRadians(45);
        double at60 = Math.toRadians(60);
        values.check("second.mode.straight", SlingModeFactor.factor(Mode.STRAIGHT, 0));
        values.check("second.mode.choked", SlingModeFactor.factor(Mode.CHOKED, 0));
        values.check("second.mode.basket-parallel", SlingModeFactor.factor(Mode.BASKET_PARALLEL, 0));
        values.check("second.mode.two.45", SlingModeFactor.factor(Mode.TWO_LEGS, at45));
        values.check("second.mode.two.60", SlingModeFactor.factor(Mode.TWO_LEGS, at60));
        values.check("second.mode.three.45", SlingModeFactor.factor(Mode.THREE_LEGS, at45));
        values.check("second.mode.four.45", SlingModeFactor.factor(Mode.FOUR_LEGS, at45));
        values.check("second.rope.two.45", SlingModeFactor.capacity(Mode.TWO_LEGS, at45, 3000) / 1000);
        values.check("second.rope.two.60", SlingModeFactor.capacity(Mode.TWO_LEGS, at60, 3000) / 1000);
        values.check("second.rope.four.45", SlingModeFactor.capacity(Mode.FOUR_LEGS, at45, 3000) / 1000);
        values.check("second.rope.four.60", SlingModeFactor.capacity(Mode.FOUR_LEGS, at60, 3000) / 1000);
    }

    @Property(seed = "63", tries = 400)
    void capacityNeverGrowsWithTheAngleAndNeverExceedsStatics(@ForAll @DoubleRange(min = 0, max = 1.5) double beta,
            @ForAll @DoubleRange(min = 0, max = 0.07) double more) {
        for (Mode m : Mode.values()) {
            assertTrue(SlingModeFactor.capacity(m, beta + more, 1000) <= SlingModeFactor.capacity(m, beta, 1000));
        }
        // at the largest angle of each step the legs carry no more than one leg may (1.4 is rounded down from 2 cos 45, 2.1 from
        // 3 cos 45)
        double worst = beta <= Math.PI / 4 ? Math.PI / 4 : Math.PI / 3;
        assertTrue(SlingLegs.equal(SlingModeFactor.factor(Mode.TWO_LEGS, beta), 2, worst) <= 1 + 1e-9);
        assertTrue(SlingLegs.equal(SlingModeFactor.factor(Mode.FOUR_LEGS, beta), 3, worst) <= 1 + 1e-9);
        assertTrue(SlingLegs.equal(1000, 2, beta + more) >= SlingLegs.equal(1000, 2, beta));
    }

    @Test
    void strapsAndHooks() {
        values.check("eye.angle", Math.toDegrees(StrapEye.MOST_OPENING));
        values.check("eye.radius", 1000 * StrapEye.smallestRadius(0.050));
        // tangents from a point to a circle: touching point square to the radius
        double opening = StrapEye.opening(0.04, 0.22);
        double tangent = Math.sqrt(0.2 * 0.2 - 0.02 * 0.02);
        assertEquals(2 * Math.atan2(0.02, tangent), opening, 1e-12);
        values.check("G12", StrapSidePull.of(2500, Math.toRadians(10)) / 1000);
        values.check("G12.limit", Math.toDegrees(StrapSidePull.MOST_LEAN));
        // side pull and upright part make up a force along the strap
        assertEquals(Math.toRadians(10), Math.atan2(StrapSidePull.of(2500, Math.toRadians(10)), 2500), 1e-12);
        values.check("G9", Math.toDegrees(HungFromHook.tilt(0.12, 1.4)));
        // at the tilt the balance point is straight below the hook
        double tilt = HungFromHook.tilt(0.12, 1.4);
        assertEquals(0, 0.12 * Math.cos(tilt) - 1.4 * Math.sin(tilt), 1e-12);
    }

    @Test
    void roll() {
        RollStability r = new RollStability(200e3, 1.0, 4000, 0.4);
        values.check("G13.restoring", r.restoring() / 1000);
        values.check("G13.upsetting", r.upsetting() / 1000);
        values.check("G13.ratio", r.restoring() / r.upsetting());
        assertTrue(r.stable());
        // energy of a small turn a: two springs of s/2 a, weight lower by h a2/2
        double a = 1e-3;
        double springs = 2 * 0.5 * 200e3 * Math.pow(0.5 * Math.sin(a), 2);
        double sunk = 4000 * 0.4 * (1 - Math.cos(a));
        assertEquals((springs - sunk) / (a * a / 2), r.restoring() - r.upsetting(), 1e-4 * r.restoring());
        assertFalse(new RollStability(1000, 1.0, 4000, 0.4).stable());
        assertTrue(new RollStability(1000, 1.0, 4000, -0.4).stable());
    }

    @Test
    void refusesNonsense() {
        assertThrows(IllegalArgumentException.class, () -> SlingLegs.equal(1, 2, Math.PI / 2));
        assertThrows(IllegalArgumentException.class, () -> SlingLegs.equal(1, 5, 0));
        assertThrows(IllegalArgumentException.class, () -> SlingLegs.equal(Double.NaN, 2, 0));
        assertThrows(IllegalArgumentException.class, () -> SlingLegs.angleFactor(0));
        assertThrows(IllegalArgumentException.class, () -> SlingLegs.angleFactor(1.575));
        assertThrows(IllegalArgumentException.class, () -> SlingModeFactor.factor(Mode.STRAIGHT, 1.575));
        assertEquals(0, SlingModeFactor.factor(Mode.STRAIGHT, 1.57));
        assertThrows(IllegalArgumentException.class, () -> SlingLegs.two(1, 1, 0, 0));
        Vec3 hook = new Vec3(0, 0, 1);
        List<Vec3> beside = List.of(new Vec3(1, 0, 0), new Vec3(2, 1, 0), new Vec3(2, -1, 0));
        assertThrows(IllegalArgumentException.class, () -> SlingLegs.three(1, hook, beside));
        List<Vec3> plane = List.of(new Vec3(1, 0, 0), new Vec3(2, 0, 0), new Vec3(-2, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> SlingLegs.three(1, hook, plane));
        List<Vec3> four = List.of(new Vec3(1, 0, 0), new Vec3(2, 1, 0), new Vec3(2, -1, 0), new Vec3(3, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> SlingLegs.fourStiff(1, hook, four));
        assertThrows(IllegalArgumentException.class, () -> StrapEye.opening(0.04, 0.03));
        assertThrows(IllegalArgumentException.class, () -> HungFromHook.tilt(0.1, 0));
        assertThrows(IllegalArgumentException.class, () -> StrapSidePull.of(1, Math.PI / 2));
        assertThrows(IllegalArgumentException.class, () -> new RollStability(0, 1, 1, 1));
    }

    /** Forces of four legs with the fourth held at {@code preload}: the first three carry the rest. */
    private static double[] withPreload(Vec3 hook, List<Vec3> points, double preload) {
        Vec3 fourth = hook.minus(points.get(3)).unit().times(preload);
        Vec3 load = Vec3.UP.times(700).minus(fourth);
        Vec3[] u = new Vec3[3];
        for (int i = 0; i < 3; i++) {
            u[i] = hook.minus(points.get(i)).unit();
        }
        double whole = u[0].dot(u[1].cross(u[2]));
        return new double[] {load.dot(u[1].cross(u[2])) / whole, load.dot(u[2].cross(u[0])) / whole, load.dot(u[0].cross(u[1]))
                / whole,
                preload};
    }
}
