package cradlewright.mechanics.tipping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.castor.SwivelLead;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.formula.Formula;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.tipping.PersonOnOverhang.Placed;
import cradlewright.mechanics.verify.CheckValues;

class TippingTest {

    private static final CheckValues VALUES = CheckValues.load("tipping");
    private static final double G = Constants.GRAVITY;
    private static final Vec3 REARWARD = new Vec3(1, 0, 0);
    private static final Vec3 RIGHT = new Vec3(0, 1, 0);
    /** Front left, front right, rear right, rear left. */
    private static final List<Vec3> FOUR = List.of(at(-0.8, -0.4), at(-0.8, 0.4), at(0.8, 0.4), at(0.8, -0.4));
    private static final SupportPolygon POLYGON = SupportPolygon.of(FOUR);
    private static final Vec3 BALANCE = new Vec3(-0.15, -0.05, 0.95);

    private static Vec3 at(double x, double y) {
        return new Vec3(x, y, 0);
    }

    private static SupportEdge edgeTowards(SupportPolygon polygon, Vec3 direction) {
        return polygon.edges().stream().filter(edge -> edge.outward().dot(direction) > 1 - 1e-9).findFirst().orElseThrow();
    }

    /** A wide polygon whose right edge lies the given distance from the origin. */
    private static SupportPolygon strip(double distance) {
        return SupportPolygon.of(List.of(at(-5, -5), at(5, -5), at(5, distance), at(-5, distance)));
    }

    private static TipMargin margin(double distance, double height, double fall) {
        return TipMargin.of(edgeTowards(strip(distance), RIGHT), new Vec3(0, 0, height), FloorSlope.ofFall(RIGHT, fall));
    }

    @Test
    void polygonAndMargins() {
        assertEquals(SupportKind.AREA, POLYGON.kind());
        VALUES.check("F7.side", edgeTowards(POLYGON, RIGHT.times(-1)).distance(BALANCE));
        VALUES.check("F7.far-side", edgeTowards(POLYGON, RIGHT).distance(BALANCE));
        VALUES.check("F7.far-end", edgeTowards(POLYGON, REARWARD).distance(BALANCE));
        VALUES.check("F7.near-end", edgeTowards(POLYGON, REARWARD.times(-1)).distance(BALANCE));
        VALUES.check("F7.least", POLYGON.margin(BALANCE));
        VALUES.check("F7s.least",
                SwivelLead.worst(FOUR.stream().map(axis -> new SwivelLead.Castor(axis, 0.05)).toList(), BALANCE).margin());
        assertEquals(-0.1, POLYGON.margin(at(0.9, 0)), 1e-12, "outside is below zero");
    }

    @Test
    void contactsThatHoldNothingAreNamed() {
        assertEquals(SupportKind.NONE, SupportPolygon.of(List.of()).kind());
        assertEquals(SupportKind.POINT, SupportPolygon.of(List.of(at(1, 1), at(1, 1))).kind());
        assertEquals(SupportKind.LINE, SupportPolygon.of(List.of(at(0, 0), at(1, 1))).kind());
        SupportPolygon line = SupportPolygon.of(List.of(at(1e-13, 0.3), at(0, 0), at(-1e-13, 0.5), at(0, 1), at(0, 1)));
        assertEquals(SupportKind.LINE, line.kind());
        assertEquals(List.of(1, 3), line.corners().stream().sorted().toList());
        assertThrows(IllegalStateException.class, () -> line.margin(at(0, 0.5)));
        assertThrows(IllegalArgumentException.class, () -> SupportPolygon.of(List.of(at(Double.NaN, 0))));
        assertThrows(IllegalArgumentException.class, () -> PushOver.of(line, BALANCE, 1, RIGHT, 1, FloorSlope.LEVEL));
        assertThrows(IllegalArgumentException.class, () -> PushOver.weakest(line, BALANCE, 1, 1, FloorSlope.LEVEL));
        assertThrows(IllegalStateException.class, () -> TipMargin.least(line, BALANCE, FloorSlope.LEVEL));
        assertThrows(IllegalArgumentException.class, () -> PersonOnOverhang.leastRatio(line, BALANCE, 100, List.of()));
    }

    @Test
    void cornersLeaveOutWhatLiesOnAnEdge() {
        SupportPolygon polygon = SupportPolygon.of(
                List.of(at(0, 0), at(1, 0), at(2, 0), at(2, 1), at(0, 1), at(1, 0.5), at(2, 0.5)));
        assertEquals(List.of(0, 2, 3, 4), polygon.corners().stream().sorted().toList());
        assertEquals(4, polygon.edges().size());
    }

    @Test
    void marginsOnSlopes() {
        VALUES.check("F1.tip-angle", Math.toDegrees(margin(0.4, 0.95, 0).tipAngle()));
        VALUES.check("F1.textbook", Math.toDegrees(margin(0.25, 0.5, 0).tipAngle()));
        VALUES.check("F6.distance", margin(0.4, 0.95, 0.02).distance());
        VALUES.check("F6.angle", Math.toDegrees(margin(0.4, 0.95, 0.02).tipAngle()));
        VALUES.check("F8.angle", margin(0.35, 0.95, 0).tipAngle());
        VALUES.check("F8.measure", margin(0.35, 0.95, 0).forceAngle(600 * G, FloorSlope.LEVEL));
        VALUES.check("U.level", margin(0.4, 0.95, 0).energy(600 * G, FloorSlope.LEVEL));
        VALUES.check("U.slope", margin(0.4, 0.95, 0.02).energy(600 * G, FloorSlope.ofFall(RIGHT, 0.02)));
        assertFalse(margin(0.4, 0.95, 0.43).stands());
        assertEquals(0, margin(0.4, 0.95, 0.43).energy(600 * G, FloorSlope.ofFall(RIGHT, 0.43)), 0);
        FloorSlope along = new FloorSlope(REARWARD, 0.1);
        TipMargin across = TipMargin.of(edgeTowards(strip(0.4), RIGHT), new Vec3(0, 0, 0.95), along);
        assertEquals(across.tipAngle() * 600 * G * Math.cos(0.1), across.forceAngle(600 * G, along), 1e-9);
        assertEquals(Math.cos(0.1) * margin(0.4, 0.95, 0).energy(600 * G, FloorSlope.LEVEL), across.energy(600 * G, along), 1e-9);
        assertEquals(edgeTowards(POLYGON, RIGHT.times(-1)), TipMargin.least(POLYGON, BALANCE, FloorSlope.LEVEL).edge());
        assertThrows(IllegalArgumentException.class, () -> margin(0.4, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new FloorSlope(Vec3.UP, 0.1));
    }

    @Test
    void pushes() {
        double weight = 600 * G;
        PushOver push = PushOver.weakest(strip(0.4), new Vec3(0, 0, 0.95), weight, 1.3, FloorSlope.LEVEL);
        VALUES.check("F2.tip", push.tipForce());
        VALUES.check("F3.allowed", push.allowed(TippingPractice.REQUIRED_RATIO));
        VALUES.check("F11.friction", push.slidingFriction(weight));
        assertTrue(push.withFriction(weight, 0.307, RIGHT, FloorSlope.LEVEL).slidesFirst());
        assertFalse(push.withFriction(weight, 0.308, RIGHT, FloorSlope.LEVEL).slidesFirst());
        VALUES.check("F12.floor-pivot",
                PushOver.weakest(strip(0.4), new Vec3(0, 0, 0.95), 900 * G, 1.0, FloorSlope.LEVEL).tipForce());
        VALUES.check("push.oblique-30", oblique(30));
        VALUES.check("push.oblique-100", oblique(100));
        FloorSlope falls = new FloorSlope(RIGHT, Math.toRadians(4));
        PushOver downhill = PushOver.of(POLYGON, BALANCE, weight, RIGHT, 1.3, falls);
        VALUES.check("push.slope", downhill.tipForce());
        Vec3 direction = new Vec3(Math.cos(Math.toRadians(30)), 0.5, 0);
        VALUES.check("push.slides", downhill.withFriction(weight, 0.35, direction, falls).slideForce());
        assertEquals(0, downhill.withFriction(weight, 0.069, direction, falls).slideForce(), 0, "slides by itself");
        PushOver tipped = PushOver.of(POLYGON, at(0.9, 0).plus(Vec3.UP), weight, RIGHT, 1.3, FloorSlope.LEVEL);
        assertEquals(0, tipped.tipForce(), 0);
        VALUES.check("push.one-person", TippingPractice.ONE_PERSON_PUSH);
        VALUES.check("second.push.one-person", TippingPractice.ONE_PERSON_PUSH);
        VALUES.check("push.more-people", TippingPractice.MORE_PEOPLE_PUSH);
        VALUES.check("ratio.required", TippingPractice.REQUIRED_RATIO);
        VALUES.check("second.ratio", TippingPractice.REQUIRED_RATIO);
    }

    @Test
    void slidesOnASlopeByHand() {
        FloorSlope falls = new FloorSlope(RIGHT, Math.asin(0.6));
        PushOver flat = PushOver.of(strip(4), new Vec3(0, 0, 0.1), 1000, RIGHT, 1, falls);
        VALUES.check("slide.across", flat.withFriction(1000, 1.25, REARWARD, falls).slideForce());
        VALUES.check("slide.down", flat.withFriction(1000, 1.25, RIGHT, falls).slideForce());
        VALUES.check("slide.up", flat.withFriction(1000, 1.25, RIGHT.times(-1), falls).slideForce());
    }

    @Test
    void limitsOfTheRange() {
        assertEquals(1.57, new FloorSlope(RIGHT, 1.57).angle(), 0);
        assertThrows(IllegalArgumentException.class, () -> new FloorSlope(RIGHT, Math.PI / 2));
        assertEquals(1e6, new OverhangWork(2, 2, 1e6).required(), 0);
        assertThrows(IllegalArgumentException.class, () -> new OverhangWork(2, 2, 1.001e6));
        assertEquals(0, OverhangWork.farReaction(1, 1, -1e6), 0);
        assertThrows(IllegalArgumentException.class, () -> OverhangWork.farReaction(1, 1, -1.001e6));
        PushOver push = PushOver.weakest(strip(0.4), new Vec3(0, 0, 0.95), 1e6, 1, FloorSlope.LEVEL);
        assertEquals(0.4, push.allowed(1e6), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> push.allowed(1.001e6));
        assertThrows(IllegalArgumentException.class, () -> push.allowed(0.999));
    }

    private static double oblique(double degrees) {
        Vec3 direction = new Vec3(Math.cos(Math.toRadians(degrees)), Math.sin(Math.toRadians(degrees)), 0);
        return PushOver.of(POLYGON, BALANCE, 600 * G, direction, 1.3, FloorSlope.LEVEL).tipForce();
    }

    @Test
    void personsOnOverhangs() {
        VALUES.check("person.operator", TippingPractice.OPERATOR_MASS);
        VALUES.check("person.tools", TippingPractice.PERSON_WITH_TOOLS_MASS);
        VALUES.check("second.person.tools", TippingPractice.PERSON_WITH_TOOLS_MASS);
        VALUES.check("edge.hand", PersonOnOverhang.edgeNeeded(0, 300, 100, 2, 1.5));
        VALUES.check("F4.ratio", PersonOnOverhang.ratio(0.8, 0.1, 450, 98, 1.9));
        VALUES.check("F4.mass", PersonOnOverhang.largestMass(0.8, 0.1, 450, 1.9, 1));
        VALUES.check("F4r.two", PersonOnOverhang.ratio(0.8, 0.1, 450, 196, 1.9));
        VALUES.check("F10.edge", PersonOnOverhang.edgeNeeded(0.1, 450, 98, 1.9, 1.5));
        VALUES.check("F10b.edge", PersonOnOverhang.edgeNeeded(0.1, 450, 196, 1.9, 1.5));
        assertEquals(Double.POSITIVE_INFINITY, PersonOnOverhang.ratio(0.8, 0.1, 450, 98, 0.7), 0);
        assertEquals(0, PersonOnOverhang.ratio(0.8, 0.9, 450, 98, 0.7), 0, "a load that does not stand alone");
        assertEquals(0, PersonOnOverhang.largestMass(0.8, 0.9, 450, 1.9, 1.5), 0);
        assertEquals(0.1, PersonOnOverhang.edgeNeeded(0.1, 450, 98, -1, 1.5), 0);
        double least = PersonOnOverhang.leastRatio(POLYGON, at(0.1, 0), 450,
                List.of(new Placed(at(1.9, 0), 98), new Placed(at(1.9, 0.1), 98), new Placed(at(-0.5, 0), 98)));
        VALUES.check("F4r.two", least);
        assertThrows(IllegalArgumentException.class, () -> PersonOnOverhang.ratio(0.8, 0.1, 0, 98, 1.9));
    }

    @Test
    void workOnAnOverhang() {
        VALUES.check("B10.front", OverhangWork.farReaction(3500, 1.8, 0.9));
        double limit = OverhangWork.unloadingForce(3500, 1.8, 0.9, 1.1);
        VALUES.check("B10.limit", limit);
        double supports = limit / (TippingPractice.OPERATOR_MASS * G);
        VALUES.check("B10.ratio", supports);
        assertTrue(new OverhangWork(supports, 1.6, 1.5).allowed());
        assertFalse(new OverhangWork(supports, 1.4, 1.5).allowed(), "the floor test fails");
        assertFalse(new OverhangWork(1.4, supports, 1.5).allowed(), "the support test fails");
        assertEquals(0, OverhangWork.unloadingForce(3500, 1.8, -0.1, 1.1), 0);
        assertThrows(IllegalArgumentException.class, () -> new OverhangWork(Double.NaN, 1, 1.5));
        assertThrows(IllegalArgumentException.class, () -> OverhangWork.unloadingForce(3500, 0, 0.9, 1.1));
    }

    @Test
    void kerbHits() {
        KerbHit point = KerbHit.of(0.9, 0.6, 0);
        VALUES.check("F5a.rise", point.rise());
        VALUES.check("F5a.low", point.lowSpeed());
        VALUES.check("F5a.critical", point.criticalSpeed());
        VALUES.check("F5b.critical", KerbHit.of(0.9, 0.6, (1.6 * 1.6 + 1.2 * 1.2) / 12).criticalSpeed());
        KerbHit tall = KerbHit.of(1.1, 0.35, 0);
        VALUES.check("F5c.low", tall.lowSpeed());
        VALUES.check("F5c.critical", tall.criticalSpeed());
        VALUES.check("F5.cube", KerbHit.of(0.5, 0.5, 1.0 / 6).criticalSpeed());
        VALUES.check("F5.walking", TippingPractice.WALKING_PACE);
        assertTrue(point.survives(TippingPractice.WALKING_PACE));
        assertFalse(tall.survives(TippingPractice.WALKING_PACE));
    }

    @Test
    void formulasAreListedOnce() {
        assertEquals(TippingFormulas.all().size(), TippingFormulas.all().stream().map(Formula::id).distinct().count());
        assertTrue(TippingFormulas.all().stream().allMatch(formula -> formula.id().startsWith("tipping.")));
    }
}
