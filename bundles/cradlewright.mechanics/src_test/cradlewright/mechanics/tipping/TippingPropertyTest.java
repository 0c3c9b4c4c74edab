package cradlewright.mechanics.tipping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import cradlewright.mechanics.castor.CastorStates;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.tipping.PersonOnOverhang.Placed;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

class TippingPropertyTest {

    private static final double W = 5000;

    private static List<Vec3> contacts(Random random, int count) {
        List<Vec3> contacts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            contacts.add(new Vec3(random.nextDouble(-2, 2), random.nextDouble(-0.8, 0.8), random.nextDouble(-0.1, 0.1)));
        }
        return contacts;
    }

    private static Vec3 balance(Random random, List<Vec3> contacts) {
        Vec3 sum = Vec3.ZERO;
        double weights = 0;
        for (Vec3 contact : contacts) {
            double weight = random.nextDouble(0.05, 1);
            sum = sum.plus(contact.times(weight));
            weights += weight;
        }
        return new Vec3(sum.x() / weights, sum.y() / weights, random.nextDouble(0.3, 1.5));
    }

    private static Vec3 direction(double angle) {
        return new Vec3(Math.cos(angle), Math.sin(angle), 0);
    }

    /** Brute force: a line through two contacts with all others on one side is an edge; the nearest one gives the margin. */
    private static double marginByHalfPlanes(List<Vec3> contacts, Vec3 point) {
        double least = Double.POSITIVE_INFINITY;
        for (Vec3 a : contacts) {
            for (Vec3 b : contacts) {
                Vec3 along = new Vec3(b.x() - a.x(), b.y() - a.y(), 0);
                if (along.norm() > 0) {
                    Vec3 inward = Vec3.UP.cross(along.unit());
                    if (contacts.stream().allMatch(c -> c.minus(a).dot(inward) >= -1e-12)) {
                        least = Math.min(least, point.minus(a).dot(inward));
                    }
                }
            }
        }
        return least;
    }

    @Property(seed = "6101", tries = 300)
    void hullMarginByHalfPlanes(@ForAll long seed, @ForAll @IntRange(min = 3, max = 12) int count) {
        Random random = new Random(seed);
        List<Vec3> contacts = contacts(random, count);
        SupportPolygon polygon = SupportPolygon.of(contacts);
        Vec3 point = new Vec3(random.nextDouble(-2, 2), random.nextDouble(-0.8, 0.8), 0);
        assertEquals(marginByHalfPlanes(contacts, point), polygon.margin(point), 1e-12);
        assertEquals(polygon.margin(point) > 0, CastorStates.of(contacts, point, W).stands(),
                "inside the hull and carried by some three castors is the same");
    }

    @Property(seed = "6102", tries = 100)
    void gridContactsWithDoublesAndLines(@ForAll long seed, @ForAll @IntRange(min = 1, max = 14) int count) {
        Random random = new Random(seed);
        List<Vec3> contacts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            contacts.add(new Vec3(random.nextInt(4), random.nextInt(3), 0));
        }
        SupportPolygon polygon = SupportPolygon.of(contacts);
        double half = marginByHalfPlanes(contacts, new Vec3(1.4, 0.9, 0));
        if (polygon.kind() == SupportKind.AREA) {
            assertEquals(half, polygon.margin(new Vec3(1.4, 0.9, 0)), 1e-12);
        } else {
            long places = contacts.stream().distinct().count();
            assertEquals(places == 1 ? SupportKind.POINT : SupportKind.LINE, polygon.kind());
        }
    }

    @Property(seed = "6103", tries = 100)
    void mirrorShiftAndScale(@ForAll long seed, @ForAll @IntRange(min = 3, max = 8) int count,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 6.28) double angle) {
        Random random = new Random(seed);
        List<Vec3> contacts = contacts(random, count);
        Vec3 balance = balance(random, contacts);
        Vec3 shift = new Vec3(random.nextDouble(-5, 5), random.nextDouble(-5, 5), 0);
        FloorSlope slope = new FloorSlope(direction(random.nextDouble(0, 6.28)), random.nextDouble(0, 0.05));
        FloorSlope mirroredSlope = new FloorSlope(mirror(slope.downhill()), slope.angle());
        SupportPolygon polygon = SupportPolygon.of(contacts);
        double push = PushOver.of(polygon, balance, W, direction(angle), 1.2, slope).tipForce();
        double mirrored = PushOver.of(SupportPolygon.of(contacts.stream().map(TippingPropertyTest::mirror).toList()),
                mirror(balance), W, mirror(direction(angle)), 1.2, mirroredSlope).tipForce();
        double shifted = PushOver.of(SupportPolygon.of(contacts.stream().map(shift::plus).toList()), balance.plus(shift), W,
                direction(angle), 1.2, slope).tipForce();
        assertEquals(push, mirrored, 1e-7 * W);
        assertEquals(push, shifted, 1e-7 * W);
        assertEquals(3 * push, PushOver.of(polygon, balance, 3 * W, direction(angle), 1.2, slope).tipForce(), 1e-7 * W);
        assertEquals(push / 2, PushOver.of(polygon, balance, W, direction(angle), 2.4, slope).tipForce(), 1e-7 * W);
    }

    private static Vec3 mirror(Vec3 point) {
        return new Vec3(point.x(), -point.y(), point.z());
    }

    /** Bisection on the push until the pressure point leaves the contacts, found by half planes, not by the hull. */
    @Property(seed = "6104", tries = 100)
    void pushByBisectionOnThePressurePoint(@ForAll long seed, @ForAll @IntRange(min = 3, max = 8) int count,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 6.28) double angle) {
        Random random = new Random(seed);
        List<Vec3> contacts = contacts(random, count);
        Vec3 balance = balance(random, contacts);
        FloorSlope slope = new FloorSlope(direction(random.nextDouble(0, 6.28)), random.nextDouble(0, 0.1));
        double low = 0;
        double high = stands(contacts, balance, slope, direction(angle), 0) ? 100 * W : 0;
        for (int n = 0; n < 80; n++) {
            double middle = (low + high) / 2;
            if (stands(contacts, balance, slope, direction(angle), middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double found = PushOver.of(SupportPolygon.of(contacts), balance, W, direction(angle), 1.1, slope).tipForce();
        assertEquals(low, found, 1e-6 * W);
        double weakest = PushOver.weakest(SupportPolygon.of(contacts), balance, W, 1.1, slope).tipForce();
        assertTrue(weakest <= found + 1e-9 * W, "no direction is weaker than the weakest");
    }

    private static boolean stands(List<Vec3> contacts, Vec3 balance, FloorSlope slope, Vec3 push, double force) {
        double pressed = W * Math.cos(slope.angle());
        Vec3 lever = slope.downhill().times(W * Math.sin(slope.angle()) * balance.z()).plus(push.times(force * 1.1));
        return marginByHalfPlanes(contacts, balance.plus(lever.times(1 / pressed))) > 0;
    }

    @Property(seed = "6105", tries = 100)
    void capacitiesFallWithTheSlope(@ForAll @Scale(4) @DoubleRange(min = 0, max = 0.2) double angle,
            @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.1) double more,
            @ForAll @Scale(4) @DoubleRange(min = 0.3, max = 0.99) double distance) {
        SupportPolygon polygon = SupportPolygon.of(List.of(new Vec3(-1, -1, 0), new Vec3(1, -1, 0), new Vec3(1, distance, 0),
                new Vec3(-1, distance, 0)));
        Vec3 balance = new Vec3(0, 0, 0.9);
        Vec3 right = new Vec3(0, 1, 0);
        FloorSlope gentle = new FloorSlope(right, angle);
        FloorSlope steep = new FloorSlope(right, angle + more);
        TipMargin a = TipMargin.least(polygon, balance, gentle);
        TipMargin b = TipMargin.least(polygon, balance, steep);
        assertTrue(b.tipAngle() < a.tipAngle());
        assertTrue(b.energy(W, steep) < a.energy(W, gentle));
        PushOver easy = PushOver.of(polygon, balance, W, right, 1, gentle).withFriction(W, 0.5, right, gentle);
        PushOver hard = PushOver.of(polygon, balance, W, right, 1, steep).withFriction(W, 0.5, right, steep);
        assertTrue(hard.tipForce() < easy.tipForce());
        assertTrue(hard.slideForce() < easy.slideForce());
    }

    /** The edge found gives the ratio again; the largest mass found gives it as well. */
    @Property(seed = "6106", tries = 100)
    void overhangRoundTrip(@ForAll @Scale(4) @DoubleRange(min = -0.5, max = 0.5) double balance,
            @ForAll @Scale(4) @DoubleRange(min = 0.6, max = 2.5) double person,
            @ForAll @Scale(4) @DoubleRange(min = 50, max = 250) double mass,
            @ForAll @Scale(4) @DoubleRange(min = 1, max = 3) double ratio) {
        double edge = PersonOnOverhang.edgeNeeded(balance, 450, mass, person, ratio);
        assertEquals(ratio, PersonOnOverhang.ratio(edge, balance, 450, mass, person), 1e-9);
        assertEquals(mass, PersonOnOverhang.largestMass(edge, balance, 450, person, ratio), 1e-8 * mass);
    }

    /** A person at the mass that balances over the worst edge brings the common balance point onto that edge. */
    @Property(seed = "6107", tries = 100)
    void ratioOneIsTheEdgeOfFalling(@ForAll long seed, @ForAll @IntRange(min = 3, max = 8) int count) {
        Random random = new Random(seed);
        List<Vec3> contacts = contacts(random, count);
        SupportPolygon polygon = SupportPolygon.of(contacts);
        Vec3 balance = balance(random, contacts);
        Vec3 person = new Vec3(random.nextDouble(-3, 3), random.nextDouble(-2, 2), 0);
        double ratio = PersonOnOverhang.leastRatio(polygon, balance, 450, List.of(new Placed(person, 98)));
        if (Double.isInfinite(ratio)) {
            assertTrue(polygon.margin(person) >= 0);
        } else {
            double mass = 98 * ratio;
            Vec3 common = balance.times(450).plus(person.times(mass)).times(1 / (450 + mass));
            assertEquals(0, polygon.margin(common), 1e-9);
        }
    }

    /** Marching the swing after the hit: just below the critical speed it falls back, just above it goes over. */
    @Property(seed = "6108", tries = 15)
    void kerbHitByMarchingTheSwing(@ForAll @Scale(4) @DoubleRange(min = 0.4, max = 1.3) double height,
            @ForAll @Scale(4) @DoubleRange(min = 0.2, max = 0.9) double distance,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.5) double gyration) {
        KerbHit hit = KerbHit.of(height, distance, gyration);
        assertTrue(goesOver(1.001 * hit.criticalSpeed(), height, distance, gyration));
        assertTrue(!goesOver(0.999 * hit.criticalSpeed(), height, distance, gyration));
        assertTrue(hit.lowSpeed() <= hit.criticalSpeed());
        assertEquals(Constants.GRAVITY * hit.rise(), hit.lowSpeed() * hit.lowSpeed() / 2, 1e-12);
        assertEquals(Math.hypot(height, distance) - height, hit.rise(), 1e-12);
    }

    private static boolean goesOver(double speed, double height, double distance, double gyration) {
        double inertia = gyration + height * height + distance * distance;
        double pull = Constants.GRAVITY * Math.hypot(height, distance) / inertia;
        double angle = Math.atan2(distance, height);
        double rate = -speed * height / inertia;
        double dt = 2e-5;
        while (angle > 0 && rate < 0) {
            rate += pull * Math.sin(angle + rate * dt / 2) * dt;
            angle += rate * dt;
        }
        return angle <= 0;
    }

    /** The work is the greatest rise of the weight along the swing, found by a scan. */
    @Property(seed = "6109", tries = 30)
    void energyByScanningTheSwing(@ForAll @Scale(4) @DoubleRange(min = 0.2, max = 0.9) double distance,
            @ForAll @Scale(4) @DoubleRange(min = 0.3, max = 1.3) double height,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.1) double fall) {
        SupportPolygon polygon = SupportPolygon.of(List.of(new Vec3(-9, -9, 0), new Vec3(9, -9, 0), new Vec3(9, distance, 0),
                new Vec3(-9, distance, 0)));
        Vec3 right = new Vec3(0, 1, 0);
        FloorSlope slope = FloorSlope.ofFall(right, fall);
        TipMargin margin = TipMargin.least(polygon, new Vec3(0, 0, height), slope);
        double greatest = 0;
        for (int n = 0; n < 20_000; n++) {
            double turn = n * 1e-4;
            double up = height * Math.cos(turn) + distance * Math.sin(turn);
            double back = distance * Math.cos(turn) - height * Math.sin(turn);
            double rise = (up - height) * Math.cos(slope.angle()) - (distance - back) * Math.sin(slope.angle());
            greatest = Math.max(greatest, rise);
        }
        assertEquals(W * greatest, margin.energy(W, slope), 1e-6 * W);
    }
}
