package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.mechanics.geometry.Vec3;
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
        SupportShop shop = Hung.inStraps(800, 440, GearFacts.Mode.STRAIGHT).has(hoist());
        Finding finding = behind(shop);
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertTrue(finding.missing().get(0).startsWith("how far the strap at C leans"), finding.missing().toString());
    }

    @Test
    void straightUpToTheArmsOfALiftNothingIsMissing() {
        SupportShop shop = Hung.inStraps(800, 4000, GearFacts.Mode.STRAIGHT).has(hoist()).has(new GearFacts.Lift("lift", "lift",
                SupportShop.examined(), Optional.empty(), Optional.empty(), Optional.empty(), List.of()));
        assertEquals(Verdict.TIGHT, behind(shop).verdict());
    }

    @Test
    void aDirectionInTheFilesIsJudged() {
        SupportShop shop = new SupportShop(CarrierKind.STRAPS).weighs(800, 0).has(hoist());
        for (String id : List.of("A", "B", "C")) {
            shop.has(Hung.strap("strap-" + id, Optional.of(SupportShop.measured(4000)), GearFacts.Mode.STRAIGHT));
        }
        shop.support("A", -1, -0.5, 1).on("strap-A").pushes(new Vec3(1, 0.5, 1.8));
        shop.support("B", -1, 0.5, 1).on("strap-B").pushes(new Vec3(1, -0.5, 1.8));
        shop.support("C", 1, 0, 1).on("strap-C").pushes(new Vec3(-1, 0, 1.8));
        assertEquals(Verdict.STOP, behind(shop).verdict(), "beyond the 6 degrees of an upright leg");
    }

    private static GearFacts.Hoist hoist() {
        return new GearFacts.Hoist("hoist", "hoist", SupportShop.examined(), Optional.of(SupportShop.measured(2000)), List.of());
    }
}
