package cradlewright.mechanics.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.verify.CheckValues;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class BoltGroupTest {

    private static final CheckValues VALUES = CheckValues.load("joint");
    private static final PlanePoint ORIGIN = new PlanePoint(0, 0);

    private static PlanePoint at(double u, double v) {
        return new PlanePoint(u, v);
    }

    private static BoltGroup four(double u, double v) {
        return new BoltGroup(List.of(at(-u, v), at(-u, -v), at(u, v), at(u, -v)));
    }

    @Test
    void bracketOfTheMachineDesignBook() {
        BoltGroup group = four(0.075, 0.060);
        GroupLoad load = new GroupLoad(at(0.425, 0), 0, -16e3, 0, 0, 0, 0);
        List<BoltForce> forces = group.forcesAboutCentroid(load, 1);
        VALUES.check("D2.near", forces.get(0).shear() / 1e3);
        VALUES.check("D2.near", forces.get(1).shear() / 1e3);
        VALUES.check("D2.far", forces.get(2).shear() / 1e3);
        VALUES.check("D2.far.book", forces.get(3).shear() / 1e3);
        VALUES.check("D2.radius", group.bolts().get(0).minus(group.centroid()).norm() * 1e3);
        assertEquals(4 * (0.075 * 0.075 + 0.060 * 0.060), group.polarMoment(), 1e-15);
    }

    @Test
    void bracketThatOpensAboutItsToe() {
        BoltGroup group = new BoltGroup(List.of(at(-0.05, 0.040), at(0.05, 0.040), at(-0.05, 0.160), at(0.05, 0.160)));
        PlateOutline outline = new PlateOutline(-0.08, 0.08, 0, 0.2);
        GroupLoad load = new GroupLoad(at(0, 0.1), 0, -6e3, 0, 6e3 * 0.25, 0, 0);
        List<BoltForce> forces = group.forcesAboutToe(load, outline, 1);
        for (int i = 0; i < 4; i++) {
            VALUES.check(i < 2 ? "D3.low" : "D3.high", forces.get(i).tension() / 1e3);
            VALUES.check("D3.shear", forces.get(i).shear() / 1e3);
        }
        VALUES.check("D3.centroid", group.forcesAboutCentroid(load, 1).get(3).tension() / 1e3);
        assertEquals(0, group.forcesAboutCentroid(load, 1).get(0).tension(), "the pressed side gets no tension");
        BoltForce pried = group.forcesAboutToe(load, outline, 1.4).get(2);
        assertEquals(1.4 * forces.get(2).tension(), pried.tension(), 1e-9);
        assertEquals(forces.get(2).shear(), pried.shear(), 1e-9, "prying adds no shear");
    }

    @Test
    void eachOpeningDirectionHasItsOwnToe() {
        BoltGroup group = four(0.05, 0.06);
        PlateOutline outline = new PlateOutline(-0.07, 0.07, -0.1, 0.1);
        double up = group.forcesAboutToe(new GroupLoad(ORIGIN, 0, 0, 0, 100, 0, 0), outline, 1).get(0).tension();
        double down = group.forcesAboutToe(new GroupLoad(ORIGIN, 0, 0, 0, -100, 0, 0), outline, 1).get(1).tension();
        assertEquals(up, down, 1e-12);
        assertEquals(100 * 0.16 / (2 * (0.16 * 0.16 + 0.04 * 0.04)), up, 1e-9);
        BoltForce left = group.forcesAboutToe(new GroupLoad(ORIGIN, 0, 0, 0, 0, 100, 0), outline, 1).get(0);
        BoltForce right = group.forcesAboutToe(new GroupLoad(ORIGIN, 0, 0, 0, 0, -100, 0), outline, 1).get(2);
        assertEquals(left.tension(), right.tension(), 1e-12);
        assertEquals(100 * 0.12 / (2 * (0.12 * 0.12 + 0.02 * 0.02)), left.tension(), 1e-9);
    }

    @Property(seed = "20240601", tries = 200)
    void forcesBalanceTheLoadAndTakeTheLeastEnergy(@ForAll long seed) {
        Random random = new Random(seed);
        BoltGroup group = randomGroup(random, 3 + random.nextInt(6));
        // a strong pull keeps every bolt in tension, so that the whole linear field shows
        GroupLoad bend = new GroupLoad(point(random), force(random), force(random), 1e6, force(random) / 50, force(random) / 50,
                force(random));
        List<BoltForce> forces = group.forcesAboutCentroid(bend, 1);
        int n = forces.size();
        double[][] inPlane = new double[3][2 * n];
        double[][] outOfPlane = new double[3][n];
        for (int i = 0; i < n; i++) {
            PlanePoint r = group.bolts().get(i).minus(bend.at());
            inPlane[0][2 * i] = 1;
            inPlane[1][2 * i + 1] = 1;
            inPlane[2][2 * i] = -r.v();
            inPlane[2][2 * i + 1] = r.u();
            outOfPlane[0][i] = 1;
            outOfPlane[1][i] = r.v();
            outOfPlane[2][i] = -r.u();
        }
        double[] shear = Equilibrium.leastNorm(inPlane, new double[] {bend.shearU(), bend.shearV(), bend.torsion()});
        double[] pull = Equilibrium.leastNorm(outOfPlane, new double[] {bend.axial(), bend.momentU(), bend.momentV()});
        for (int i = 0; i < n; i++) {
            BoltForce f = forces.get(i);
            assertEquals(shear[2 * i], f.shearU(), 1e-6 * (1 + f.shear()));
            assertEquals(shear[2 * i + 1], f.shearV(), 1e-6 * (1 + f.shear()));
            assertEquals(Math.max(0, pull[i]), f.tension(), 1e-6 * (1e3 + f.tension()));
        }
    }

    @Property(seed = "20240602", tries = 200)
    void toeTensionsBalanceTheMomentAndStayBelowTheCentroidVariant(@ForAll long seed) {
        Random random = new Random(seed);
        double u = 0.02 + 0.1 * random.nextDouble();
        double v = 0.02 + 0.1 * random.nextDouble();
        double rim = 0.01 + 0.05 * random.nextDouble();
        double moment = force(random);
        BoltGroup group = four(u, v);
        GroupLoad load = new GroupLoad(ORIGIN, 0, 0, 0, moment, 0, 0);
        List<BoltForce> toe = group.forcesAboutToe(load, new PlateOutline(-u - rim, u + rim, -v - rim, v + rim), 1);
        double edge = moment >= 0 ? -v - rim : v + rim;
        double held = 0;
        for (int i = 0; i < 4; i++) {
            held += toe.get(i).tension() * (group.bolts().get(i).v() - edge);
        }
        assertEquals(moment, held, 1e-9 * Math.abs(moment), "moment about the toe");
        double worstToe = toe.stream().mapToDouble(BoltForce::tension).max().orElseThrow();
        double worstCentroid = group.forcesAboutCentroid(load, 1).stream().mapToDouble(BoltForce::tension).max().orElseThrow();
        assertTrue(worstToe <= worstCentroid * (1 + 1e-12), "the centroid variant is the safe one");
    }

    @Property(seed = "20240603", tries = 100)
    void forcesAreLinearInTheLoadAndDoNotDependOnItsPoint(@ForAll long seed) {
        Random random = new Random(seed);
        BoltGroup group = randomGroup(random, 5);
        GroupLoad load = new GroupLoad(point(random), force(random), force(random), force(random), force(random), force(random),
                force(random));
        List<BoltForce> once = group.forcesAboutCentroid(load, 1.3);
        List<BoltForce> twice = group.forcesAboutCentroid(load.times(2).movedTo(point(random)), 1.3);
        for (int i = 0; i < once.size(); i++) {
            assertEquals(2 * once.get(i).shearU(), twice.get(i).shearU(), 1e-6 * (1 + once.get(i).shear()));
            assertEquals(2 * once.get(i).tension(), twice.get(i).tension(), 1e-6 * (1 + once.get(i).tension()));
        }
    }

    @Test
    void compressionDoesNotRelieveTheBolts() {
        BoltGroup group = four(0.05, 0.05);
        PlateOutline outline = new PlateOutline(-0.1, 0.1, -0.1, 0.1);
        GroupLoad bend = new GroupLoad(ORIGIN, 0, 0, 0, 500, 0, 0);
        GroupLoad pressed = new GroupLoad(ORIGIN, 0, 0, -9e3, 500, 0, 0);
        GroupLoad pulled = new GroupLoad(ORIGIN, 0, 0, 9e3, 500, 0, 0);
        double alone = group.forcesAboutToe(bend, outline, 1).get(0).tension();
        assertEquals(alone, group.forcesAboutToe(pressed, outline, 1).get(0).tension(), 1e-9);
        assertEquals(alone + 9e3 / 4, group.forcesAboutToe(pulled, outline, 1).get(0).tension(), 1e-9);
        assertEquals(group.forcesAboutCentroid(bend, 1).get(0).tension(), group.forcesAboutCentroid(pressed, 1).get(0).tension(),
                1e-9);
    }

    @Test
    void oneRowAndOneBolt() {
        BoltGroup row = new BoltGroup(List.of(at(0, 0), at(0.03, 0.04), at(0.06, 0.08)));
        double along = 0.6;
        double across = 0.8;
        // a moment across the row is held, 0.05 m lever on each side
        BoltForce far = row.forcesAboutCentroid(new GroupLoad(row.centroid(), 0, 0, 0, 100 * across, -100 * along, 0), 1).get(2);
        assertEquals(100 / (2 * 0.05), far.tension(), 1e-9);
        assertThrows(IllegalArgumentException.class,
                () -> row.forcesAboutCentroid(new GroupLoad(row.centroid(), 0, 0, 0, 100 * along, 100 * across, 0), 1));
        BoltGroup one = new BoltGroup(List.of(at(0.01, 0.02)));
        BoltForce single = one.forcesAboutCentroid(new GroupLoad(at(0.01, 0.02), 30, 40, 50, 0, 0, 0), 1).get(0);
        assertEquals(50, single.shear(), 1e-12);
        assertEquals(50, single.tension(), 1e-12);
        assertThrows(IllegalArgumentException.class,
                () -> one.forcesAboutCentroid(new GroupLoad(ORIGIN, 30, 40, 0, 0, 0, 0), 1), "torsion on one bolt");
    }

    @Test
    void pryingBounds() {
        VALUES.check("prying.low", Prying.LEAST_STATED);
        VALUES.check("prying.high", Prying.stated(0.008, 0.010));
        assertEquals(1, Prying.stated(0.010, 0.010), "a plate as thick as the bolt counts as rigid");
        VALUES.check("prying.double-curvature", Prying.doubleCurvature(0.030, 0.0375));
        VALUES.check("prying.double-curvature", Prying.doubleCurvature(0.030, 0.090));
        // tee flange, half model: bolt at m from the web, prying force at n from the bolt, hinge moments at web and bolt line
        double m = 0.030;
        double n = 0.020;
        double hinge = 240;
        double prying = hinge / n;
        double bolt = 2 * hinge / m + prying;
        double pull = bolt - prying;
        assertEquals(hinge, bolt * m - prying * (m + n), 1e-9, "moment at the web");
        assertEquals(bolt / pull, Prying.doubleCurvature(m, n), 1e-12, "equilibrium of the flange");
    }

    @Test
    void badInputIsRefused() {
        BoltGroup group = four(0.05, 0.05);
        GroupLoad load = new GroupLoad(ORIGIN, 0, 0, 0, 1, 0, 0);
        assertThrows(IllegalArgumentException.class, () -> new BoltGroup(List.of()));
        assertThrows(IllegalArgumentException.class, () -> new BoltGroup(List.of(ORIGIN, ORIGIN)));
        assertThrows(IllegalArgumentException.class, () -> group.forcesAboutCentroid(load, 0.9));
        assertThrows(IllegalArgumentException.class, () -> group.forcesAboutCentroid(load, 3.01));
        assertThrows(IllegalArgumentException.class,
                () -> group.forcesAboutToe(load, new PlateOutline(-0.04, 0.1, -0.1, 0.1), 1), "bolts off the plate");
        assertThrows(IllegalArgumentException.class, () -> new PlateOutline(0, 0, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new PlanePoint(Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> new GroupLoad(ORIGIN, 0, 0, Double.NaN, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new GroupLoad(null, 0, 0, 0, 0, 0, 0));
        BoltGroup onToe = new BoltGroup(List.of(at(-0.05, -0.1), at(0.05, -0.1)));
        assertThrows(IllegalArgumentException.class,
                () -> onToe.forcesAboutToe(load, new PlateOutline(-0.1, 0.1, -0.1, 0.1), 1), "bolts on the toe hold nothing");
        assertThrows(IllegalArgumentException.class, () -> Prying.doubleCurvature(0.03, 0));
    }

    private static BoltGroup randomGroup(Random random, int count) {
        List<PlanePoint> bolts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            bolts.add(point(random));
        }
        return new BoltGroup(bolts);
    }

    private static PlanePoint point(Random random) {
        return at(random.nextDouble() - 0.5, random.nextDouble() - 0.5);
    }

    private static double force(Random random) {
        return 2e4 * (random.nextDouble() - 0.5);
    }
}
