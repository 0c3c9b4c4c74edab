package cradlewright.mechanics.mass;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.verify.CheckValues;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CompositionTest {

    private final CheckValues values = CheckValues.load("mass");

    private void check(String row, Balance b) {
        values.check(row + ".m", b.mass());
        values.check(row + ".x", b.point().x());
        values.check(row + ".y", b.point().y());
        values.check(row + ".z", b.point().z());
    }

    @Test
    void sumsOfParts() {
        check("A1.all", Composition.of(SmallCar.ALL));
        check("A1.shell", Composition.of(SmallCar.SHELL));
        check("A1.noeng", Composition.of(SmallCar.ROLLING));
    }

    @Test
    void takingOffEngineAndGearboxGivesTheSumOfTheRest() {
        Balance rest = Composition.of(SmallCar.ALL).minus(SmallCar.ENGINE.balance()).minus(SmallCar.GEARBOX.balance());
        check("A1.noeng", rest);
    }

    @Test
    void secondMomentsOfPoints() {
        SecondMoments s = Composition.secondMoments(SmallCar.ALL);
        values.check("A1.second.xx", s.xx());
        values.check("A1.second.yy", s.yy());
        values.check("A1.second.zz", s.zz());
        values.check("A1.second.xy", s.xy());
        values.check("A1.second.xz", s.xz());
        values.check("A1.second.yz", s.yz());
    }

    @Test
    void secondMomentsByHand() {
        SecondMoments box = SecondMoments.ofBox(12, 3, 4, 5);
        values.check("box.xx", box.xx());
        values.check("box.yy", box.yy());
        values.check("box.zz", box.zz());
        Vec3 middle = new Vec3(5, -4, 2);
        Vec3 apart = new Vec3(1, 2, 3);
        SecondMoments pair = Composition.secondMoments(List.of(MassPoint.exact(2, middle.plus(apart)),
                MassPoint.exact(2, middle.minus(apart))));
        values.check("pair.xx", pair.xx());
        values.check("pair.yy", pair.yy());
        values.check("pair.zz", pair.zz());
        values.check("pair.xy", pair.xy());
        values.check("pair.xz", pair.xz());
        values.check("pair.yz", pair.yz());
        assertEquals(0, pair.about(apart), 1e-12, "about the line through both points");
    }

    @Test
    void boxIsTheSumOfManyPoints() {
        int n = 40;
        List<MassPoint> points = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                for (int k = 0; k < n; k++) {
                    points.add(MassPoint.exact(12.0 / (n * n * n),
                            new Vec3(1.6 * (i + 0.5) / n, 0.9 * (j + 0.5) / n, 1.2 * (k + 0.5) / n)));
                }
            }
        }
        SecondMoments sum = Composition.secondMoments(points);
        SecondMoments box = SecondMoments.ofBox(12, 1.6, 0.9, 1.2);
        // the midpoint sum of x2 misses by 1/n2 of the value
        assertEquals(sum.xx(), box.xx(), box.xx() * 1e-3);
        assertEquals(sum.yy(), box.yy(), box.yy() * 1e-3);
        assertEquals(sum.zz(), box.zz(), box.zz() * 1e-3);
        assertEquals(0, sum.xy(), 1e-12);
    }

    @Property(seed = "11", tries = 200)
    void momentAboutAnAxisIsTheSumOfSquaredDistances(@ForAll @DoubleRange(min = -1, max = 1) double ux,
            @ForAll @DoubleRange(min = -1, max = 1) double uy) {
        Vec3 axis = new Vec3(ux, uy, 0.7).unit();
        Vec3 c = Composition.of(SmallCar.ALL).point();
        double sum = SmallCar.ALL.stream().mapToDouble(p -> {
            double d = p.position().minus(c).cross(axis).norm();
            return p.mass() * d * d;
        }).sum();
        assertEquals(sum, Composition.secondMoments(SmallCar.ALL).about(axis.times(3)), 1e-9 * sum);
    }

    @Property(seed = "12", tries = 200)
    void splittingAPartLeavesAllAsItWas(@ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll @DoubleRange(min = -2, max = 2) double shift) {
        List<MassPoint> split = new ArrayList<>(SmallCar.ROLLING);
        MassPoint whole = split.remove(0);
        // two pieces with the balance point of the whole part
        Vec3 off = new Vec3(shift, -shift, 0.3 * shift);
        split.add(MassPoint.exact(whole.mass() * share, whole.position().plus(off.times(1 - share))));
        split.add(MassPoint.exact(whole.mass() * (1 - share), whole.position().minus(off.times(share))));
        assertSame(Composition.of(SmallCar.ROLLING), Composition.of(split));
    }

    @Property(seed = "13", tries = 200)
    void takingOffAndPuttingBackIsTheIdentity(@ForAll @DoubleRange(min = 1, max = 900) double mass,
            @ForAll @DoubleRange(min = -3, max = 3) double x, @ForAll @DoubleRange(min = -1, max = 1) double y) {
        Balance whole = Composition.of(SmallCar.ALL);
        Balance part = new Balance(mass, new Vec3(x, y, 0.4));
        assertSame(whole, whole.minus(part).plus(part));
        assertSame(whole, whole.plus(part).minus(part));
    }

    @Property(seed = "14", tries = 100)
    void mirrorTurnsOnlyTheSide(@ForAll @DoubleRange(min = -1, max = 1) double y) {
        List<MassPoint> right = List.of(MassPoint.exact(100, new Vec3(1, y, 0.5)), MassPoint.exact(40, new Vec3(2, 0.2, 0.3)));
        List<MassPoint> left = List.of(MassPoint.exact(100, new Vec3(1, -y, 0.5)), MassPoint.exact(40, new Vec3(2, -0.2, 0.3)));
        Vec3 c = Composition.of(right).point();
        assertSame(new Balance(140, new Vec3(c.x(), -c.y(), c.z())), Composition.of(left));
    }

    @Property(seed = "15", tries = 100)
    void orderDoesNotMatter(@ForAll @DoubleRange(min = 0, max = 1000) double seed) {
        List<MassPoint> shuffled = new ArrayList<>(SmallCar.ALL);
        Collections.shuffle(shuffled, new java.util.Random((long) seed));
        assertSame(Composition.of(SmallCar.ALL), Composition.of(shuffled));
    }

    @Test
    void refusesNonsense() {
        assertThrows(IllegalArgumentException.class, () -> Composition.of(List.of()));
        assertThrows(IllegalArgumentException.class, () -> Composition.of(List.of(MassPoint.exact(0, Vec3.ZERO))));
        assertThrows(IllegalArgumentException.class, () -> MassPoint.exact(-1, Vec3.ZERO));
        assertThrows(IllegalArgumentException.class, () -> MassPoint.exact(1, new Vec3(Double.NaN, 0, 0)));
        assertThrows(IllegalArgumentException.class, () -> new Balance(10, Vec3.ZERO).minus(new Balance(10, Vec3.ZERO)));
        assertThrows(IllegalArgumentException.class, () -> Composition.secondMoments(SmallCar.ALL, List.of()));
    }

    private static void assertSame(Balance expected, Balance actual) {
        assertEquals(expected.mass(), actual.mass(), 1e-12 * 2000);
        assertEquals(0, expected.point().minus(actual.point()).norm(), 1e-10);
    }
}
