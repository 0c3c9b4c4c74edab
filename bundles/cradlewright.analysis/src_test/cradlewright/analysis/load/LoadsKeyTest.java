package cradlewright.analysis.load;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.SteelDolly;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is carried, through the public key, against closed forms. Corners are named as seen by the driver: front is -x, right is +y. */
class LoadsKeyTest {

    private static final double G = 9.80665;
    private static final long SEED = 20250314L;

    private static Loads rest(VisitShop shop) {
        return shop.read(new LoadsKey("car", "visit", Situation.atRest(), false));
    }

    private static Loads ask(VisitShop shop, String situation, boolean factored) {
        Situation wanted = shop.read(new SituationsKey("car", "visit")).stream().filter(s -> s.id().equals(situation)).findFirst()
                .orElseThrow();
        return shop.read(new LoadsKey("car", "visit", wanted, factored));
    }

    private static double[] supports(Loads loads) {
        assertEquals(Loads.Outcome.FOUND, loads.outcome(), loads.reason());
        return loads.supports().stream().mapToDouble(Carried::force).toArray();
    }

    private static double[] castors(Loads loads) {
        assertEquals(Loads.Outcome.FOUND, loads.outcome(), loads.reason());
        return loads.castors().stream().mapToDouble(Carried::force).toArray();
    }

    /** 4000 N on a rectangle of 1.8 m by 1.0 m, each corner 1e6 N/m; FL, FR, RR, RL. */
    private static VisitShop rectangle(double x, double y) {
        VisitShop shop = new VisitShop(CarrierKind.STANDS).part("body", 4000 / G, x, y, 0.4);
        shop.touch("FL").at(-0.9, -0.5, 0).stiff(1e6);
        shop.touch("FR").at(-0.9, 0.5, 0).stiff(1e6);
        shop.touch("RR").at(0.9, 0.5, 0).stiff(1e6);
        shop.touch("RL").at(0.9, -0.5, 0).stiff(1e6);
        return shop;
    }

    @Test
    void fourEqualStandsShareByTheClosedForm() {
        // W (1/4 +- ex/2a +- ey/2b): 4000 (0.25 + 0.2/3.6 - 0.05/2) = 1122.222 N at FL (own derivation, checked by equilibrium).
        assertArrayEquals(new double[] {1122.222, 1322.222, 877.778, 677.778}, supports(rest(rectangle(-0.2, 0.05))), 5e-4);
    }

    @Test
    void staticsAllowWhatTheWarpOfFourSupportsAllows() {
        // R = R0 + t (1, -1, 1, -1), t from -877.778 (RR lifts) to 677.778 N (RL lifts); own derivation.
        Loads loads = rest(rectangle(-0.2, 0.05));
        double[] least = loads.supports().stream().mapToDouble(Carried::least).toArray();
        double[] most = loads.supports().stream().mapToDouble(Carried::most).toArray();
        assertArrayEquals(new double[] {244.444, 644.444, 0, 0}, least, 5e-4);
        assertArrayEquals(new double[] {1800, 2200, 1555.556, 1555.556}, most, 5e-4);
    }

    @Test
    void oneShimTooThinTakesFromItsDiagonal() {
        // Own derivation, checked by brute force over all sets of closed supports.
        VisitShop thin = rectangle(0, 0);
        thin.touches.get(0).low(0.001);
        assertArrayEquals(new double[] {750, 1250, 750, 1250}, supports(rest(thin)), 1e-3);
        thin.touches.get(0).low(0.004);
        assertArrayEquals(new double[] {0, 2000, 0, 2000}, supports(rest(thin)), 1e-3);
        VisitShop lifts = rectangle(-0.2, 0.05);
        lifts.touches.get(0).low(0.006);
        assertArrayEquals(new double[] {244.444, 2200, 0, 1555.556}, supports(rest(lifts)), 1e-3);
    }

    @Test
    void theSoftEndOfTheShellIsInTheBounds() {
        // 3390 N m/deg (test of an integral body, Motor Vehicle Structures, p. 44): 1 mm shifts 109.308 N instead of the 250 N of a
        // rigid body; the same numbers by a four-degree finite-element model.
        VisitShop shop = rectangle(0, 0);
        shop.torsion = Optional.of(VisitShop.measured(3390 * 180 / Math.PI));
        shop.touches.get(0).low(0.001);
        Carried thin = rest(shop).support("FL").orElseThrow();
        assertEquals(750, thin.force(), 1e-3);
        assertEquals(750, thin.low(), 1e-3);
        assertEquals(890.692, thin.high(), 1e-3);
        Carried beside = rest(shop).support("FR").orElseThrow();
        assertEquals(1109.308, beside.low(), 1e-3);
        assertEquals(1250, beside.high(), 1e-3);
    }

    /** A and B at x 0, C at x 2, balance point half way: C carries half. */
    private static VisitShop three(Value mass, double u) {
        VisitShop shop = new VisitShop(CarrierKind.STANDS).part("body", mass, new Vec3(1, 0, 0.5), u);
        shop.touch("A").at(0, -0.5, 0);
        shop.touch("B").at(0, 0.5, 0);
        shop.touch("C").at(2, 0, 0);
        return shop;
    }

    @Test
    void bothEndsLieTwoStandardUncertaintiesAway() {
        // C = m g x / 2; u = sqrt((g x/2 * 2 kg)^2 + (m g/2 * 0.01 m)^2) (JCGM 100, 5.1.2; from memory).
        Carried c = rest(three(new Value(100, 2, Source.WEIGHED), 0.01)).support("C").orElseThrow();
        double u = Math.sqrt(Math.pow(G / 2 * 2, 2) + Math.pow(100 * G / 2 * 0.01, 2));
        assertEquals(50 * G, c.force(), 1e-6);
        assertEquals(50 * G + 2 * u, c.high(), 1e-6);
        assertEquals(50 * G - 2 * u, c.low(), 1e-6);
        assertEquals(50 * G, c.least(), 1e-6);
        assertEquals(50 * G, c.most(), 1e-6);
    }

    @Test
    void aGuessWidens() {
        Carried weighed = rest(three(new Value(100, 1, Source.WEIGHED), 0)).support("A").orElseThrow();
        Carried guessed = rest(three(new Value(100, 40, Source.GUESSED), 0)).support("A").orElseThrow();
        assertEquals(weighed.force(), guessed.force(), 1e-9);
        assertEquals(40 * (weighed.high() - weighed.force()), guessed.high() - guessed.force(), 1e-6);
        assertEquals(25 * G - 2 * 10 * G, guessed.low(), 1e-6);
    }

    @Test
    void endsAndStaticsEncloseTheForceAndTheForcesCarryTheWeight() {
        System.out.println("seed " + SEED);
        Random random = new Random(SEED);
        for (int run = 0; run < 40; run++) {
            String where = "run " + run + ", seed " + SEED + ": ";
            VisitShop shop = rectangle(0.6 * (random.nextDouble() - 0.5), 0.4 * (random.nextDouble() - 0.5));
            shop.part("box", new Value(50, 10, Source.GUESSED), new Vec3(random.nextDouble() - 0.5, 0, 1), 0.02);
            shop.touches.forEach(touch -> touch.low(0.002 * random.nextDouble()));
            Loads loads = rest(shop);
            assertEquals(4000 + 50 * G, loads.supports().stream().mapToDouble(Carried::force).sum(), 1e-5);
            for (Carried carried : loads.supports()) {
                assertTrue(carried.low() <= carried.force() && carried.force() <= carried.high(), () -> where + carried);
                assertTrue(carried.least() - 1e-6 <= carried.force() && carried.force() <= carried.most() + 1e-6, () -> where + carried);
            }
        }
    }

    @Test
    void mirroringSwapsLeftAndRight() {
        VisitShop right = rectangle(-0.2, 0.05);
        right.touches.get(0).low(0.0007);
        VisitShop left = rectangle(-0.2, -0.05);
        left.touches.get(1).low(0.0007);
        double[] r = supports(rest(right));
        double[] l = supports(rest(left));
        assertArrayEquals(new double[] {r[1], r[0], r[3], r[2]}, l, 1e-6);
    }

    @Test
    void movingOrTurningEverythingChangesNothing() {
        VisitShop shop = rectangle(-0.2, 0.05);
        shop.touches.get(2).low(0.0007);
        double[] before = supports(rest(shop));
        shop.shift = new Vec3(7, -3, 0.4);
        shop.heading = Math.toRadians(37);
        assertArrayEquals(before, supports(rest(shop)), 1e-6);
    }

    @Test
    void shimsThatFormAPlaneChangeNothingForARigidShell() {
        VisitShop shop = rectangle(-0.2, 0.05);
        double[] gaps = {0, 0.0004, 0.0001, 0};
        double[][] at = {{-0.9, -0.5}, {-0.9, 0.5}, {0.9, 0.5}, {0.9, -0.5}};
        for (int i = 0; i < 4; i++) {
            shop.touches.get(i).low(gaps[i]);
        }
        double[] before = supports(rest(shop));
        for (int i = 0; i < 4; i++) {
            shop.touches.get(i).low(gaps[i] + 0.003 + 0.004 * at[i][0] - 0.002 * at[i][1]);
        }
        assertArrayEquals(before, supports(rest(shop)), 1e-4);
    }

    /** A rigid square dolly of 100 kg with 800 kg on three fixtures; castors of 2e6 N/m at its corners. */
    private static VisitShop onDolly(Value mass) {
        SteelDolly dolly = SteelDolly.square("dolly");
        VisitShop shop = new VisitShop(CarrierKind.DOLLY).part("body", mass, new Vec3(0, 0, 1), 0);
        shop.dolly = Optional.of("dolly");
        double[][] places = {{-0.5, -0.5}, {-0.5, 0.5}, {0.5, 0}};
        for (int i = 0; i < 3; i++) {
            dolly.node("f" + i, places[i][0], places[i][1], 0.2).fixture("fix" + i, "f" + i, Optional.empty());
            shop.touch("s" + i).at(places[i][0], places[i][1], 0.5).on("fix" + i);
        }
        return shop.with(dolly.facts());
    }

    @Test
    void aCastorInAHoleGivesToItsNeighbours() {
        // Each castor 900 kg / 4 = 2206.496 N; a hole of 3 mm shifts k d / 4 = 2e6 * 0.003 / 4 = 1500 N (own derivation).
        VisitShop shop = onDolly(VisitShop.measured(800));
        double even = 900 * G / 4;
        assertArrayEquals(new double[] {even, even, even, even}, castors(rest(shop)), 1e-3);
        Loads hole = ask(shop, "hole.dolly-c0", false);
        assertArrayEquals(new double[] {even - 1500, even + 1500, even + 1500, even - 1500}, castors(hole), 1e-3);
        assertArrayEquals(supports(rest(shop)), supports(hole), 1e-3);
    }

    @Test
    void rollingOverAJointMultipliesEveryWeight() {
        Loads joint = ask(onDolly(VisitShop.measured(800)), "joint", false);
        double even = 1.4 * 900 * G / 4;
        assertArrayEquals(new double[] {even, even, even, even}, castors(joint), 1e-3);
        assertEquals(1.4 * 400 * G, joint.supports().get(2).force(), 1e-3);
    }

    @Test
    void factoredActionsCountTheMassAtItsUpperEnd() {
        // 1.35 on the dolly, 1.5 on what it carries (EN 1990 Table A1.2(B), from memory); 800 kg give or take 2 x 10 kg.
        Loads loads = ask(onDolly(new Value(800, 10, Source.WEIGHED)), "rest", true);
        double even = (1.35 * 100 + 1.5 * 820) * G / 4;
        assertArrayEquals(new double[] {even, even, even, even}, castors(loads), 1e-3);
    }

    /** Two rails of flat bar 50 mm by 20 mm and 2 m long between castors, six fixtures; the dolly is soft when it has its members. */
    private static VisitShop soft(boolean withMembers) {
        SteelDolly dolly = new SteelDolly("dolly");
        VisitShop shop = new VisitShop(CarrierKind.DOLLY).part("body", 800, 0, 0, 1)
                .with(new StockFacts.Flat("bar", "bar", Optional.of(VisitShop.measured(0.05)), Optional.of(VisitShop.measured(0.02))));
        shop.torsion = Optional.of(VisitShop.measured(1e9));
        for (String side : List.of("L", "R")) {
            double y = side.equals("L") ? -0.5 : 0.5;
            for (int i = 0; i < 3; i++) {
                String node = side + i;
                dolly.node(node, i - 1, y, 0.2).fixture("fix" + node, node, Optional.empty());
                shop.touch("s" + node).at(i - 1, y, 0.5).on("fix" + node).stiff(1e6);
            }
            dolly.castor("c" + side + 0, side + 0, Optional.empty()).castor("c" + side + 2, side + 2, Optional.empty());
        }
        if (withMembers) {
            dolly.member("left front", "L0", "L1", "bar").member("left rear", "L1", "L2", "bar").member("right front", "R0", "R1", "bar")
                    .member("right rear", "R1", "R2", "bar").member("front", "L0", "R0", "bar").member("rear", "L2", "R2", "bar");
        }
        dolly.mass = withMembers ? Optional.empty() : Optional.of(VisitShop.measured(47.1));
        shop.dolly = Optional.of("dolly");
        return shop.with(dolly.facts());
    }

    @Test
    void aSoftDollySagsAwayFromItsMiddleFixtures() {
        // Rail between its castors: s = L^3/48EI + L/4GA, sag by own weight w: v = 5wL^4/384EI + wL^2/8GA (texts on strength of
        // materials, shear area 5/6 of a flat bar). With equal pads k: P_end - P_middle = k (s P_middle + v), 2 P_end + P_middle = W/2.
        double inertia = 0.02 * Math.pow(0.05, 3) / 12;
        double shear = 81e9 * 0.02 * 0.05 * 5 / 6;
        double w = 7850 * 0.02 * 0.05 * G;
        double s = 8 / (48 * 210e9 * inertia) + 2 / (4 * shear);
        double v = 5 * w * 16 / (384 * 210e9 * inertia) + w * 4 / (8 * shear);
        double half = 400 * G;
        double middle = (half - 2e6 * v) / (3 + 2e6 * s);
        double end = (half - middle) / 2;
        assertEquals(299.8, middle, 0.1, "the closed form itself, worked out by hand");
        assertArrayEquals(new double[] {end, middle, end, end, middle, end}, supports(rest(soft(true))), 1e-3 * end);
    }

    @Test
    void aRigidDollyWouldHideThat() {
        double third = 400 * G / 3;
        assertArrayEquals(new double[] {third, third, third, third, third, third}, supports(rest(soft(false))), 1e-3);
        double middle = rest(soft(true)).support("sL1").orElseThrow().force();
        assertTrue(Math.abs(middle - third) > 0.2 * third, () -> middle + " against " + third);
    }

    @Test
    void aSoftDollyStillWeighsWhatItWeighs() {
        // 6 m of bar at 7.85 kg/m are 47.1 kg.
        double even = (800 + 47.1) * G / 4;
        assertArrayEquals(new double[] {even, even, even, even}, castors(rest(soft(true))), 1e-3);
        Loads factored = ask(soft(true), "rest", true);
        assertEquals((1.5 * 800 + 1.35 * 47.1) * G, factored.castors().stream().mapToDouble(Carried::force).sum(), 1e-3);
        assertEquals(6, factored.members().size());
    }

    @Test
    void whatIsMissingIsNamed() {
        VisitShop weightless = three(VisitShop.measured(100), 0);
        weightless.shellParts.add(new PartFacts("door", "door", Optional.empty(), Optional.empty(), Optional.empty()));
        weightless.partsOn.add("door");
        missing(weightless, "door: mass");
        VisitShop nothing = new VisitShop(CarrierKind.STANDS);
        nothing.touch("A").at(0, 0, 0);
        missing(nothing, "the mass of what is carried");
        VisitShop nowhere = three(VisitShop.measured(100), 0);
        nowhere.touch("D");
        missing(nowhere, "D: where on the car it holds");
        VisitShop unheld = onDolly(VisitShop.measured(800));
        unheld.touch("D").at(0, 0, 0.5);
        missing(unheld, "D: what it rests on, a fixture of the dolly or a stand");
        VisitShop sold = onDolly(VisitShop.measured(800));
        sold.dolly = Optional.of("sold");
        missing(sold, "setup: the dolly it stands on");
        VisitShop unstaged = three(VisitShop.measured(100), 0);
        unstaged.stage = Optional.empty();
        missing(unstaged, "which parts are on and what they rest on");
    }

    private static void missing(VisitShop shop, String words) {
        Loads loads = rest(shop);
        assertEquals(Loads.Outcome.MISSING, loads.outcome());
        assertTrue(loads.reason().contains(words), loads.reason());
    }

    @Test
    void aBalancePointOutsideFalls() {
        assertEquals(Loads.Outcome.FALLS, rest(rectangle(-0.95, 0)).outcome());
        assertEquals(Loads.Outcome.FALLS, rest(rectangle(0, 0.51)).outcome());
    }
}
