package cradlewright.analysis.checks.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.testshop.VisitShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Wind is no part of any answer; common practice, no source. */
class OutdoorsCheckTest {

    private static List<Finding> ask(Optional<Boolean> setup, boolean place, Optional<Boolean> covered) {
        VisitShop shop = new VisitShop(CarrierKind.FLOOR)
                .with(new PlaceFacts("yard", "yard", PlaceFacts.Kind.YARD, Optional.empty(), place, Optional.empty(), Optional.empty(),
                        Optional.empty()))
                .with(new PlacementFacts("p", "p", Optional.of("visit"), Optional.of("yard")));
        shop.weather = new SetupFacts.Weather(setup, covered);
        return shop.ask(new OutdoorsCheck());
    }

    @Test
    void tightOutdoors() {
        assertEquals(Verdict.TIGHT, ask(Optional.of(true), false, Optional.empty()).get(0).verdict());
        Finding covered = ask(Optional.empty(), true, Optional.of(true)).get(0);
        assertEquals(Verdict.TIGHT, covered.verdict());
        assertTrue(covered.words().contains("cover"), covered.words());
        assertTrue(!ask(Optional.empty(), true, Optional.of(false)).get(0).words().contains("cover"));
    }

    @Test
    void asksNothingIndoors() {
        assertEquals(List.of(), ask(Optional.empty(), false, Optional.of(true)));
        assertEquals(List.of(), ask(Optional.of(false), true, Optional.empty()), "a setup in the tent of the yard");
    }
}
