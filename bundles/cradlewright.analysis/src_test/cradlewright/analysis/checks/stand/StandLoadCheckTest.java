package cradlewright.analysis.checks.stand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.SupportShop;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Stand C carries half of 800 kg; with the margin of 1.5 (common practice) it must be rated for 600 kg. */
class StandLoadCheckTest {

    private static GearFacts.Stand stand(String id, Optional<Value> rated, Optional<Boolean> perPair) {
        return new GearFacts.Stand(id, id, SupportShop.examined(), rated, perPair, Optional.empty(), Optional.empty(),
                OptionalInt.empty());
    }

    private static GearFacts.Stand stand(String id, double rated, boolean perPair) {
        return stand(id, Optional.of(SupportShop.measured(rated)), Optional.of(perPair));
    }

    private static SupportShop shop(GearFacts gear) {
        SupportShop shop = new SupportShop(CarrierKind.STANDS).weighs(800, 0).has(gear);
        shop.support("A", -1, -0.5, 1);
        shop.support("B", -1, 0.5, 1);
        shop.support("C", 1, 0, 1).on(gear.id());
        return shop;
    }

    private static Finding only(SupportShop shop) {
        List<Finding> findings = shop.ask(new StandLoadCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void ratedEach() {
        assertEquals(Verdict.HOLDS, only(shop(stand("C", 680, false))).verdict());
        assertEquals(Verdict.TIGHT, only(shop(stand("C", 650, false))).verdict());
        Finding stop = only(shop(stand("C", 590, false)));
        assertEquals(Verdict.STOP, stop.verdict());
        assertEquals(600, stop.demand().orElseThrow().si(), 1e-6);
    }

    @Test
    void ratedByThePair() {
        assertEquals(Verdict.STOP, only(shop(stand("C", 1180, true))).verdict());
        Finding holds = only(shop(stand("C", 1400, true)));
        assertEquals(Verdict.HOLDS, holds.verdict());
        assertEquals(700, holds.capacity().orElseThrow().si(), 1e-9);
    }

    @Test
    void aLargerStandOfTheShopIsWorkedOut() {
        SupportShop shop = shop(stand("C", 590, false)).has(stand("pair", 1100, true)).has(stand("big", 3000, true));
        assertEquals(List.of(Remedy.mends("Use big here if its height fits.", Verdict.HOLDS)), only(shop).remedies());
    }

    @Test
    void cantSayWithoutRatingOrPair() {
        assertEquals(Verdict.CANT_SAY, only(shop(stand("C", Optional.empty(), Optional.of(false)))).verdict());
        assertEquals(Verdict.CANT_SAY, only(shop(stand("C", Optional.of(SupportShop.measured(9000)), Optional.empty())))
                .verdict());
    }

    @Test
    void aTrailerCarriesAllWithoutMargin() {
        GearFacts trailer = new GearFacts.Trailer("T", "T", SupportShop.examined(), Optional.of(SupportShop.measured(900)));
        SupportShop shop = new SupportShop(CarrierKind.STANDS).weighs(800, 0).has(trailer);
        shop.support("A", -1, -0.5, 1).on("T");
        shop.support("B", -1, 0.5, 1).on("T");
        shop.support("C", 1, 0, 1).on("T");
        Finding finding = only(shop);
        assertEquals(800, finding.demand().orElseThrow().si(), 1e-6);
        assertEquals(Verdict.HOLDS, finding.verdict());
    }

    @Test
    void aTrestleIsRatedByItself() {
        assertEquals(Verdict.STOP, only(shop(new GearFacts.Trestle("T", "T", SupportShop.examined(),
                Optional.of(SupportShop.measured(590))))).verdict());
        assertEquals(Verdict.HOLDS, only(shop(new GearFacts.Trestle("T", "T", SupportShop.examined(),
                Optional.of(SupportShop.measured(700))))).verdict());
    }
}
