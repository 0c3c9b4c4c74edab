package cradlewright.mechanics.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.joint.WeldGroup.Flow;
import cradlewright.mechanics.joint.WeldGroup.Run;
import cradlewright.mechanics.verify.CheckValues;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class FilletWeldTest {

    private static final CheckValues VALUES = CheckValues.load("joint");
    private static final PlanePoint ORIGIN = new PlanePoint(0, 0);
    private static final double B = 0.080;
    private static final double D = 0.120;
    private static final double MM3 = 1e9;

    private static FilletWeld weld(double throat, double fu, WeldSteel steel) {
        return new FilletWeld(throat, fu, steel, 1.25);
    }

    private static PlanePoint at(double u, double v) {
        return new PlanePoint(u, v);
    }

    private static Run run(double u1, double v1, double u2, double v2) {
        return new Run(at(u1, v1), at(u2, v2));
    }

    private static WeldGroup pair() {
        return new WeldGroup(List.of(run(0, 0, 0, D), run(B, 0, B, D)));
    }

    @Test
    void publishedStrengths() {
        FilletWeld s275 = weld(0.0042, 410e6, WeldSteel.S275);
        VALUES.check("weld.S275.strength", s275.shearStrength() / 1e6);
        VALUES.check("weld.S275.per-length", s275.resistancePerLength() / 1e3);
        double length = 2 * s275.effectiveLength(0.150, 2);
        VALUES.check("weld.S275.total-length", length * 1e3);
        VALUES.check("weld.S275.total", length * s275.resistancePerLength() / 1e3);
        VALUES.check("weld.S235.strength", weld(0.004, 360e6, WeldSteel.S235).shearStrength() / 1e6);
        VALUES.check("weld.S355.strength", weld(0.004, 470e6, WeldSteel.S355).shearStrength() / 1e6);
        VALUES.check("weld.S460.strength", weld(0.004, 540e6, WeldSteel.S420_AND_OTHERS).shearStrength() / 1e6);
        VALUES.check("weld.S355.strength-510", weld(0.003, 510e6, WeldSteel.S355).shearStrength() / 1e6);
        VALUES.check("weld.S355.per-length-510", weld(0.003, 510e6, WeldSteel.S355).resistancePerLength() / 1e3);
    }

    @Test
    void directionalMethodAgreesAlongTheWeldAndNeverGivesLess() {
        double fu = 360e6;
        double a = 0.004;
        double simple = weld(a, fu, WeldSteel.S235).resistancePerLength();
        double limit = fu / (0.80 * 1.25);
        VALUES.check("weld.directional", a * limit / Math.sqrt(3) / simple);
        for (int degrees = 0; degrees < 360; degrees += 5) {
            double sigma = Math.cos(Math.toRadians(degrees)) / a;
            double tau = Math.sin(Math.toRadians(degrees)) / a;
            double directional = limit / Math.sqrt(sigma * sigma + 3 * tau * tau);
            directional = Math.min(directional, Math.abs(sigma) > 0 ? 0.9 * fu / 1.25 / Math.abs(sigma) : directional);
            assertTrue(simple <= directional * (1 + 1e-9), "simple method is on the safe side at " + degrees + " degrees");
        }
    }

    @Test
    void throatAndLength() {
        assertEquals(0.010 * Math.cos(Math.toRadians(45)), FilletWeld.throatOfLeg(0.010), 1e-12, "height of the triangle");
        assertEquals(0.0042, FilletWeld.throatOfLeg(0.006), 0.00005, "6 mm leg: published worked example takes 4.2 mm");
        VALUES.check("weld.least-throat", FilletWeld.LEAST_THROAT * 1e3);
        assertEquals(0, weld(0.0029, 360e6, WeldSteel.S235).resistancePerLength());
        assertTrue(weld(0.003, 360e6, WeldSteel.S235).resistancePerLength() > 0);
        FilletWeld w = weld(0.004, 360e6, WeldSteel.S235);
        assertEquals(0, w.effectiveLength(0.0379, 2), "29.9 mm left is below 30 mm");
        assertEquals(0.030, w.effectiveLength(0.038, 2), 1e-12);
        assertEquals(0.034, w.effectiveLength(0.038, 1), 1e-12);
        assertEquals(0.038, w.effectiveLength(0.038, 0), 1e-12);
        assertEquals(0, weld(0.006, 360e6, WeldSteel.S235).effectiveLength(0.0359, 0), "below six throats");
        assertEquals(0.036, weld(0.006, 360e6, WeldSteel.S235).effectiveLength(0.036, 0), 1e-12, "six throats");
        VALUES.check("weld.long-lap", w.longLapFactor(300 * 0.004));
        assertEquals(1, w.longLapFactor(150 * 0.004), 1e-12);
        assertEquals(1, w.longLapFactor(0.05), 1e-12);
        assertEquals(0, w.longLapFactor(10), 1e-12);
    }

    /** Numbers after others than the source of the formula. */
    @Test
    void secondSources() {
        VALUES.check("second.weld.effective", weld(0.005, 360e6, WeldSteel.S235).effectiveLength(0.100, 2) * 1e3);
        VALUES.check("second.weld.shortest-thick", shortestRun(0.008) * 1e3);
        VALUES.check("second.weld.shortest-thin", shortestRun(0.004) * 1e3);
        VALUES.check("second.weld.long-lap", weld(0.004, 360e6, WeldSteel.S235).longLapFactor(225 * 0.004));
        VALUES.check("second.weld.long-lap-limit", weld(0.004, 360e6, WeldSteel.S235).longLapFactor(150 * 0.004));
    }

    /** Shortest run with both ends open that still counts, by bisection, m. */
    private static double shortestRun(double throat) {
        FilletWeld weld = weld(throat, 360e6, WeldSteel.S235);
        double low = 2 * throat;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (weld.effectiveLength(middle, 2) > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    @Test
    void findingsNameTheRule() {
        FilletWeld thin = weld(0.002, 360e6, WeldSteel.S235);
        assertEquals(2, thin.findings(0.003, false).size());
        assertTrue(thin.findings(0.003, false).get(0).contains("4.5.2(2)"));
        assertEquals(List.of(), weld(0.003, 360e6, WeldSteel.S235).findings(0.003, true));
        assertEquals(1, weld(0.003, 360e6, WeldSteel.S235).findings(0.003, false).size());
        assertEquals(List.of(), weld(0.003, 360e6, WeldSteel.S235).findings(0.004, false));
        assertEquals(1, weld(0.003, 360e6, WeldSteel.S235).findings(0.00249, true).size());
        assertEquals(List.of(), weld(0.003, 360e6, WeldSteel.S235).findings(0.0025, true), "thinnest hollow section");
    }

    @Test
    void lineProperties() {
        WeldGroup box = new WeldGroup(List.of(run(0, 0, B, 0), run(B, 0, B, D), run(B, D, 0, D), run(0, D, 0, 0)));
        VALUES.check("weld-line.rectangle.polar", box.polarMoment() * MM3);
        VALUES.check("weld-line.rectangle.bending", box.bendingMomentAboutU() * MM3);
        assertEquals(2 * (B + D), box.length(), 1e-12);
        VALUES.check("weld-line.pair.polar", pair().polarMoment() * MM3);
        VALUES.check("weld-line.pair.bending", pair().bendingMomentAboutU() * MM3);
        WeldGroup flanges = new WeldGroup(List.of(run(0, 0, B, 0), run(0, D, B, D)));
        VALUES.check("weld-line.flanges.bending", flanges.bendingMomentAboutU() * MM3);
        assertEquals(B * B * B / 6, flanges.bendingMomentAboutV(), 1e-15, "two lines b: b3/6");
        WeldGroup angle = new WeldGroup(List.of(run(0, 0, B, 0), run(0, 0, 0, D)));
        VALUES.check("weld-line.angle.polar", angle.polarMoment() * MM3);
        WeldGroup channel = new WeldGroup(List.of(run(0, 0, B, 0), run(0, 0, 0, D), run(0, D, B, D)));
        VALUES.check("weld-line.channel.polar", channel.polarMoment() * MM3);
        VALUES.check("weld-line.channel.centroid", channel.centroid().u() * 1e3);
    }

    @Test
    void bracketsOnTwoLines() {
        GroupLoad offPlane = new GroupLoad(pair().centroid(), 0, -6e3, 0, 6e3 * 0.150, 0, 0);
        VALUES.check("weld-group.bracket", pair().worst(offPlane).resultant() / 1e3);
        GroupLoad beside = new GroupLoad(at(B / 2 + 0.200, D / 2), 0, -6e3, 0, 0, 0, 0);
        VALUES.check("weld-group.torsion", pair().worst(beside).resultant() / 1e3);
    }

    /** Another route: each run cut into short pieces, least-norm equilibrium of the pieces, no centroids or second moments. */
    @Property(seed = "20240605", tries = 10)
    void flowsAgreeWithManyShortPieces(@ForAll long seed) {
        Random random = new Random(seed);
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            runs.add(new Run(point(random), point(random)));
        }
        GroupLoad load = new GroupLoad(point(random), force(random), force(random), force(random), force(random), force(random),
                force(random));
        int pieces = 400;
        int n = runs.size() * pieces;
        double[][] inPlane = new double[3][2 * n];
        double[][] outOfPlane = new double[3][n];
        double[] root = new double[n];
        for (int k = 0; k < n; k++) {
            Run r = runs.get(k / pieces);
            double s = (k % pieces + 0.5) / pieces;
            double u = r.from().u() + s * (r.to().u() - r.from().u()) - load.at().u();
            double v = r.from().v() + s * (r.to().v() - r.from().v()) - load.at().v();
            // scaled unknowns q sqrt(l) make the energy of the pieces the plain sum of squares
            root[k] = Math.sqrt(r.length() / pieces);
            inPlane[0][2 * k] = root[k];
            inPlane[1][2 * k + 1] = root[k];
            inPlane[2][2 * k] = -v * root[k];
            inPlane[2][2 * k + 1] = u * root[k];
            outOfPlane[0][k] = root[k];
            outOfPlane[1][k] = v * root[k];
            outOfPlane[2][k] = -u * root[k];
        }
        double[] shear = Equilibrium.leastNorm(inPlane, new double[] {load.shearU(), load.shearV(), load.torsion()});
        double[] pull = Equilibrium.leastNorm(outOfPlane, new double[] {load.axial(), load.momentU(), load.momentV()});
        List<Flow> flows = new WeldGroup(runs).flows(load);
        double largest = flows.stream().mapToDouble(Flow::resultant).max().orElseThrow();
        for (int i = 0; i < runs.size(); i++) {
            for (boolean end : new boolean[] {false, true}) {
                int k = i * pieces + (end ? pieces - 1 : 0);
                int next = end ? k - 1 : k + 1;
                Flow flow = flows.get(2 * i + (end ? 1 : 0));
                // half a piece beyond the middle of the last one
                assertEquals(ends(shear[2 * k] / root[k], shear[2 * next] / root[next]), flow.alongU(), 1e-4 * largest);
                assertEquals(ends(shear[2 * k + 1] / root[k], shear[2 * next + 1] / root[next]), flow.alongV(), 1e-4 * largest);
                assertEquals(ends(pull[k] / root[k], pull[next] / root[next]), flow.pull(), 1e-4 * largest);
            }
        }
    }

    private static double ends(double last, double before) {
        return 1.5 * last - 0.5 * before;
    }

    @Property(seed = "20240606", tries = 200)
    void flowsBalanceTheLoad(@ForAll long seed) {
        Random random = new Random(seed);
        List<Run> runs = List.of(new Run(point(random), point(random)), new Run(point(random), point(random)),
                new Run(point(random), point(random)));
        GroupLoad load = new GroupLoad(ORIGIN, force(random), force(random), force(random), force(random), force(random),
                force(random));
        List<Flow> flows = new WeldGroup(runs).flows(load);
        double[] sum = new double[6];
        for (int i = 0; i < runs.size(); i++) {
            // a flow linear along a run: Simpson over both ends and the middle is exact for its moments
            Flow a = flows.get(2 * i);
            Flow b = flows.get(2 * i + 1);
            Flow c = new Flow(at((a.at().u() + b.at().u()) / 2, (a.at().v() + b.at().v()) / 2), (a.alongU() + b.alongU()) / 2,
                    (a.alongV() + b.alongV()) / 2, (a.pull() + b.pull()) / 2);
            add(sum, a, runs.get(i).length() / 6);
            add(sum, b, runs.get(i).length() / 6);
            add(sum, c, runs.get(i).length() * 4 / 6);
        }
        double[] wanted = {load.shearU(), load.shearV(), load.axial(), load.momentU(), load.momentV(), load.torsion()};
        for (int i = 0; i < 6; i++) {
            assertEquals(wanted[i], sum[i], 1e-6 * 2e4, "component " + i);
        }
    }

    private static void add(double[] sum, Flow f, double length) {
        double u = f.at().u();
        double v = f.at().v();
        sum[0] += f.alongU() * length;
        sum[1] += f.alongV() * length;
        sum[2] += f.pull() * length;
        sum[3] += v * f.pull() * length;
        sum[4] -= u * f.pull() * length;
        sum[5] += (u * f.alongV() - v * f.alongU()) * length;
    }

    @Test
    void aStraightWeldDoesNotHoldTheMomentAboutItself() {
        WeldGroup line = new WeldGroup(List.of(run(0, 0, 0.1, 0)));
        assertThrows(IllegalArgumentException.class, () -> line.worst(new GroupLoad(ORIGIN, 0, 0, 0, 10, 0, 0)));
        assertEquals(10 * 0.05 / (1e-3 / 12), line.worst(new GroupLoad(at(0.05, 0), 0, 0, 0, 0, 10, 0)).resultant(), 1e-6);
    }

    @Test
    void badInputIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> weld(0, 360e6, WeldSteel.S235));
        assertThrows(IllegalArgumentException.class, () -> weld(0.004, Double.NaN, WeldSteel.S235));
        assertThrows(IllegalArgumentException.class, () -> weld(0.004, 360e6, null));
        assertThrows(IllegalArgumentException.class, () -> new FilletWeld(0.004, 360e6, WeldSteel.S235, 10.05));
        assertThrows(IllegalArgumentException.class, () -> weld(0.004, 360e6, WeldSteel.S235).effectiveLength(0.1, 3));
        assertThrows(IllegalArgumentException.class, () -> new Run(ORIGIN, ORIGIN));
        assertThrows(IllegalArgumentException.class, () -> new WeldGroup(List.of()));
    }

    private static PlanePoint point(Random random) {
        return at(random.nextDouble() - 0.5, random.nextDouble() - 0.5);
    }

    private static double force(Random random) {
        return 2e4 * (random.nextDouble() - 0.5);
    }
}
