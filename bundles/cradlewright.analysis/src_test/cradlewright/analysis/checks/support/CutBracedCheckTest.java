package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.BraceFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.CutZoneFacts;
import cradlewright.analysis.testshop.VisitShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Words only: which braces a planned cut names and whether they are fitted. */
class CutBracedCheckTest {

    private static List<Finding> ask(boolean planned, String... braces) {
        VisitShop shop = new VisitShop(CarrierKind.DOLLY);
        shop.braces.add(new BraceFacts("fitted", "door bar", Optional.empty(), Optional.empty(), true));
        shop.braces.add(new BraceFacts("loose", "cross bar", Optional.empty(), Optional.empty(), false));
        shop.cuts.add(new CutZoneFacts("sill", "sill", Optional.empty(), Optional.empty(), planned, List.of(braces)));
        return shop.ask(new CutBracedCheck());
    }

    private static Verdict verdict(String... braces) {
        return ask(true, braces).get(0).verdict();
    }

    @Test
    void holdsWhenAllAreFitted() {
        assertEquals(Verdict.HOLDS, verdict("fitted"));
    }

    @Test
    void stopsWhenOneIsNot() {
        Finding finding = ask(true, "fitted", "loose").get(0);
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals("Not yet braced: cross bar is not fitted.", finding.words());
    }

    @Test
    void cantSayWhenNoneIsNamedOrOneIsNotThere() {
        assertEquals(Verdict.CANT_SAY, verdict());
        assertEquals(Verdict.CANT_SAY, verdict("gone"));
        Finding finding = ask(true, "fitted", "gone").get(0);
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertTrue(finding.missing().get(0).contains("gone"));
        assertEquals(Verdict.STOP, verdict("loose", "gone"), "what is certain stops");
    }

    @Test
    void asksNothingWithoutAPlannedCut() {
        assertEquals(List.of(), ask(false, "loose"));
    }
}
