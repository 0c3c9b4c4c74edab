package cradlewright.analysis.checks.stand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.testshop.SupportShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A trestle in the middle under four other supports, set low so that it does not touch; or a third support with a small share. */
class StandIdleCheckTest {

    private static SupportShop shop(double x) {
        SupportShop shop = new SupportShop(CarrierKind.STANDS).weighs(900, 0).balance(x, 0, 1, 0)
                .has(new GearFacts.Trestle("T", "trestle", SupportShop.examined(), Optional.empty()));
        shop.support("A", -1, -0.5, 1);
        shop.support("B", -1, 0.5, 1);
        return shop;
    }

    private static Finding only(SupportShop shop) {
        List<Finding> findings = shop.ask(new StandIdleCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void carriesOrIsLight() {
        // Share of the trestle behind (1 + x)/2; a tenth of the mean of three is a thirtieth.
        SupportShop carries = shop(-0.9);
        carries.support("C", 1, 0, 1).on("T");
        assertEquals(Verdict.HOLDS, only(carries).verdict());
        SupportShop light = shop(-0.94);
        light.support("C", 1, 0, 1).on("T");
        // (1 - 0.94)/2 = 0.03 of the weight against a thirtieth.
        assertEquals(Verdict.STOP, only(light).verdict());
        SupportShop hardly = shop(-0.93);
        hardly.support("C", 1, 0, 1).on("T");
        // 0.035: above a thirtieth, a thirtieth above nine tenths of it.
        assertEquals(Verdict.TIGHT, only(hardly).verdict());
    }

    @Test
    void stopsWhenItCarriesNothing() {
        SupportShop shop = shop(0);
        shop.support("C", 1, 0, 1);
        shop.support("M", 0, 0, 1).on("T").low(0.02);
        Finding finding = only(shop);
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals("trestle carries nothing: do not count on it.", finding.words());
    }

    @Test
    void cantSayWithoutMass() {
        SupportShop shop = new SupportShop(CarrierKind.STANDS).has(new GearFacts.Trestle("T", "trestle", SupportShop.examined(),
                Optional.empty()));
        shop.support("A", 0, 0, 0).on("T");
        assertEquals(Verdict.CANT_SAY, only(shop).verdict());
    }
}
