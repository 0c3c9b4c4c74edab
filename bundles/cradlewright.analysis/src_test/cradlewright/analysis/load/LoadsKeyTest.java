package cradlewright.analysis.load;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.FootFacts;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.testshop.SteelDolly;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.coupled.CoupledSolution;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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
    void aShellOfStatedStiffnessCarriesAsSoftAsItIs() {
        // 3390 N m/deg (test of an integral body, Motor Vehicle Structures, p. 44): 1 mm shifts 109.308 N instead of the 250 N of a
        // rigid body; the same numbers by a four-degree finite-element model.
        VisitShop shop = rectangle(0, 0);
        shop.torsion = Optional.of(VisitShop.measured(3390 * 180 / Math.PI));
        shop.touches.get(0).low(0.001);
        Carried thin = rest(shop).support("FL").orElseThrow();
        assertEquals(890.692, thin.force(), 1e-3);
        assertEquals(890.692, thin.low(), 1e-3);
        assertEquals(890.692, thin.high(), 1e-3);
        Carried beside = rest(shop).support("FR").orElseThrow();
        assertEquals(1109.308, beside.low(), 1e-3);
        assertEquals(1109.308, beside.high(), 1e-3);
        // Nobody knows the stiffness: from rigid, 250 N, to 200 N m/deg, 1 mm / (4/k + b^2/K) = 10.957 N (own derivation, as above).
        shop.torsion = Optional.empty();
        Carried unknown = rest(shop).support("FL").orElseThrow();
        assertEquals(750, unknown.force(), 1e-3);
        assertEquals(750, unknown.low(), 1e-3);
        assertEquals(989.043, unknown.high(), 1e-3);
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
    void turningEverythingTurnsTheGiveOrTakeWithIt() {
        // An engine that may weigh 40 kg more or less, off the middle: what it does to the mass and to the balance point goes together.
        VisitShop shop = rectangle(-0.2, 0.05).part("engine", new Value(80, 20, Source.GUESSED), new Vec3(-0.6, 0.3, 0.4), 0);
        shop.touches.remove(3);
        double[] before = rest(shop).supports().stream().mapToDouble(Carried::high).toArray();
        for (double heading : new double[] {37, 90, 180}) {
            shop.heading = Math.toRadians(heading);
            assertArrayEquals(before, rest(shop).supports().stream().mapToDouble(Carried::high).toArray(), 1e-6);
        }
    }

    /** The shell twists about its own length, whichever way it stands on what carries it: floor and stands know no direction. */
    @Test
    void turningAnElasticShellWithItsStandsChangesNothing() {
        System.out.println("seed " + SEED);
        Random random = new Random(SEED);
        for (int run = 0; run < 12; run++) {
            VisitShop shop = rectangle(0.6 * (random.nextDouble() - 0.5), 0.4 * (random.nextDouble() - 0.5));
            shop.torsion = Optional.of(VisitShop.measured(2e4 + 3e5 * random.nextDouble()));
            shop.touch("ML").at(0.2, -0.6, 0).stiff(1e6);
            shop.touch("MR").at(-0.1, 0.6, 0).stiff(1e6);
            shop.touches.forEach(touch -> touch.low(0.002 * random.nextDouble()));
            List<Carried> before = rest(shop).supports();
            double heading = run == 0 ? Math.PI / 2 : 2 * Math.PI * random.nextDouble();
            shop.heading = heading;
            List<Carried> after = rest(shop).supports();
            for (int i = 0; i < before.size(); i++) {
                String where = before.get(i).name() + " turned by " + heading + ", seed " + SEED;
                assertEquals(before.get(i).force(), after.get(i).force(), 1e-5, where);
                assertEquals(before.get(i).low(), after.get(i).low(), 1e-5, where);
                assertEquals(before.get(i).high(), after.get(i).high(), 1e-5, where);
            }
        }
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
    void whoStandsOverACastorAndAHoleBesideItAdd() {
        // 120 kg at the corner of four equal springs: 3/4 of it there, 1/4 beside it, 1/4 less across (own derivation: plane of the
        // springs).
        VisitShop shop = onDolly(VisitShop.measured(800));
        shop.workPoints.add(new WorkPointFacts("sill", "sill", Optional.of(new Spot(new Vec3(1, 1, 0.8), 0)), Optional.empty(),
                Optional.of(WorkPointFacts.Kind.STAND_ON)));
        double even = 900 * G / 4;
        double person = 120 * G;
        Loads both = ask(shop, "sill+hole.dolly-c1", false);
        assertArrayEquals(new double[] {even - person / 4 + 1500, even + person / 4 - 1500, even + person / 4 - 1500,
                even + 3 * person / 4 + 1500}, castors(both), 1e-3);
        assertTrue(both.situation().words().contains("standing at sill, castor dolly-c1 in a hole"), both.situation().words());
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

    @Test
    void factoredActionsMoveTheBalancePointWithTheMass() {
        // An engine of 80 kg that may weigh 120 kg stands over the line of s0 and s1: s2 carries half of the other 800 kg, whatever it
        // weighs (statics; the balance point moves along its tangent, which is 0.2 % off here).
        VisitShop shop = onDolly(VisitShop.measured(800)).part("engine", new Value(80, 20, Source.GUESSED), new Vec3(-0.5, 0, 1), 0);
        Loads loads = ask(shop, "rest", true);
        assertEquals(1.5 * 400 * G, loads.supports().get(2).force(), 0.004 * 1.5 * 400 * G);
        assertEquals(1.5 * 920 * G, supports(loads)[0] + supports(loads)[1] + supports(loads)[2], 1e-3);
    }

    /** Two rails of flat bar 50 mm by 20 mm and 2 m long between castors, six fixtures; the dolly is soft when it has its members. */
    private static VisitShop soft(boolean withMembers, Optional<DollyFacts.Heights> heights) {
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
        dolly.mass = Optional.of(VisitShop.measured(47.1));
        dolly.heights = heights;
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
        assertArrayEquals(new double[] {end, middle, end, end, middle, end},
                supports(rest(soft(true, Optional.of(DollyFacts.Heights.DRAWING)))), 1e-3 * end);
    }

    @Test
    void aRigidDollyWouldHideThat() {
        double third = 400 * G / 3;
        assertArrayEquals(new double[] {third, third, third, third, third, third}, supports(rest(soft(false, Optional.empty()))), 1e-3);
        double middle = rest(soft(true, Optional.of(DollyFacts.Heights.DRAWING))).support("sL1").orElseThrow().force();
        assertTrue(Math.abs(middle - third) > 0.2 * third, () -> middle + " against " + third);
    }

    @Test
    void aSoftDollyStillWeighsWhatItWeighs() {
        // 6 m of bar at 7.85 kg/m are 47.1 kg.
        double even = (800 + 47.1) * G / 4;
        assertArrayEquals(new double[] {even, even, even, even}, castors(rest(soft(true, Optional.of(DollyFacts.Heights.DRAWING)))), 1e-3);
        Loads factored = ask(soft(true, Optional.of(DollyFacts.Heights.DRAWING)), "rest", true);
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

    @Test
    void whatTheEmptyDollySagsIsInHeightsThatWereMeasuredOnIt() {
        // As above without v: the rail has sagged by itself when its fixtures were measured. P_end - P_middle = k s P_middle.
        double inertia = 0.02 * Math.pow(0.05, 3) / 12;
        double s = 8 / (48 * 210e9 * inertia) + 2 / (4 * 81e9 * 0.02 * 0.05 * 5 / 6);
        double middle = 400 * G / (3 + 2e6 * s);
        double end = (400 * G - middle) / 2;
        double[] expected = {end, middle, end, end, middle, end};
        for (Optional<DollyFacts.Heights> taken : List.of(Optional.of(DollyFacts.Heights.STANDING), Optional.<DollyFacts.Heights>empty())) {
            Loads loads = rest(soft(true, taken));
            assertArrayEquals(expected, supports(loads), 1e-3 * end);
            double even = (800 + 47.1) * G / 4;
            assertArrayEquals(new double[] {even, even, even, even}, castors(loads), 1e-3);
            // The members still hold the own weight, 1.35 times (EN 1990 Table A1.2(B), from memory).
            Loads factored = ask(soft(true, taken), "rest", true);
            assertEquals((1.5 * 800 + 1.35 * 47.1) * G, factored.castors().stream().mapToDouble(Carried::force).sum(), 1e-3);
        }
        assertTrue(middle - 299.8 > 10, () -> "the own weight must matter in this case, middle " + middle);
    }

    @Test
    void feelersAreLaidWhileTheDollyStands() {
        VisitShop drawing = soft(true, Optional.of(DollyFacts.Heights.DRAWING));
        drawing.touches.forEach(touch -> touch.low(0));
        assertArrayEquals(supports(rest(soft(true, Optional.of(DollyFacts.Heights.STANDING)))), supports(rest(drawing)), 1e-6);
    }

    @Test
    void aFixtureOnAMemberCarriesLikeOneOnANodeThere() {
        VisitShop nodes = soft(true, Optional.empty());
        SteelDolly dolly = new SteelDolly("dolly");
        dolly.mass = Optional.of(VisitShop.measured(47.1));
        for (String side : List.of("L", "R")) {
            double y = side.equals("L") ? -0.5 : 0.5;
            dolly.node(side + 0, -1, y, 0.2).node(side + 2, 1, y, 0.2).member("rail " + side, side + 0, side + 2, "bar");
            dolly.fixture("fix" + side + 0, side + 0, Optional.empty()).fixtureOn("fix" + side + 1, "rail " + side, 1)
                    .fixture("fix" + side + 2, side + 2, Optional.empty());
            dolly.castor("c" + side + 0, side + 0, Optional.empty()).castor("c" + side + 2, side + 2, Optional.empty());
        }
        dolly.member("front", "L0", "R0", "bar").member("rear", "L2", "R2", "bar");
        VisitShop members = soft(true, Optional.empty()).with(dolly.facts());
        assertArrayEquals(supports(rest(nodes)), supports(rest(members)), 1e-6);
        SteelDolly beyond = new SteelDolly("dolly").node("a", -1, 0, 0.2).node("b", 1, 0, 0.2).member("rail", "a", "b", "bar")
                .fixtureOn("fixL0", "rail", 2.1);
        missing(soft(true, Optional.empty()).with(beyond.facts()), "sL0: where along its member the fixture stands");
    }

    /** 4000 N in a channel of faces at 45 degrees, balance point in its middle plane. */
    private static VisitShop channel(double lean) {
        VisitShop shop = rectangle(0, 0);
        for (VisitShop.Touch touch : shop.touches) {
            double inward = touch == shop.touches.get(0) || touch == shop.touches.get(3) ? 1 : -1;
            touch.pushes(0, inward * Math.sin(lean), Math.cos(lean));
        }
        return shop;
    }

    @Test
    void facesThatLeanShareByTheirGiveAndPressHarderWithoutFriction() {
        // A face sinks by u: N = k u cos a, T = (k / 3) u sin a, N cos a + T sin a = W / 4. At 45 degrees N = 1060.660 N, T = N / 3.
        // Without friction N = W / (4 cos a) = 1414.214 N (equilibrium by hand).
        Loads loads = rest(channel(Math.PI / 4));
        assertArrayEquals(new double[] {1060.660, 1060.660, 1060.660, 1060.660}, supports(loads), 1e-3);
        loads.supports().forEach(carried -> assertEquals(353.553, carried.shear(), 1e-3));
        loads.supports().forEach(carried -> assertTrue(carried.high() >= 1414.213, carried::toString));
    }

    @Test
    void facesOfUnlikeLeanAndHeightBalanceThreeForces() {
        // Lami: the weight, left pushes 30 degrees and right pushes 50 degrees off upright meet in one line, so that each left pair
        // carries W sin 50 / sin 80 and each right pair W sin 30 / sin 80. Left at (-0.5, 0), right at (0.5, 0.2):
        // t sin 30 + u sin 50 = 1, t cos 30 - u cos 50 = 0.2 give t = 0.808274 m, the line at y = -0.5 + t sin 30 = -0.095863 m.
        double a = Math.toRadians(30);
        double b = Math.toRadians(50);
        double t = (Math.cos(b) + 0.2 * Math.sin(b)) / Math.sin(a + b);
        VisitShop shop = rectangle(0, -0.5 + t * Math.sin(a));
        for (int i : new int[] {0, 3}) {
            shop.touches.get(i).pushes(0, Math.sin(a), Math.cos(a));
        }
        for (int i : new int[] {1, 2}) {
            shop.touches.get(i).at(i == 1 ? -0.9 : 0.9, 0.5, 0.2).pushes(0, -Math.sin(b), Math.cos(b));
        }
        for (double turned : new double[] {0, Math.toRadians(37)}) {
            shop.heading = turned;
            ContactSetting setting = shop.read(new SettingKey("car", "visit", SettingKey.Sideways.FREE, true)).orElseThrow();
            CoupledSolution solution = setting.problem(Situation.atRest()).solve();
            double left = 2000 * Math.sin(b) / Math.sin(a + b);
            double right = 2000 * Math.sin(a) / Math.sin(a + b);
            assertArrayEquals(new double[] {left, right, right, left},
                    List.of("FL", "FR", "RR", "RL").stream().mapToDouble(solution::force).toArray(), 1e-3);
        }
    }

    /** 3500 N half way between lines of supports at 0 and 1.8 m on a rigid dolly, a prop 1.1 m behind the rear line if wanted. */
    private static VisitShop overhang(Optional<PropFacts> prop, Hold front) {
        SteelDolly dolly = new SteelDolly("dolly");
        dolly.mass = Optional.of(VisitShop.measured(1000));
        dolly.balance = Optional.of(new Vec3(0.9, 0, 0.2));
        VisitShop shop = new VisitShop(CarrierKind.DOLLY).part("body", 3500 / G, 0.9, 0, 1);
        shop.dolly = Optional.of("dolly");
        for (String side : List.of("L", "R")) {
            double y = side.equals("L") ? -0.5 : 0.5;
            for (int i = 0; i < 2; i++) {
                dolly.node(side + i, 1.8 * i, y, 0.2).fixture("fix" + side + i, side + i, Optional.empty());
                dolly.castor("castor " + side + i, side + i, Optional.empty());
                VisitShop.Touch touch = shop.touch("s" + side + i).at(1.8 * i, y, 0.5).on("fix" + side + i).stiff(1e7);
                if (i == 0) {
                    touch.holds(front);
                }
            }
        }
        prop.ifPresent(dolly.props::add);
        shop.workPoints.add(new WorkPointFacts("tail", "tail", Optional.of(new Spot(new Vec3(2.9, 0, 0.5), 0)), Optional.empty(),
                Optional.of(WorkPointFacts.Kind.STAND_ON)));
        return shop.with(dolly.facts());
    }

    private static PropFacts prop(boolean fitted, Optional<String> node) {
        return new PropFacts("prop", "tail prop", Optional.of(new Vec3(2.9, 0, 0.5)), fitted, Optional.empty(), Optional.empty(), node);
    }

    @Test
    void aPropTakesNothingAtRestAndItsPartOfWhatComesAfter() {
        VisitShop shop = overhang(Optional.of(prop(true, Optional.of("R1"))), Hold.RESTS);
        assertArrayEquals(new double[] {875, 875, 875, 875}, supports(rest(shop)), 1e-3);
        assertEquals(0, rest(shop).props().get(0).force(), 1e-3);
        // What comes on: lines of 2e7 N/m at 0 and 1.8 m, the prop of 1e7 N/m at 2.9 m, P = 120 g at 2.9 m on a rigid body u = z + a x:
        // sum k (z + a x) = P, sum k x (z + a x) = 2.9 P.
        double p = 120 * G;
        double k0 = 5e7;
        double k1 = 2e7 * 1.8 + 1e7 * 2.9;
        double k2 = 2e7 * 1.8 * 1.8 + 1e7 * 2.9 * 2.9;
        double z = p * (k2 - 2.9 * k1) / (k0 * k2 - k1 * k1);
        double a = p * (2.9 * k0 - k1) / (k0 * k2 - k1 * k1);
        Loads stood = ask(shop, "tail", false);
        assertArrayEquals(new double[] {875 + 1e7 * z, 875 + 1e7 * (z + 1.8 * a), 875 + 1e7 * z, 875 + 1e7 * (z + 1.8 * a)},
                supports(stood), 1e-2);
        assertEquals(1e7 * (z + 2.9 * a), stood.props().get(0).force(), 1e-2);
        // Without it, or with one that is not in place, the front loses P 1.1 / 1.8.
        assertEquals(875 - p * 1.1 / 1.8 / 2, ask(overhang(Optional.of(prop(false, Optional.of("R1"))), Hold.RESTS), "tail", false)
                .support("sL0").orElseThrow().force(), 1e-3);
        assertEquals(List.of(), rest(overhang(Optional.empty(), Hold.RESTS)).props());
    }

    @Test
    void aPropWithoutItsPlaceIsNamed() {
        PropFacts nowhere = new PropFacts("prop", "tail prop", Optional.empty(), true, Optional.empty(), Optional.empty(),
                Optional.empty());
        missing(overhang(Optional.of(nowhere), Hold.RESTS), "tail prop: where it touches");
        missing(overhang(Optional.of(prop(true, Optional.of("gone"))), Hold.RESTS), "tail prop: the node of the dolly");
    }

    @Test
    void aBoltOfUnknownPullIsNotCountedOn() {
        // 3500 N at half way of 1.8 m allow 2863.636 N at the tail (statics); 400 kg press 3922.66 N there.
        VisitShop heavy = overhang(Optional.empty(), Hold.BOLTED);
        heavy.settings = heavier(400);
        Situation tail = heavy.read(new SituationsKey("car", "visit")).stream().filter(s -> s.id().equals("tail"))
                .findFirst().orElseThrow();
        Loads loads = heavy.read(new LoadsKey("car", "visit", tail, false));
        assertEquals(Loads.Outcome.MISSING, loads.outcome(), loads.reason());
        assertTrue(loads.reason().contains("sL0: how hard its bolt may be pulled"), loads.reason());
        assertArrayEquals(new double[] {875, 875, 875, 875}, supports(rest(heavy)), 1e-3);
    }

    @Test
    void whatOthersCarryWhenSuchABoltLetsGoIsWithinTheEnds() {
        // Four bolted corners, one set 4 mm low: held it pulls (1000 - 1000 = 0 at 4 mm, so 8 mm pull 1000 N); let go its neighbours
        // carry 2000 N each (closed form of one shim too thin).
        VisitShop bolted = rectangle(0, 0);
        bolted.touches.forEach(touch -> touch.holds(Hold.BOLTED));
        bolted.touches.get(0).low(0.008);
        Loads loads = rest(bolted);
        assertArrayEquals(new double[] {-1000, 3000, -1000, 3000}, supports(loads), 1e-3);
        assertTrue(loads.support("FR").orElseThrow().low() <= 2000.001, () -> loads.supports().toString());
        assertTrue(loads.support("FL").orElseThrow().high() >= -0.001, () -> loads.supports().toString());
    }

    private static SettingsFacts heavier(double person) {
        SettingsFacts common = SettingsFacts.commonPractice();
        return new SettingsFacts(person, common.leanForce(), common.barForce(), common.requiredRatio(), common.tightMargin(),
                common.jointFactor(), common.step(), common.unevenness(), common.slope(), common.walkingSpeed(), common.shimTolerance(),
                common.friction());
    }

    /** Four stands at the corners, the two behind 0.2 m higher as the car is there, the last one low by that much, m. */
    private static VisitShop onStands(double low) {
        VisitShop shop = new VisitShop(CarrierKind.STANDS).part("tub", 400, 1, 0, 0.9);
        String[] corners = {"1L", "1R", "2L", "2R"};
        for (int i = 0; i < 4; i++) {
            double z = i < 2 ? 0.4 : 0.6;
            shop.with(new GearFacts.Stand("stand " + corners[i], corners[i], new Examination(Optional.empty(), Optional.empty(),
                    Optional.empty()), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), OptionalInt.empty()));
            shop.touch(corners[i]).at(i < 2 ? 0 : 2, i % 2 == 0 ? -0.5 : 0.5, z).on("stand " + corners[i]).stiff(2e5)
                    .set(i == 3 ? z - low : z);
        }
        // Stiffer than any shell counts as rigid.
        shop.torsion = Optional.of(VisitShop.measured(1e12));
        return shop;
    }

    @Test
    void aStandThatIsSetLowTakesLessAndUnlikeHeightsAloneChangeNothing() {
        // Four equal springs under a rigid body: the corner that is low by g, and the one across, lose k g / 4, the others gain it (own
        // derivation: twist g/4 at each corner, the rest is a movement of the body). 2e5 * 0.004 / 4 = 200 N of 980.665 N.
        double share = 400 * 9.80665 / 4;
        for (double low : new double[] {0, 0.004}) {
            double twist = 2e5 * low / 4;
            Loads rest = rest(onStands(low));
            assertEquals(share - twist, rest.support("2R").orElseThrow().force(), 0.02 * share);
            assertEquals(share - twist, rest.support("1L").orElseThrow().force(), 0.02 * share);
            assertEquals(share + twist, rest.support("1R").orElseThrow().force(), 0.02 * share);
            assertEquals(share + twist, rest.support("2L").orElseThrow().force(), 0.02 * share);
        }
    }

    @Test
    void aStifferDiagonalOfFeetTakesMore() {
        // R (1 +- t): one diagonal of 2e6, the other of 1e6 N/m; both must sink as far in sum, (1 + t) / 2 = 1 - t gives t = 1/3.
        VisitShop shop = onDolly(VisitShop.measured(800));
        SteelDolly dolly = SteelDolly.square("dolly");
        double[][] places = {{-0.5, -0.5}, {-0.5, 0.5}, {0.5, 0}};
        for (int i = 0; i < 3; i++) {
            dolly.node("f" + i, places[i][0], places[i][1], 0.2).fixture("fix" + i, "f" + i, Optional.empty());
        }
        for (int corner = 0; corner < 4; corner++) {
            // Corners 0 and 3 lie across from each other.
            dolly.feet.add(new FootFacts("foot" + corner, "foot " + corner, Optional.of("dolly-n" + corner), true,
                    Optional.of(VisitShop.measured(corner % 3 == 0 ? 2e6 : 1e6))));
        }
        double even = 900 * G / 4;
        assertArrayEquals(new double[] {even * 4 / 3, even * 2 / 3, even * 2 / 3, even * 4 / 3},
                castors(rest(shop.with(dolly.facts()))), 1e-3);
    }
}
