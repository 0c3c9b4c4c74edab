package cradlewright.analysis.load;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * What heights may be off by, in the ends of the loads. Four equal stands under the corners of a rectangle, a rigid body: a gap at one
 * moves
 * a quarter of its stiffness times the gap from its diagonal to the other, so the loads follow k/4 times the twist of the gaps
 * (own derivation, checked by solving equilibrium and the twist as four equations).
 */
class DoubtfulHeightsTest {

    private static final double G = 9.80665;
    private static final double K = 1e6;
    /** Torsional stiffness of a body that counts as rigid, N*m/rad. */
    private static final double RIGID = 50_000 * 180 / Math.PI;
    private static final int[] TWIST = {1, -1, 1, -1};
    private static final long SEED = 20261125L;

    /** 4000 N in the middle of 1.8 m by 1.0 m; gaps and what they are off by of FL, FR, RR, RL, m. */
    private static VisitShop stands(double[] gaps, double[] u) {
        VisitShop shop = new VisitShop(CarrierKind.STANDS).part("body", 4000 / G, 0, 0, 0.4);
        shop.torsion = Optional.of(VisitShop.measured(RIGID));
        String[] names = {"FL", "FR", "RR", "RL"};
        for (int i = 0; i < names.length; i++) {
            shop.touch(names[i]).at(i < 2 ? -0.9 : 0.9, i == 0 || i == 3 ? -0.5 : 0.5, 0).stiff(K).low(gaps[i], u[i]);
        }
        return shop;
    }

    private static List<Carried> carried(VisitShop shop) {
        Loads loads = shop.read(new LoadsKey("car", "visit", Situation.atRest(), false));
        assertEquals(Loads.Outcome.FOUND, loads.outcome(), loads.reason());
        return loads.supports();
    }

    /** Solves forces and moments in balance, and the twist of the settled corners zero, by elimination. */
    private static double[] byFourEquations(double[] gaps) {
        double[][] a = {{1, 1, 1, 1, 4000}, {-0.9, -0.9, 0.9, 0.9, 0}, {-0.5, 0.5, 0.5, -0.5, 0}, {0, 0, 0, 0, 0}};
        for (int i = 0; i < 4; i++) {
            a[3][i] = TWIST[i] / K;
            a[3][4] -= TWIST[i] * gaps[i];
        }
        for (int p = 0; p < 4; p++) {
            int best = p;
            for (int r = p + 1; r < 4; r++) {
                best = Math.abs(a[r][p]) > Math.abs(a[best][p]) ? r : best;
            }
            double[] pivot = a[best];
            a[best] = a[p];
            a[p] = pivot;
            for (int r = 0; r < 4; r++) {
                double factor = r == p ? 0 : a[r][p] / pivot[p];
                for (int c = p; c < 5; c++) {
                    a[r][c] -= factor * pivot[c];
                }
            }
        }
        return new double[] {a[0][4] / a[0][0], a[1][4] / a[1][1], a[2][4] / a[2][2], a[3][4] / a[3][3]};
    }

    @Test
    void fourStandsByTheClosedForm() {
        // FL: 4000/4 - 250 N/mm * 2.8 mm = 300 N; give or take 2 * 250 N/mm * sqrt(0.5^2 + 3 * 0.1^2) mm = 264.575 N.
        double[] gaps = {0.0028, 0, 0, 0};
        double[] u = {0.0005, 0.0001, 0.0001, 0.0001};
        double off = 2 * K / 4 * Math.sqrt(0.0005 * 0.0005 + 3 * 0.0001 * 0.0001);
        assertEquals(264.575, off, 1e-3);
        List<Carried> carried = carried(stands(gaps, u));
        double[] four = byFourEquations(gaps);
        for (int i = 0; i < 4; i++) {
            assertEquals(1000 - TWIST[i] * 700, carried.get(i).force(), 1e-6);
            assertEquals(four[i], carried.get(i).force(), 1e-6);
            assertEquals(four[i] - off, carried.get(i).low(), 1e-6);
            assertEquals(four[i] + off, carried.get(i).high(), 1e-6);
        }
    }

    @Test
    void theLeastIsWhatTheFourEquationsGiveAtTheWorstGaps() {
        double[] gaps = {0.0012, 0.0003, 0, 0.0001};
        double[] u = {0.0003, 0.0001, 0.0004, 0.0002};
        double[] slope = new double[4];
        double variance = 0;
        for (int a = 0; a < 4; a++) {
            double[] there = gaps.clone();
            there[a] += 1e-3;
            slope[a] = (byFourEquations(there)[0] - byFourEquations(gaps)[0]) / 1e-3;
            variance += Math.pow(slope[a] * u[a], 2);
        }
        double[] worst = gaps.clone();
        for (int a = 0; a < 4; a++) {
            worst[a] -= 2 * u[a] * u[a] * slope[a] / Math.sqrt(variance);
        }
        assertEquals(byFourEquations(worst)[0], carried(stands(gaps, u)).get(0).low(), 1e-6);
    }

    @Test
    void whereOneLiftsTheOthersAreSolvedAnew() {
        // FL 125 N at a gap of 3.5 mm; at 4.0 mm and beyond FL and RR hang free and FR and RL carry half each, not 1875 + 250 N.
        List<Carried> carried = carried(stands(new double[] {0.0035, 0, 0, 0}, new double[] {0.0005, 0, 0, 0}));
        assertEquals(125, carried.get(0).force(), 1e-6);
        assertEquals(0, carried.get(0).low(), 1e-6);
        assertEquals(375, carried.get(0).high(), 1e-6);
        assertEquals(2000, carried.get(1).high(), 1e-6);
        // Hanging free by 1 mm, and back to 250 N at the near end of 3.0 mm.
        List<Carried> free = carried(stands(new double[] {0.005, 0, 0, 0}, new double[] {0.001, 0, 0, 0}));
        assertEquals(0, free.get(0).force(), 1e-6);
        assertEquals(250, free.get(0).high(), 1e-3);
    }

    @Test
    void massAndHeightsJoinByTheRootOfTheSumOfSquares() {
        // 1 % of 4000 N is 10 N at each corner; 0.1 mm at FL is 25 N: 2 * sqrt(10^2 + 25^2) (JCGM 100, 5.1.2; from memory).
        VisitShop shop = stands(new double[4], new double[] {0.0001, 0, 0, 0});
        shop.shellParts.clear();
        shop.partsOn.clear();
        shop.part("body", new Value(4000 / G, 40 / G, Source.WEIGHED),
                new Vec3(0, 0, 0.4), 0);
        assertEquals(1000 - 2 * Math.hypot(10, 25), carried(shop).get(0).low(), 1e-6);
    }

    @Test
    void withoutDoubtTheEndsAreWhatTheyWereAndMoreDoubtWidensThem() {
        System.out.println("seed " + SEED);
        Random random = new Random(SEED);
        for (int run = 0; run < 20; run++) {
            double[] gaps = random.doubles(4, 0, 0.005).toArray();
            List<Carried> sure = carried(stands(gaps, new double[4]));
            List<Carried> before = sure;
            for (double u = 0.0001; u < 0.001; u *= 2) {
                List<Carried> now = carried(stands(gaps, new double[] {u, u / 2, u, u / 3}));
                for (int i = 0; i < 4; i++) {
                    String where = "run " + run + ", seed " + SEED + ", support " + i + ", u " + u;
                    assertEquals(sure.get(i).force(), now.get(i).force(), 0, where);
                    assertEquals(sure.get(i).force(), sure.get(i).low(), 0, where);
                    assertEquals(sure.get(i).force(), sure.get(i).high(), 0, where);
                    assertTrue(now.get(i).low() <= before.get(i).low() + 1e-6, where);
                    assertTrue(now.get(i).high() >= before.get(i).high() - 1e-6, where);
                }
                before = now;
            }
        }
    }

    @Test
    void turningEverythingChangesNoEnd() {
        double[] gaps = {0.0028, 0.0004, 0, 0.0001};
        double[] u = {0.0005, 0.0001, 0.0002, 0.0003};
        VisitShop turned = stands(gaps, u);
        turned.heading = 0.7;
        turned.shift = new Vec3(7, -3, 0.4);
        List<Carried> straight = carried(stands(gaps, u));
        List<Carried> there = carried(turned);
        assertArrayEquals(straight.stream().mapToDouble(Carried::low).toArray(), there.stream().mapToDouble(Carried::low).toArray(), 1e-5);
        assertArrayEquals(straight.stream().mapToDouble(Carried::high).toArray(), there.stream().mapToDouble(Carried::high).toArray(),
                1e-5);
    }

    @Test
    void aShellOfKnownStiffnessFeelsHeightsLess() {
        // 3390 N m/deg (test of an integral body, Motor Vehicle Structures, p. 44): 109.308 N/mm instead of the 250 N/mm of a rigid body;
        // the same by a four-degree finite-element model. Nothing twists at equal heights, so the stiffness of the shell adds no step.
        VisitShop shop = stands(new double[4], new double[] {0.0005, 0, 0, 0});
        shop.torsion = Optional.of(VisitShop.measured(3390 * 180 / Math.PI));
        assertEquals(1000 - 109.308, carried(shop).get(0).low(), 1e-3);
        assertEquals(1000 + 109.308, carried(shop).get(1).high(), 1e-3);
        shop.torsion = Optional.empty();
        assertEquals(750, carried(shop).get(0).low(), 1e-3);
    }
}
