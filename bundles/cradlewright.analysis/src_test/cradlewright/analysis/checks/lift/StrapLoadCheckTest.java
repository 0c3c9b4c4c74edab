package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Strap C carries half of the shell. Mode factors: straight 1, choked 0.8, leaning basket 1.4 (EN 1492-1 and EN 1492-2). */
class StrapLoadCheckTest {

    private static Finding behind(SupportShop shop) {
        return shop.ask(new StrapLoadCheck()).stream().filter(finding -> finding.objectId().equals("strap-C")).findFirst()
                .orElseThrow();
    }

    @Test
    void neverMoreThanTight() {
        Finding finding = behind(Hung.inStraps(800, 4000, GearFacts.Mode.STRAIGHT));
        assertEquals(Verdict.TIGHT, finding.verdict());
        assertEquals(400, finding.demand().orElseThrow().si(), 1e-6);
        assertEquals(4000, finding.capacity().orElseThrow().si(), 1e-9);
    }

    @Test
    void theModeCounts() {
        assertEquals(Verdict.STOP, behind(Hung.inStraps(800, 399, GearFacts.Mode.STRAIGHT)).verdict());
        assertEquals(Verdict.TIGHT, behind(Hung.inStraps(800, 401, GearFacts.Mode.STRAIGHT)).verdict());
        // 400 / 0.8 = 500.
        assertEquals(Verdict.STOP, behind(Hung.inStraps(800, 499, GearFacts.Mode.CHOKED)).verdict());
        assertEquals(Verdict.TIGHT, behind(Hung.inStraps(800, 501, GearFacts.Mode.CHOKED)).verdict());
        // 400 / 1.4 = 285.7: never the factor 2 of a basket with upright sides, which nobody measured.
        assertEquals(Verdict.STOP, behind(Hung.inStraps(800, 285, GearFacts.Mode.BASKET)).verdict());
        assertEquals(Verdict.TIGHT, behind(Hung.inStraps(800, 287, GearFacts.Mode.BASKET)).verdict());
    }

    @Test
    void theMassCountsAtItsUpperEnd() {
        // 800 kg give or take 2 x 20 kg: half of 840 kg.
        assertEquals(420, behind(Hung.inStraps(800, 4000, GearFacts.Mode.STRAIGHT).weighs(800, 20)).demand().orElseThrow().si(),
                1e-6);
    }

    @Test
    void anotherStrapIsWorkedOut() {
        SupportShop shop = Hung.inStraps(800, 399, GearFacts.Mode.STRAIGHT);
        shop.has(Hung.strap("weak", Optional.of(SupportShop.measured(300)), GearFacts.Mode.STRAIGHT));
        shop.has(Hung.strap("strong", Optional.of(SupportShop.measured(1000)), GearFacts.Mode.CHOKED));
        assertEquals(List.of(Remedy.mends("Use strong here, slung the same way.", Verdict.TIGHT)), behind(shop).remedies());
    }

    @Test
    void aStrapThatAnotherCarHangsInIsNotOffered() {
        SupportShop shop = Hung.inStraps(800, 399, GearFacts.Mode.STRAIGHT);
        shop.has(Hung.strap("strong", Optional.of(SupportShop.measured(1000)), GearFacts.Mode.STRAIGHT));
        List<Remedy> taken = behind(shop.has(otherCar("strong", Optional.empty()))).remedies();
        assertTrue(taken.stream().noneMatch(remedy -> remedy.words().contains("strong")), taken.toString());
        // What the other car was done with yesterday is free.
        List<Remedy> free = behind(shop.has(otherCar("strong", Optional.of(SupportShop.TODAY.minusDays(1))))).remedies();
        assertEquals(List.of(Remedy.mends("Use strong here, slung the same way.", Verdict.TIGHT)), free);
    }

    private static CarFacts otherCar(String strap, Optional<LocalDate> to) {
        ContactFacts contact = new ContactFacts("other-contact", "other", Optional.empty(), Optional.empty(), Optional.of(Vec3.ZERO),
                Optional.of(strap), Optional.empty(), Vec3.UP, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty());
        SetupFacts setup = new SetupFacts("other-setup", "setup", List.of(), CarrierKind.STRAPS, Optional.empty(), Optional.empty(),
                Optional.empty(), Vec3.ZERO, 0, List.of(contact), Optional.empty(), SetupFacts.Weather.UNKNOWN);
        VisitFacts visit = new VisitFacts("other-visit", "visit", Optional.empty(), Optional.of("other-setup"), Optional.empty(), to,
                Optional.empty());
        return new CarFacts("other-car", "other car", true, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(setup), List.of(visit), List.of());
    }

    @Test
    void aLeaningStrapStops() {
        SupportShop shop = new SupportShop(CarrierKind.STRAPS).weighs(800, 0).has(Hung.strap("strap-C",
                Optional.of(SupportShop.measured(4000)), GearFacts.Mode.STRAIGHT));
        shop.support("A", -1, -0.5, 1);
        shop.support("B", -1, 0.5, 1);
        shop.support("D", 1, 0.2, 1).on("strap-C").pushes(new Vec3(0, 0.2, 1));
        shop.support("E", 1, -0.2, 1).on("strap-C").pushes(new Vec3(0, -0.2, 1));
        // Lean atan(0.2) = 11.3 degrees, beyond the 6 degrees of an upright leg.
        Finding finding = behind(shop);
        assertEquals(Verdict.STOP, finding.verdict());
        assertTrue(finding.words().contains("leans"));
    }

    @Test
    void oneStrapAtTwoPlacesCarriesBoth() {
        SupportShop shop = new SupportShop(CarrierKind.STRAPS).weighs(800, 0).has(Hung.strap("strap-C",
                Optional.of(SupportShop.measured(500)), GearFacts.Mode.STRAIGHT));
        shop.support("A", -1, -0.5, 1).on("strap-C");
        shop.support("B", -1, 0.5, 1).on("strap-C");
        shop.support("C", 1, 0, 1);
        assertEquals(400, behind(shop).demand().orElseThrow().si(), 1e-6);
    }

    @Test
    void cantSayWithoutTag() {
        SupportShop shop = Hung.inStraps(800, 4000, GearFacts.Mode.STRAIGHT).has(Hung.strap("strap-C", Optional.empty(),
                GearFacts.Mode.STRAIGHT));
        assertEquals(Verdict.CANT_SAY, behind(shop).verdict());
    }

    @Test
    void saysNothingWithoutStraps() {
        assertEquals(List.of(), Hung.onLift(800, Optional.empty(), Optional.empty()).ask(new StrapLoadCheck()));
    }

    @Test
    void ofAllLegsOfASlingTheHardestCounts() {
        SupportShop shop = new SupportShop(CarrierKind.STRAPS).weighs(900, 0).has(new GearFacts.Strap("strap-C", "strap-C",
                SupportShop.examined(), Optional.of(SupportShop.measured(1000)), Optional.empty(), GearFacts.Mode.STRAIGHT,
                        Optional.empty(), OptionalInt.of(3)));
        shop.support("A", -1, -0.5, 1).on("strap-C");
        shop.support("B", -1, 0.5, 1).on("strap-C");
        shop.support("C", 1, 0, 1).on("strap-C");
        // C carries 450 kg of 900 kg: three legs of 450 kg are 1350 kg against the 1000 kg of the tag, though 900 kg hang in it.
        Finding finding = behind(shop);
        assertEquals(1350, finding.demand().orElseThrow().si(), 1e-6);
        assertEquals(Verdict.STOP, finding.verdict());
    }

    /** Legs of 2.06 m that meet 1.8 m above pull 1.15 times what hangs in them, which nobody may find called tight at 1.1 times. */
    @Test
    void strapsThatMeetInOneHookLeanThoughTheFilesDoNotSaySo() {
        SupportShop shop = Hung.inStraps(800, 440, GearFacts.Mode.STRAIGHT).has(Hung.hoist());
        Finding finding = behind(shop);
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertEquals("length of strap-A, from the hook to A; or the direction of one pull, from the lift point to the hook",
                finding.missing().get(0));
        assertEquals(3, finding.missing().size());
        Finding choked = behind(Hung.inStraps(800, 440, GearFacts.Mode.CHOKED).has(Hung.hoist()));
        assertTrue(choked.missing().get(0).startsWith("direction of the pull at A"), choked.missing().toString());
    }

    private static double demand(SupportShop shop, String strap) {
        return shop.ask(new StrapLoadCheck()).stream().filter(finding -> finding.objectId().equals(strap)).findFirst().orElseThrow()
                .demand().orElseThrow().si();
    }

    private static final double[][] THREE = {{0.9, -0.5}, {0.9, 0.5}, {-1.1, 0}};

    /** 9 kN below a hook 1.6 m above three points: 3.196984 and 4.356005 kN (equilibrium of three forces, by a matrix package). */
    @Test
    void threeLegsPullAsTheirLengthsSay() {
        SupportShop shop = Hung.onHook(9000 / Hung.G, 440, 0.4 / 3, 1.6, THREE);
        assertEquals(3196.984 / Hung.G, demand(shop, "strap-A"), 1e-4);
        assertEquals(3196.984 / Hung.G, demand(shop, "strap-B"), 1e-4);
        assertEquals(4356.005 / Hung.G, demand(shop, "strap-C"), 1e-4);
        assertEquals(Verdict.STOP, behind(shop).verdict(), "444.2 kg against 440 kg");
        assertEquals(Verdict.TIGHT, behind(Hung.onHook(9000 / Hung.G, 445, 0.4 / 3, 1.6, THREE)).verdict());
    }

    /** 700 kg in four legs at 30 degrees: 404.145 kg in each of two on a diagonal (technical article on four-leg slings), not 202. */
    @Test
    void twoOfFourLegsMayCarryAll() {
        double out = 1.2 * Math.tan(Math.toRadians(30)) / Math.sqrt(2);
        double[][] four = {{-out, -out}, {-out, out}, {out, -out}, {out, out}};
        for (String strap : List.of("strap-A", "strap-B", "strap-C", "strap-D")) {
            assertEquals(404.145, demand(Hung.onHook(700, 1000, 0, 1.2, four), strap), 1e-3);
        }
    }

    @Test
    void massAndLengthCountAtTheirWorst() {
        SupportShop heavier = Hung.onHook(9000 / Hung.G, 1000, 0.4 / 3, 1.6, THREE).weighs(9000 / Hung.G, 10);
        assertEquals(4356.005 * (9000 / Hung.G + 20) / 9000, demand(heavier, "strap-C"), 1e-3);
        // The rear strap longer or shorter by 2 x 0.03 m: the hook and the load solved again by the same statics.
        double length = Math.hypot(1.1 + 0.4 / 3, 1.6);
        SupportShop doubtful = Hung.onHook(9000 / Hung.G, 1000, 0.4 / 3, 1.6, THREE)
                .has(Hung.strap("strap-C", 1000, new Value(length, 0.03, Source.MEASURED), OptionalInt.empty()));
        double longer = demand(Hung.onHook(9000 / Hung.G, 1000, 0.4 / 3, 1.6, THREE)
                .has(Hung.strap("strap-C", 1000, SupportShop.measured(length + 0.06), OptionalInt.empty())), "strap-C");
        double shorter = demand(Hung.onHook(9000 / Hung.G, 1000, 0.4 / 3, 1.6, THREE)
                .has(Hung.strap("strap-C", 1000, SupportShop.measured(length - 0.06), OptionalInt.empty())), "strap-C");
        assertTrue(demand(doubtful, "strap-C") >= Math.max(longer, shorter) - 1e-6);
        assertEquals(Math.max(longer, shorter), demand(doubtful, "strap-C"), 5);
    }

    @Test
    void oneDirectionGivesTheHeightOfTheHook() {
        SupportShop shop = new SupportShop(CarrierKind.STRAPS).weighs(800, 0).has(Hung.hoist());
        for (String id : List.of("A", "B", "C")) {
            shop.has(Hung.strap("strap-" + id, Optional.of(SupportShop.measured(450)), GearFacts.Mode.STRAIGHT));
        }
        shop.support("A", -1, -0.5, 1).on("strap-A");
        shop.support("B", -1, 0.5, 1).on("strap-B");
        shop.support("C", 1, 0, 1).on("strap-C").pushes(new Vec3(-1, 0, 1.8));
        // Upright parts 200, 200 and 400 kg (moments); times length over height of each leg.
        assertEquals(200 * Math.sqrt(1 + 0.25 + 3.24) / 1.8, demand(shop, "strap-A"), 1e-6);
        assertEquals(400 * Math.sqrt(1 + 3.24) / 1.8, demand(shop, "strap-C"), 1e-6);
        assertEquals(Verdict.STOP, behind(shop).verdict());
    }

    @Test
    void neverFlatterThanSixtyDegrees() {
        // 1.2333 m aside at 0.72 m up is 59.7 degrees, at 0.70 m 60.4 degrees (EN 1492-1).
        assertEquals(Verdict.TIGHT, behind(Hung.onHook(300, 4000, 0.4 / 3, 0.72, THREE)).verdict());
        Finding flat = behind(Hung.onHook(300, 4000, 0.4 / 3, 0.70, THREE));
        assertEquals(Verdict.STOP, flat.verdict());
        assertTrue(flat.words().contains("leans too far"));
    }

    /** Three legs of one sling: its tag stands for 2.1 times one leg up to 45 degrees, and for 1.5 times up to 60 (EN 1492-1). */
    @Test
    void aSlingThatIsRatedAsAWhole() {
        // Equal legs T_i of 1.75 m: T_A + T_B = T_C x 1.2333/0.76667 sideways, sum of T_i h_i = 1.75 x 900 kg upright; C leans
        // 44.8 degrees.
        double rear = 1.1 + 0.4 / 3;
        double front = 0.9 - 0.4 / 3;
        double leg = 900 * 1.75 / (Math.sqrt(1.75 * 1.75 - rear * rear)
                + rear / front * Math.sqrt(1.75 * 1.75 - front * front - 0.25));
        assertEquals(2.1 * leg, sling(900, 1.75, 1000).demand().orElseThrow().si(), 1e-3);
        assertEquals(Verdict.STOP, sling(900, 1.75, 905).verdict());
        assertEquals(Verdict.TIGHT, sling(900, 1.75, 912).verdict());
        // On 1.6 m it leans 50.4 degrees: the whole weight against 1.5/2.1 of the tag.
        assertEquals(300, sling(300, 1.6, 2000).demand().orElseThrow().si(), 1e-6);
        assertEquals(1.5 / 2.1 * 2000, sling(300, 1.6, 2000).capacity().orElseThrow().si(), 1e-9);
        assertEquals(Verdict.STOP, sling(300, 1.6, 419).verdict());
        assertEquals(Verdict.TIGHT, sling(300, 1.6, 421).verdict());
    }

    /** One sling of three equal legs from a hook 3 m up, its points as high as the legs reach. */
    private static Finding sling(double kilograms, double length, double tag) {
        SupportShop shop = new SupportShop(CarrierKind.STRAPS).weighs(kilograms, 0).balance(0.4 / 3, 0, 0.5, 0).has(Hung.hoist())
                .has(Hung.strap("strap-C", tag, SupportShop.measured(length), OptionalInt.of(3)));
        for (int i = 0; i < 3; i++) {
            double aside = Math.hypot(THREE[i][0] - 0.4 / 3, THREE[i][1]);
            shop.support("ABC".substring(i, i + 1), THREE[i][0], THREE[i][1], 3 - Math.sqrt(length * length - aside * aside)).on("strap-C");
        }
        return behind(shop);
    }

    @Test
    void withTheBalancePointBesideTheStrapsItDoesNotStayHanging() {
        // From the hook, 1.6 m above the straps, to the balance point, 0.5 m below them: beside the straps at x 1.3 x 1.6 / 2.1 = 0.99 m.
        SupportShop shop = Hung.onHook(300, 4000, 0, 1.6, new double[][] {{0.9, -0.5}, {0.9, 0.5}, {-1.1, 0}}).balance(1.3, 0, 0.5, 0);
        List<Finding> findings = shop.ask(new StrapLoadCheck());
        assertEquals(3, findings.size());
        assertTrue(findings.stream().allMatch(finding -> finding.verdict() == Verdict.STOP), findings.toString());
    }

    @Test
    void straightUpToTheArmsOfALiftNothingIsMissing() {
        SupportShop shop = Hung.inStraps(800, 4000, GearFacts.Mode.STRAIGHT).has(Hung.hoist()).has(new GearFacts.Lift("lift", "lift",
                SupportShop.examined(), Optional.empty(), Optional.empty(), Optional.empty(), List.of()));
        assertEquals(Verdict.TIGHT, behind(shop).verdict());
    }
}
