package cradlewright.analysis.checks.castor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.StockFacts.Tread;
import cradlewright.analysis.testshop.RollingShop;
import cradlewright.analysis.testshop.SupportShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Common practice, no source: polyurethane gets flats in storage of more than a month. */
class CastorStandingCheckTest {

    private static RollingShop in(PlaceFacts.Kind kind) {
        return new RollingShop().at(new PlaceFacts("place", "place", kind, Optional.empty(), false, Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    }

    private static Finding only(RollingShop shop) {
        List<Finding> findings = shop.ask(new CastorStandingCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void polyurethaneIsTightInStorage() {
        assertEquals(Verdict.TIGHT, only(in(PlaceFacts.Kind.RACK)).verdict());
        assertEquals(Verdict.TIGHT, only(in(PlaceFacts.Kind.YARD).staysUntil(SupportShop.TODAY.plusDays(31))).verdict());
        assertEquals(Remedy.mends("Put the feet down while it is stored.", Verdict.HOLDS),
                only(in(PlaceFacts.Kind.RACK).feet(0.6, false)).remedies().get(0));
    }

    @Test
    void otherTreadsHold() {
        assertEquals(Verdict.HOLDS, only(in(PlaceFacts.Kind.RACK).tread(Optional.of(Tread.POLYAMIDE))).verdict());
    }

    @Test
    void cantSayWithoutTread() {
        assertEquals(Verdict.CANT_SAY, only(in(PlaceFacts.Kind.RACK).tread(Optional.empty())).verdict());
    }

    @Test
    void notAskedAtWorkForAShortWhileOrOnFeet() {
        CastorStandingCheck check = new CastorStandingCheck();
        assertEquals(List.of(), in(PlaceFacts.Kind.BAY).ask(check));
        assertEquals(List.of(), in(PlaceFacts.Kind.RACK).staysUntil(SupportShop.TODAY.plusDays(30)).ask(check));
        assertEquals(List.of(), in(PlaceFacts.Kind.RACK).feet(0.6, true).ask(check));
    }
}
