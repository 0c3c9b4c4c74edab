package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.testshop.VisitShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Words only: straps are never better than TIGHT. */
class HangingCheckTest {

    private static final Examination NONE = new Examination(Optional.empty(), Optional.empty(), Optional.empty());

    @Test
    void strapsAreTightAndNothingElseIs() {
        for (CarrierKind kind : CarrierKind.values()) {
            List<Finding> findings = new VisitShop(kind).ask(new HangingCheck());
            assertEquals(kind == CarrierKind.STRAPS ? List.of(Verdict.TIGHT) : List.of(), findings.stream().map(Finding::verdict).toList());
        }
    }

    @Test
    void armsAreSpokenOfOnlyWhereThereAreSome() {
        VisitShop lift = new VisitShop(CarrierKind.STRAPS)
                .with(new GearFacts.Lift("lift", "lift", NONE, Optional.empty(), Optional.empty(), Optional.empty(), List.of()));
        lift.lift = Optional.of("lift");
        assertTrue(lift.ask(new HangingCheck()).get(0).words().contains("arms have no rating to the side"));
        VisitShop hoist = new VisitShop(CarrierKind.STRAPS).with(new GearFacts.Hoist("hoist", "hoist", NONE, Optional.empty(), List.of()));
        hoist.hoist = Optional.of("hoist");
        assertFalse(hoist.ask(new HangingCheck()).get(0).words().contains("arms"));
    }
}
