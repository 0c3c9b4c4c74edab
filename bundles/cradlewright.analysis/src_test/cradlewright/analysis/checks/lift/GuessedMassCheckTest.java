package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One part in twenty may be guessed (common practice, no source): 5 kg of 100 kg is at the limit, 5.1 kg of 100 kg beyond it. */
class GuessedMassCheckTest {

    private static VisitShop shop(CarrierKind kind, double guessed, Source source) {
        return new VisitShop(kind).part("body", 100 - guessed, 0, 0, 0).part("tank", new Value(guessed, 0, source), Vec3.ZERO, 0);
    }

    private static Finding only(VisitShop shop) {
        List<Finding> findings = shop.ask(new GuessedMassCheck());
        assertEquals(1, findings.size());
        return findings.get(0);
    }

    @Test
    void holdsUpToOnePartInTwenty() {
        Finding finding = only(shop(CarrierKind.STRAPS, 5, Source.GUESSED));
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(List.of(100.0, 5.0), finding.inputs().stream().map(input -> input.amount().si()).toList());
    }

    @Test
    void cantSayBeyond() {
        Finding finding = only(shop(CarrierKind.STRAPS, 5.1, Source.GUESSED));
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertTrue(finding.words().contains("tank"));
        assertEquals(Verdict.CANT_SAY, only(shop(CarrierKind.LIFT, 5.1, Source.UNSTATED)).verdict());
        assertEquals(Verdict.HOLDS, only(shop(CarrierKind.LIFT, 5.1, Source.WEIGHED)).verdict());
    }

    @Test
    void cantSayWhenAPartHasNoMassAtAll() {
        VisitShop shop = shop(CarrierKind.STRAPS, 1, Source.GUESSED);
        shop.partsOn.add("engine");
        assertEquals(List.of("a part that is on but not in the file: engine"), only(shop).missing());
    }

    @Test
    void asksNothingOfWhatStands() {
        assertEquals(List.of(), shop(CarrierKind.DOLLY, 50, Source.GUESSED).ask(new GuessedMassCheck()));
        assertEquals(List.of(), new VisitShop(CarrierKind.STRAPS).ask(new GuessedMassCheck()));
    }
}
