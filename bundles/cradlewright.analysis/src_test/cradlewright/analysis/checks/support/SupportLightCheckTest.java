package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.testshop.SupportShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Four equal supports of 1e-6 m/N under 900 kg: 2206.5 N each. One that is d low loses d/(4e-6 m/N) (closed form of the warp of four
 * springs), so it carries nothing from 8.826 mm and a tenth of the mean at 7.943 mm.
 */
class SupportLightCheckTest {

    private static SupportShop shop(double low) {
        SupportShop shop = new SupportShop(CarrierKind.FLOOR).weighs(900, 0);
        shop.support("FL", -1, -0.5, 0.5).gives(1e-6).low(low);
        shop.support("FR", -1, 0.5, 0.5).gives(1e-6);
        shop.support("RR", 1, 0.5, 0.5).gives(1e-6);
        shop.support("RL", 1, -0.5, 0.5).gives(1e-6);
        return shop;
    }

    private static Finding first(SupportShop shop) {
        List<Finding> findings = shop.ask(new SupportLightCheck());
        assertEquals(4, findings.size());
        return findings.get(0);
    }

    @Test
    void holdsIsLightAndCarriesNothing() {
        // The mean is 2206.5 N: a tenth with a margin of a tenth, 245.2 N, is reached at 7.845 mm, a tenth at 7.943 mm.
        assertEquals(Verdict.HOLDS, first(shop(0.0078)).verdict());
        assertEquals(Verdict.TIGHT, first(shop(0.0079)).verdict());
        Finding light = first(shop(0.0080));
        assertEquals(Verdict.STOP, light.verdict());
        assertEquals(220.650, light.demand().orElseThrow().si(), 1e-3);
        assertEquals(206.496, light.capacity().orElseThrow().si(), 1e-3);
        assertEquals(900 * 9.80665 / 4 - 0.0080 / 4e-6, light.inputs().get(0).amount().si(), 1e-3);
        assertTrue(light.words().startsWith("It is light."));
        assertTrue(light.words().endsWith("takes its share."));
        assertEquals(Verdict.STOP, first(shop(0.0089)).verdict());
    }

    @Test
    void stepsAreWorkedOut() {
        // 8.3 mm less half a millimetre is below 7.845 mm; 9.5 mm needs 1.66 mm, four steps.
        assertEquals(List.of(Remedy.mends("Raise FL by 1 step of half a millimetre.", Verdict.HOLDS)), first(shop(0.0083))
                .remedies());
        assertEquals(List.of(Remedy.mends("Raise FL by 4 steps of half a millimetre.", Verdict.HOLDS)), first(shop(0.0095))
                .remedies());
    }

    @Test
    void shimsOfTheStockComeFirst() {
        SupportShop shop = shop(0.0095).has(new StockFacts.Shim("thick", "thick", Optional.of(SupportShop.measured(0.003)),
                Optional.empty(), Optional.empty(),
                Optional.of(1))).has(new StockFacts.Shim("thin", "thin", Optional.of(SupportShop.measured(0.001)),
                        Optional.empty(), Optional.empty(), Optional.of(1)));
        assertEquals(List.of(Remedy.mends("Lay 1 of thick under FL.", Verdict.HOLDS)), first(shop).remedies());
    }

    @Test
    void aShimThatIsFarTooThickIsNotLaid() {
        SupportShop shop = shop(0.0095).has(new StockFacts.Shim("block", "block", Optional.of(SupportShop.measured(0.025)),
                Optional.empty(), Optional.empty(),
                Optional.of(1)));
        assertEquals("Raise FL by 4 steps of half a millimetre.", first(shop).remedies().get(0).words());
    }

    @Test
    void theUnfavourableEndCounts() {
        // Give or take of the balance point 2 x 0.05 m: at 7.8 mm the listed answer holds, the end does not.
        Finding finding = first(shop(0.0078).balance(0, 0, 1, 0.05));
        assertEquals(Verdict.STOP, finding.verdict());
        assertTrue(finding.words().contains("unfavourable end"));
    }

    @Test
    void cantSayWithoutMass() {
        SupportShop shop = new SupportShop(CarrierKind.FLOOR);
        shop.support("A", 0, 0, 0);
        assertEquals(Verdict.CANT_SAY, shop.ask(new SupportLightCheck()).get(0).verdict());
    }
}
