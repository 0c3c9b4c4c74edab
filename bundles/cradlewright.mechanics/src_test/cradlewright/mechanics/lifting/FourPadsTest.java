package cradlewright.mechanics.lifting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.verify.CheckValues;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FourPadsTest {

    private static final String[] NAMES = {"FL", "FR", "RR", "RL"};
    private static final double NEWTON_METRE_PER_DEGREE = 180 / Math.PI;

    private final CheckValues values = CheckValues.load("lifting");

    private void check(String row, FourPads.Loads loads, double unit) {
        for (int i = 0; i < 4; i++) {
            values.check(row + "." + NAMES[i], loads.loads().get(i) / unit);
        }
    }

    private static FourPads lift(double low) {
        return new FourPads(List.of(new Pad(0.9, -0.45, 4e5, low), new Pad(0.9, 0.45, 4e5, 0), new Pad(-0.9, 0.50, 2.5e5, 0),
                new Pad(-0.9, -0.50, 2.5e5, 0)), 748 * Constants.GRAVITY, -0.131, 0, 0);
    }

    private static FourPads rectangle(double x, double y, double low) {
        return new FourPads(List.of(new Pad(0.9, -0.5, 1e6, low), new Pad(0.9, 0.5, 1e6, 0), new Pad(-0.9, 0.5, 1e6, 0),
                new Pad(-0.9, -0.5, 1e6, 0)), 4000, x, y, 0);
    }

    @Test
    void padsOfALift() {
        check("G11.level", lift(0).loads(), Constants.GRAVITY);
        check("G11.level", lift(0.008).evenLoads(), Constants.GRAVITY);
        check("G11.8mm", lift(0.008).loads(), Constants.GRAVITY);
        check("G11.20mm", lift(0.020).loads(), Constants.GRAVITY);
        values.check("pads.least-share", FourPads.LEAST_SHARE);
        values.check("G11.lambda", lift(0.008).loads().warp() / Constants.GRAVITY);
        FourPads.LiftOff off = lift(0).whenLowered(0).orElseThrow();
        values.check("G11.lift-off", 1000 * off.distance());
        assertEquals(0, off.pad());
        assertEquals(0, lift(0.020).loads().off().getAsInt());
        assertEquals(0, lift(0.020).whenLowered(2).orElseThrow().distance());
        assertEquals(off.distance() - 0.008, lift(0.008).whenLowered(0).orElseThrow().distance(), 1e-9);
    }

    @Test
    void rectangles() {
        check("B2", rectangle(0.2, 0.05, 0).loads(), 1);
        check("B3.1mm", rectangle(0, 0, 0.001).loads(), 1);
        check("B3.4mm", rectangle(0, 0, 0.004).loads(), 1);
        check("B4", rectangle(0.2, 0.05, 0.006).loads(), 1);
        assertEquals(2, rectangle(0.2, 0.05, 0.006).loads().off().getAsInt());
        check("B4b", rectangle(0.2, -0.12, 0.012).loads(), 1);
    }

    @Test
    void softBodies() {
        String[] row = {"rigid.soft", "3390.soft", "934.soft", "20000.hard", "934.hard"};
        double[] perDegree = {0, 3390, 934, 20_000, 934};
        double[] stiffness = {1e6, 1e6, 1e6, 1e7, 1e7};
        for (int i = 0; i < row.length; i++) {
            double soft = perDegree[i] > 0 ? 1 / (perDegree[i] * NEWTON_METRE_PER_DEGREE) : 0;
            double k = stiffness[i];
            FourPads pads = new FourPads(List.of(new Pad(0.9, -0.5, k, 0), new Pad(0.9, 0.5, k, 0), new Pad(-0.9, 0.5, k, 0),
                    new Pad(-0.9, -0.5, k, 0)), 4000, 0, 0, soft);
            values.check("B5." + row[i] + ".f", pads.loss(0, 0) / 1000);
            values.check("B5." + row[i] + ".d", 1000 * pads.whenLowered(0).orElseThrow().distance());
            assertEquals(pads.loss(0, 0), -pads.loss(1, 0), 1e-6);
            assertEquals(1, pads.whenRaised(0).orElseThrow().pad() % 2);
        }
    }

    @Test
    void agreesWithBruteForceOverAllSetsOfLoadedPads() {
        Random random = new Random(4711);
        int lifted = 0;
        int compared = 0;
        while (compared < 2000) {
            List<Pad> pads = new ArrayList<>();
            double[][] corner = {{1, -0.5}, {1, 0.5}, {-1, 0.5}, {-1, -0.5}};
            for (double[] c : corner) {
                pads.add(new Pad(c[0] + 0.4 * random.nextGaussian() * 0.5, c[1] + 0.15 * random.nextGaussian(),
                        Math.pow(10, 5 + 2 * random.nextDouble()), 0.004 * random.nextGaussian()));
            }
            double x = 0.5 * random.nextGaussian();
            double y = 0.2 * random.nextGaussian();
            double[] brute = bruteForce(pads, 4000, x, y);
            if (brute == null) {
                continue;
            }
            FourPads.Loads ours = new FourPads(pads, 4000, x, y, 0).loads();
            for (int i = 0; i < 4; i++) {
                assertEquals(brute[i], ours.loads().get(i), 1e-5);
            }
            lifted += ours.off().isPresent() ? 1 : 0;
            compared++;
        }
        assertTrue(lifted > 300 && lifted < 1900, "both kinds of state must have been met, lifted " + lifted);
    }

    @Test
    void liftOffIsWhereTheFirstPadIsEmpty() {
        Random random = new Random(815);
        for (int n = 0; n < 200; n++) {
            double d = 0.002 * random.nextDouble();
            for (int pad = 0; pad < 4; pad++) {
                for (int sense = -1; sense <= 1; sense += 2) {
                    List<Pad> pads = new ArrayList<>(List.of(new Pad(0.9, -0.45, 4e5, d), new Pad(1.0, 0.45, 3e5, 0),
                            new Pad(-0.8, 0.50, 2.5e5, 0), new Pad(-0.9, -0.60, 2.5e5, 0)));
                    FourPads start = new FourPads(pads, 6000, 0.05, 0.03, 1e-6);
                    FourPads.LiftOff off = (sense > 0 ? start.whenLowered(pad) : start.whenRaised(pad)).orElseThrow();
                    Pad p = pads.get(pad);
                    pads.set(pad, new Pad(p.x(), p.y(), p.stiffness(), p.low() + sense * (off.distance() - 1e-6)));
                    FourPads.Loads before = new FourPads(pads, 6000, 0.05, 0.03, 1e-6).loads();
                    assertTrue(before.off().isEmpty());
                    assertEquals(off.pad(), before.leastLoaded());
                    pads.set(pad, new Pad(p.x(), p.y(), p.stiffness(), p.low() + sense * (off.distance() + 1e-6)));
                    FourPads.Loads after = new FourPads(pads, 6000, 0.05, 0.03, 1e-6).loads();
                    assertEquals(off.pad(), after.off().getAsInt());
                    assertEquals(1e-6, after.gap() * Math.abs(start.loss(pad, off.pad()) / start.loss(pad, pad)), 1e-6);
                }
            }
        }
    }

    @Test
    void toleranceOfHeightFindsTheWorstOfAllCorners() {
        double least = Double.MAX_VALUE;
        for (int bits = 0; bits < 16; bits++) {
            List<Pad> pads = new ArrayList<>();
            double[][] at = {{0.9, -0.45, 4e5}, {1.0, 0.45, 3e5}, {-0.8, 0.50, 2.5e5}, {-0.9, -0.60, 2.5e5}};
            for (int i = 0; i < 4; i++) {
                pads.add(new Pad(at[i][0], at[i][1], at[i][2], (bits >> i & 1) == 0 ? 0.002 : -0.002));
            }
            least = Math.min(least, new FourPads(pads, 6000, 0.05, 0.03, 0).loads().leastShare());
        }
        FourPads level = new FourPads(List.of(new Pad(0.9, -0.45, 4e5, 0), new Pad(1.0, 0.45, 3e5, 0),
                new Pad(-0.8, 0.50, 2.5e5, 0), new Pad(-0.9, -0.60, 2.5e5, 0)), 6000, 0.05, 0.03, 0);
        assertEquals(least, level.worstWithin(0.002).leastShare(), 1e-12);
        assertTrue(least > 0 && least < level.loads().leastShare());
        assertEquals(0, level.worstWithin(0.05).leastShare());
    }

    @Test
    void aPlaneChangeOfHeightChangesNothingAndMirrorSwapsSides() {
        List<Pad> pads = new ArrayList<>();
        List<Pad> mirrored = new ArrayList<>();
        double[][] at = {{0.9, -0.45, 4e5, 0.003}, {1.0, 0.45, 3e5, 0.001}, {-0.8, 0.50, 2.5e5, 0}, {-0.9, -0.60, 2.5e5, -0.001}};
        List<Pad> tilted = new ArrayList<>();
        for (double[] a : at) {
            pads.add(new Pad(a[0], a[1], a[2], a[3]));
            tilted.add(new Pad(a[0], a[1], a[2], a[3] + 0.01 - 0.02 * a[0] + 0.05 * a[1]));
            mirrored.add(new Pad(a[0], -a[1], a[2], a[3]));
        }
        List<Double> plain = new FourPads(pads, 6000, 0.05, 0.03, 0).loads().loads();
        List<Double> leaning = new FourPads(tilted, 6000, 0.05, 0.03, 0).loads().loads();
        List<Double> other = new FourPads(mirrored, 6000, 0.05, -0.03, 0).loads().loads();
        for (int i = 0; i < 4; i++) {
            assertEquals(plain.get(i), leaning.get(i), 1e-6);
            assertEquals(plain.get(i), other.get(i), 1e-6);
        }
    }

    @Test
    void threePadsInALineLeaveNoWarpInTheFourth() {
        // front pads with a third between them: the rear pad carries by moments alone
        FourPads pads = new FourPads(List.of(new Pad(0, -0.5, 1e6, 0), new Pad(0, 0, 1e6, 0), new Pad(0, 0.5, 1e6, 0),
                new Pad(2, 0, 1e6, 0)), 1000, 0.5, 0, 0);
        assertEquals(250, pads.loads().loads().get(3), 1e-9);
        assertTrue(pads.whenLowered(3).isEmpty());
        assertEquals(250, pads.loads().loads().get(1), 1e-9);
    }

    @Test
    void refusesWhatCannotStand() {
        assertThrows(IllegalArgumentException.class, () -> rectangle(1.0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> rectangle(0, 0.6, 0));
        assertThrows(IllegalArgumentException.class, () -> rectangle(Double.NaN, 0, 0));
        Pad p = new Pad(0, 0, 1, 0);
        assertThrows(IllegalArgumentException.class, () -> new FourPads(List.of(p, p, p, p), 1, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new FourPads(List.of(p, p, p), 1, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Pad(0, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> lift(0).worstWithin(-1));
    }

    /** Rigid plate on springs that only push: tries all sets of four and three loaded pads; null when none is consistent. */
    private static double[] bruteForce(List<Pad> pads, double weight, double x, double y) {
        for (int set : new int[] {15, 14, 13, 11, 7}) {
            double[][] a = new double[3][4];
            double[] rhs = {weight, weight * x, weight * y};
            for (int i = 0; i < 3; i++) {
                a[i][3] = rhs[i];
            }
            for (int p = 0; p < 4; p++) {
                if ((set >> p & 1) != 0) {
                    double[] b = {1, pads.get(p).x(), pads.get(p).y()};
                    for (int i = 0; i < 3; i++) {
                        for (int j = 0; j < 3; j++) {
                            a[i][j] += pads.get(p).stiffness() * b[i] * b[j];
                        }
                        a[i][3] += pads.get(p).stiffness() * b[i] * pads.get(p).low();
                    }
                }
            }
            double[] q = solve(a);
            double[] r = new double[4];
            boolean holds = true;
            for (int p = 0; p < 4; p++) {
                double u = q[0] + q[1] * pads.get(p).x() + q[2] * pads.get(p).y() - pads.get(p).low();
                boolean loaded = (set >> p & 1) != 0;
                r[p] = loaded ? pads.get(p).stiffness() * u : 0;
                holds &= loaded ? r[p] >= 0 : u <= 0;
            }
            if (holds) {
                return r;
            }
        }
        return null;
    }

    private static double[] solve(double[][] a) {
        for (int i = 0; i < 3; i++) {
            int pivot = i;
            for (int k = i + 1; k < 3; k++) {
                pivot = Math.abs(a[k][i]) > Math.abs(a[pivot][i]) ? k : pivot;
            }
            double[] swap = a[i];
            a[i] = a[pivot];
            a[pivot] = swap;
            for (int k = 0; k < 3; k++) {
                if (k != i) {
                    double f = a[k][i] / a[i][i];
                    for (int j = i; j < 4; j++) {
                        a[k][j] -= f * a[i][j];
                    }
                }
            }
        }
        return new double[] {a[0][3] / a[0][0], a[1][3] / a[1][1], a[2][3] / a[2][2]};
    }
}
