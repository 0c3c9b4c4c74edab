package cradlewright.analysis.standing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShimFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.SlabFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.LoadsKey;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.testshop.SteelDolly;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** How the references of a visit are followed, what gives by how much, and by how much each support is low. */
class StandingKeyTest {

    private static final Examination NONE = new Examination(Optional.empty(), Optional.empty(), Optional.empty());

    private static Standing standing(VisitShop shop) {
        return shop.read(new StandingKey("car", "visit")).orElseThrow();
    }

    private static Support support(VisitShop shop, int index) {
        return standing(shop).supports().get(index);
    }

    private static Optional<Value> value(double si) {
        return Optional.of(VisitShop.measured(si));
    }

    private static StockFacts.Pad pad(double thickness) {
        return new StockFacts.Pad("pad", "pad", StockFacts.Material.RUBBER, value(0.1), value(0.05), value(thickness), value(5e6),
                Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Two fixtures 0.30 m above nodes at 0.20 m; the second of unknown height if wanted. */
    private static VisitShop onFixtures(boolean secondKnown) {
        SteelDolly dolly = new SteelDolly("dolly").node("n1", 0, 0, 0.2).node("n2", 1, 0, 0.2).fixture("f1", "n1", value(0.3))
                .fixture("f2", "n2", secondKnown ? value(0.3) : Optional.empty());
        VisitShop shop = new VisitShop(CarrierKind.DOLLY).with(pad(0.01)).with(dolly.facts());
        shop.dolly = Optional.of("dolly");
        shop.shift = new Vec3(0, 0, 0.02);
        ShimFacts two = new ShimFacts(Optional.empty(), value(0.002), OptionalInt.of(2));
        shop.touch("A").at(0, 0, 0.5).on("f1").pad("pad").shims(new ShimStackFacts(List.of(two)));
        shop.touch("B").at(1, 0, 0.5).on("f2");
        return shop;
    }

    @Test
    void theGapIsTheHeightOfTheCarLessWhatStandsBelow() {
        // A: 0.52 - (0.2 + 0.3 + 0.01 + 0.004) = 0.006 m; B: 0.52 - 0.5 = 0.020 m.
        VisitShop shop = onFixtures(true);
        assertEquals(0.006, support(shop, 0).gap(), 1e-12);
        assertEquals(0.020, support(shop, 1).gap(), 1e-12);
        assertTrue(support(shop, 0).gapKnown() && support(shop, 1).gapKnown());
    }

    @Test
    void whatStandsAboveTheHeightOfTheFixtureCountsToo() {
        // 0.52 - (0.2 + 0.3 + 0.015) = 0.005 m.
        SteelDolly dolly = new SteelDolly("dolly");
        dolly.offset = new Vec3(0, 0.04, 0.015);
        dolly.node("n1", 0, 0, 0.2).fixture("f1", "n1", value(0.3));
        VisitShop shop = new VisitShop(CarrierKind.DOLLY).with(dolly.facts());
        shop.dolly = Optional.of("dolly");
        shop.touch("A").at(0, 0.04, 0.52).on("f1");
        assertEquals(0.005, support(shop, 0).gap(), 1e-12);
    }

    @Test
    void heightsOfSomeSupportsAloneAreNotUsed() {
        VisitShop shop = onFixtures(false);
        assertEquals(0, support(shop, 0).gap());
        assertEquals(0, support(shop, 1).gap());
        assertFalse(support(shop, 0).gapKnown() || support(shop, 1).gapKnown());
    }

    @Test
    void aMeasuredGapCountsFromWhereTheOthersTouch() {
        VisitShop shop = onFixtures(true);
        shop.touches.get(1).low(0.003);
        assertEquals(0, support(shop, 0).gap());
        assertFalse(support(shop, 0).gapKnown());
        assertEquals(0.003, support(shop, 1).gap());
    }

    /** Two stands of which the second is told how high it is set if wanted. */
    private static VisitShop onStands(boolean secondKnown) {
        VisitShop shop = new VisitShop(CarrierKind.STANDS).with(pad(0.01)).with(stand("s1")).with(stand("s2"));
        ShimFacts two = new ShimFacts(Optional.empty(), value(0.002), OptionalInt.of(2));
        shop.touch("A").at(0, 0, 0.5).on("s1").set(0.48).pad("pad").shims(new ShimStackFacts(List.of(two)));
        shop.touch("B").at(1, 0, 0.65).on("s2");
        if (secondKnown) {
            shop.touches.get(1).set(0.648);
        }
        return shop;
    }

    private static GearFacts.Stand stand(String id) {
        return new GearFacts.Stand(id, id, new Examination(Optional.empty(), Optional.empty(), Optional.empty()), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), OptionalInt.empty());
    }

    @Test
    void standsAreLowByTheHeightsTheyAreSetTo() {
        // A: 0.5 - (0.48 + 0.01 + 0.004) = 0.006 m; B: 0.65 - 0.648 = 0.002 m.
        VisitShop shop = onStands(true);
        assertEquals(0.006, support(shop, 0).gap(), 1e-12);
        assertEquals(0.002, support(shop, 1).gap(), 1e-12);
        assertEquals(GapFrom.SET_HEIGHTS, support(shop, 1).gapFrom());
        assertFalse(support(onStands(false), 0).gapKnown(), "heights of some alone are not used");
        shop.touches.get(0).low(0.001);
        assertEquals(0.0, support(shop, 1).gap(), "nor heights beside a measured gap");
    }

    @Test
    void whatGivesByItselfGivesTogetherInLine() {
        // Pad: t/(A E) = 0.01/(0.005 * 5e6) = 4e-7 m/N. Arm 1/4e5 with pad 1/1e6: 3.5e-6 m/N.
        assertEquals(4e-7, support(onFixtures(true), 0).compliance(), 1e-18);
        assertFalse(support(onFixtures(true), 0).complianceAssumed());
        assertEquals(Compliances.BARE_STEEL, support(onFixtures(true), 1).compliance());
        assertTrue(support(onFixtures(true), 1).complianceAssumed());
        VisitShop lift = new VisitShop(CarrierKind.LIFT);
        lift.touch("A").at(0, 0, 0).on("arm");
        lift.touch("B").at(0, 0, 0).on("unknown arm");
        lift.lift = Optional.of("lift");
        lift.with(new GearFacts.Lift("lift", "lift", NONE, Optional.empty(), Optional.empty(), Optional.empty(),
                List.of(arm("arm", value(4e5), value(1e6)), arm("unknown arm", Optional.empty(), Optional.empty()))));
        assertEquals(3.5e-6, support(lift, 0).compliance(), 1e-18);
        assertFalse(support(lift, 0).complianceAssumed());
        assertEquals(3.1e-6, support(lift, 1).compliance(), 1e-18);
        assertTrue(support(lift, 1).complianceAssumed());
        lift.touches.get(0).stiff(2e6);
        assertEquals(5e-7, support(lift, 0).compliance(), 1e-18);
    }

    private static GearFacts.ArmFacts arm(String id, Optional<Value> stiffness, Optional<Value> padStiffness) {
        return new GearFacts.ArmFacts(id, id, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), stiffness, padStiffness);
    }

    @Test
    void padsThatNobodyDescribedAreAssumed() {
        StockFacts.Pad stiff = new StockFacts.Pad("p", "p", StockFacts.Material.OTHER, Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), value(5e6), Optional.empty(), Optional.empty(), Optional.empty());
        assertEquals(new Compliances.Compliance(2e-7, false), Compliances.ofPad(stiff));
        // Cork of 17 MPa (mean of published tests): 0.006 / (0.01 * 17e6) m/N.
        StockFacts.Pad cork = new StockFacts.Pad("p", "p", StockFacts.Material.CORK, value(0.1), value(0.1), value(0.006), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        assertEquals(3.529412e-8, Compliances.ofPad(cork).value(), 5e-15);
        assertTrue(Compliances.ofPad(cork).assumed());
        StockFacts.Pad felt = new StockFacts.Pad("p", "p", StockFacts.Material.FELT, value(0.1), value(0.1), value(0.006), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        assertEquals(new Compliances.Compliance(1e-7, true), Compliances.ofPad(felt));
    }

    @Test
    void eachHolderIsFound() {
        VisitShop shop = new VisitShop(CarrierKind.STANDS).mount("2R", new Vec3(1, 0.4, 0), Condition.SOUND, Optional.empty())
                .with(new GearFacts.Trestle("trestle", "trestle", NONE, Optional.empty()))
                .with(new GearFacts.Strap("strap", "strap", NONE, Optional.empty(), Optional.empty(), GearFacts.Mode.STRAIGHT,
                Optional.empty(), OptionalInt.empty()));
        shop.touch("A").at(0, 0, 0).on("trestle");
        shop.touch("B").at(0, 0, 0).on("strap");
        shop.touch("C").mount("2R").on("2R").holds(Hold.BOLTED);
        shop.touch("D").at(0, 0, 0);
        Standing standing = standing(shop);
        assertInstanceOf(Holder.OnStand.class, standing.supports().get(0).holder());
        assertInstanceOf(Holder.InStrap.class, standing.supports().get(1).holder());
        assertInstanceOf(Holder.OnChassis.class, standing.supports().get(2).holder());
        assertInstanceOf(Holder.Unknown.class, standing.supports().get(3).holder());
        assertEquals(Hold.BOLTED, standing.supports().get(2).hold());
        assertEquals(Hold.RESTS, standing.supports().get(3).hold());
        assertEquals(new Vec3(1, 0.4, 0), standing.supports().get(2).onCar());
        assertEquals(List.of(), standing.missing());
    }

    @Test
    void placeAndSlabFollowFromThePlacementOfTheVisit() {
        VisitShop shop = new VisitShop(CarrierKind.FLOOR)
                .with(new PlaceFacts("bay", "bay", PlaceFacts.Kind.BAY, Optional.of("slab"), false, Optional.empty(),
                Optional.empty(), Optional.empty()))
                .with(new SlabFacts("slab", "slab", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(),
                        Optional.empty(), Optional.empty()))
                .with(new PlacementFacts("p1", "p1", Optional.of("other"), Optional.of("yard")))
                .with(new PlacementFacts("p2", "p2", Optional.of("visit"), Optional.of("bay")));
        assertEquals("bay", standing(shop).place().orElseThrow().id());
        assertEquals("slab", standing(shop).slab().orElseThrow().id());
    }

    @Test
    void mountsAreStillFastOnlyWhenTheShellLeavesItsChassis() {
        VisitShop shop = new VisitShop(CarrierKind.DOLLY).mount("1L", Vec3.ZERO, Condition.SOUND, Optional.of(true))
                .mount("1R", Vec3.ZERO, Condition.SOUND, Optional.of(false)).mount("2L", Vec3.ZERO, Condition.SOUND, Optional.empty());
        assertEquals(List.of("1L"), standing(shop).stillFast().stream().map(mount -> mount.id()).toList());
        shop.kind = CarrierKind.CHASSIS;
        assertEquals(List.of(), standing(shop).stillFast());
        shop.kind = CarrierKind.DOLLY;
        shop.carried.add("chassis");
        assertEquals(List.of(), standing(shop).stillFast());
    }

    @Test
    void theCarTurnsFromRearwardToTheRightAndThenMoves() {
        VisitShop shop = new VisitShop(CarrierKind.STANDS);
        shop.touch("A").at(1, 0, 0.3);
        shop.touch("B").at(0, 1, 0.3);
        shop.heading = Math.PI / 2;
        shop.shift = new Vec3(10, 20, 30);
        assertEquals(0, support(shop, 0).inCarrier().minus(new Vec3(10, 21, 30.3)).norm(), 1e-12);
        assertEquals(0, support(shop, 1).inCarrier().minus(new Vec3(9, 20, 30.3)).norm(), 1e-12);
        assertEquals(new Vec3(1, 0, 0.3), support(shop, 0).onCar());
        Vec3 turned = Carriers.turn(new Vec3(1, 0, 0), standing(shop).setup())
                .cross(Carriers.turn(new Vec3(0, 1, 0), standing(shop).setup()));
        assertEquals(0, turned.minus(Vec3.UP).norm(), 1e-12, "right-handed");
    }

    @Test
    void massesAndBalancePointsAddUpWithTheirDoubts() {
        // 300 kg at x 1 and 100 kg at x 3: 400 kg at 1.5 m; u(m) = sqrt(3^2 + 4^2) = 5 kg.
        VisitShop shop = new VisitShop(CarrierKind.STANDS)
                .part("body", new Value(300, 3, Source.WEIGHED), new Vec3(1, 0, 0), 0)
                .part("engine", new Value(100, 4, Source.GUESSED), new Vec3(3, 0, 0), 0);
        Weight weight = shop.read(new WeightKey("car", "visit"));
        assertEquals(400, weight.estimate().orElseThrow().balance().mass(), 1e-12);
        assertEquals(1.5, weight.estimate().orElseThrow().balance().point().x(), 1e-12);
        assertEquals(5, weight.estimate().orElseThrow().standard(Quantity.MASS), 1e-12);
        // dx/dm1 = (1 - 1.5)/400, dx/dm2 = (3 - 1.5)/400: u(x) = sqrt((0.5 * 3)^2 + (1.5 * 4)^2) / 400.
        assertEquals(Math.sqrt(2.25 + 36) / 400, weight.estimate().orElseThrow().standard(Quantity.X), 1e-12);
        assertEquals(100, weight.guessedMass());
        assertEquals(List.of("engine"), weight.guessed());
        assertEquals(new Weight(List.of(), List.of(), 0, List.of()), shop.read(new WeightKey("car", "gone")));
    }

    @Test
    void aHeightIsShortAlongThePushOfItsSupport() {
        VisitShop shop = onFixtures(true);
        shop.touches.get(0).pushes(0, 0.6, 0.8);
        shop.heading = Math.PI / 2;
        shop.touches.get(1).at(0, -1, 0.5);
        assertEquals(0.8 * 0.006, support(shop, 0).gap(), 1e-12);
        assertEquals(0, support(shop, 0).normal().minus(new Vec3(-0.6, 0, 0.8)).norm(), 1e-12, "the push turns with the car");
        shop.touches.get(0).pushes(0, 1, 0.1);
        assertFalse(support(shop, 0).gapKnown(), "no height tells the gap of a stop at the side");
    }

    @Test
    void whereTheGapComesFromIsTold() {
        assertEquals(GapFrom.TAKEN_AS_STANDING, support(onFixtures(true), 0).gapFrom());
        assertEquals(GapFrom.NOTHING, support(onFixtures(false), 0).gapFrom());
        VisitShop measured = onFixtures(true);
        measured.touches.get(1).low(0.003);
        assertEquals(GapFrom.MEASURED, support(measured, 1).gapFrom());
    }

    @Test
    void fixtureAndPadGiveInLine() {
        // Pad 4e-7 m/N (above) and a fixture of 5e6 N/m: 6e-7 m/N.
        SteelDolly dolly = new SteelDolly("dolly");
        dolly.stiffness = value(5e6);
        dolly.node("n1", 0, 0, 0.2).fixture("f1", "n1", Optional.empty());
        VisitShop shop = new VisitShop(CarrierKind.DOLLY).with(pad(0.01)).with(dolly.facts());
        shop.dolly = Optional.of("dolly");
        shop.touch("A").at(0, 0, 0.5).on("f1").pad("pad");
        assertEquals(6e-7, support(shop, 0).compliance(), 1e-18);
        shop.touches.get(0).stiff(1e6);
        assertEquals(1e-6, support(shop, 0).compliance(), 1e-18, "what was measured there goes before");
    }

    @Test
    void aPadThatIsNotInStockIsNamedAndNotTakenAsBareSteel() {
        VisitShop shop = new VisitShop(CarrierKind.STANDS);
        shop.touch("A").at(0, 0, 0).pad("lost");
        assertTrue(standing(shop).missing().get(0).startsWith("A: what its pad is"), standing(shop).missing().toString());
        assertEquals(Compliances.UNKNOWN_PAD, support(shop, 0).compliance());
    }

    private static ShimStackFacts stack(double metres) {
        return new ShimStackFacts(List.of(new ShimFacts(Optional.empty(), value(metres), OptionalInt.of(1))));
    }

    /** Four mounts with the stacks as found, on a chassis whose faces lie 2 mm lower at the first mount only. */
    private static VisitShop onChassis(Optional<SetupFacts.ShimTarget> target) {
        double[][] at = {{-0.9, -0.5}, {-0.9, 0.5}, {0.9, 0.5}, {0.9, -0.5}};
        double[] asFound = {0.0120, 0.0095, 0.0110, 0.0109};
        VisitShop shop = new VisitShop(CarrierKind.CHASSIS).part("body", 4000 / 9.80665, 0, 0, 0.4);
        shop.shimTarget = target;
        for (int i = 0; i < 4; i++) {
            String name = "m" + i;
            shop.mounts.add(new MountFacts(name, name, Optional.of(new Spot(new Vec3(at[i][0], at[i][1], 0.5), 0)), Condition.SOUND,
                    Optional.empty(), Optional.empty(), OptionalInt.empty(), Optional.empty(), Optional.of(stack(asFound[i])),
                    Optional.of(stack(0.033)), Optional.empty()));
            shop.mounts.add(new MountFacts("c" + i, "c" + i, Optional.of(new Spot(new Vec3(at[i][0], at[i][1], i == 0 ? 0.488 : 0.490), 0)),
                    Condition.SOUND, Optional.empty(), Optional.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty(),
                    Optional.empty(), Optional.empty()));
            shop.touch("s" + i).mount(name).on("c" + i).shims(stack(0.010)).stiff(1e6);
        }
        return shop;
    }

    @Test
    void onAChassisTheStacksAsFoundLessThoseThereNowTellTheGaps() {
        // Ten millimetres everywhere against 12.0, 9.5, 11.0 and 10.9 as found.
        VisitShop shop = onChassis(Optional.of(SetupFacts.ShimTarget.AS_FOUND));
        double[] gaps = standing(shop).supports().stream().mapToDouble(Support::gap).toArray();
        assertArrayEquals(new double[] {0.0020, -0.0005, 0.0010, 0.0009}, gaps, 1e-12);
        assertEquals(GapFrom.STACKS_AS_FOUND, support(shop, 0).gapFrom());
        // Only the twist acts, 2.0 + 0.5 + 1.0 - 0.9 = 2.6 mm; with 1e6 N/m at each corner it takes 2.6 mm / (4 / k) = 650 N off one
        // diagonal and puts it on the other: 1000 -+ 650 N (closed form of one shim too thin).
        Loads loads = shop.read(new LoadsKey("car", "visit", Situation.atRest(), false));
        assertArrayEquals(new double[] {350, 1650, 350, 1650}, loads.supports().stream().mapToDouble(Carried::force).toArray(), 1e-3);
        // The same stacks as they were found carry evenly.
        double[] asFound = {0.0120, 0.0095, 0.0110, 0.0109};
        for (int i = 0; i < 4; i++) {
            shop.touches.get(i).shims(stack(asFound[i]));
        }
        Loads even = shop.read(new LoadsKey("car", "visit", Situation.atRest(), false));
        assertArrayEquals(new double[] {1000, 1000, 1000, 1000}, even.supports().stream().mapToDouble(Carried::force).toArray(), 1e-3);
    }

    @Test
    void byTheDrawingThePlacesOfBothMountsTellTheGaps() {
        // 0.500 - 0.488 - 0.010 = 2 mm at the first mount, none at the others.
        VisitShop shop = onChassis(Optional.of(SetupFacts.ShimTarget.DRAWING));
        double[] gaps = standing(shop).supports().stream().mapToDouble(Support::gap).toArray();
        assertArrayEquals(new double[] {0.002, 0, 0, 0}, gaps, 1e-12);
        assertEquals(GapFrom.STACKS_BY_DRAWING, support(shop, 0).gapFrom());
    }

    @Test
    void onAChassisNothingFollowsFromStacksAlone() {
        assertFalse(support(onChassis(Optional.empty()), 0).gapKnown());
        assertFalse(support(onChassis(Optional.of(SetupFacts.ShimTarget.MEASURED)), 0).gapKnown());
        VisitShop uncounted = onChassis(Optional.of(SetupFacts.ShimTarget.AS_FOUND));
        uncounted.touches.get(2).shims(new ShimStackFacts(List.of(new ShimFacts(Optional.empty(), value(0.01), OptionalInt.empty()))));
        assertFalse(support(uncounted, 0).gapKnown());
    }
}
