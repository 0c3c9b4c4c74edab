package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.testshop.SupportShop;
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

    private static Finding hanging(SupportShop shop) {
        List<Finding> findings = shop.ask(new HangingCheck());
        assertEquals(1, findings.size());
        return findings.get(0);
    }

    /** Balance point 0.12 m beside and 1.4 m below the hook: atan(0.12/1.4) = 4.89909 degrees (statics). */
    @Test
    void theTiltIsShownAndMuchOfItSaid() {
        double[][] places = {{0.9, -0.6}, {0.9, 0.6}, {-0.9, 0}};
        Finding little = hanging(Hung.onHook(500, 1000, 0, 0.9, places).balance(0.12, 0, 0.5, 0));
        assertEquals(4.89909, Math.toDegrees(little.inputs().get(0).amount().si()), 1e-5);
        assertEquals(4.89909, Math.toDegrees(little.inputs().get(1).amount().si()), 1e-4);
        assertFalse(little.words().contains("does not hang level"));
        // Known to give or take 2 x 0.01 m it may hang tilted by more than 5 degrees.
        Finding much = hanging(Hung.onHook(500, 1000, 0, 0.9, places).balance(0.12, 0, 0.5, 0.01));
        assertEquals(Verdict.TIGHT, much.verdict());
        assertTrue(much.words().startsWith("It does not hang level"), much.words());
        assertTrue(much.inputs().get(1).amount().si() >= Math.atan(0.14 / 1.4));
    }

    @Test
    void whatDoesNotStayHangingStops() {
        double[][] places = {{0.9, -0.6}, {0.9, 0.6}, {-0.9, 0}};
        // The line from the hook, 0.9 m above the points, to the balance point, 0.5 m below them, leaves the points at x 0.9 m: 1.4 m out.
        Finding slack = hanging(Hung.onHook(500, 1000, 0, 0.9, places).balance(1.41, 0, 0.5, 0));
        assertEquals(Verdict.STOP, slack.verdict());
        assertTrue(slack.words().contains("goes slack"), slack.words());
        // atan(1.2/1.4) is 40.6 degrees.
        Finding slips = hanging(Hung.onHook(500, 1000, 0, 0.9, places).balance(1.2, 0, 0.5, 0));
        assertEquals(Verdict.STOP, slips.verdict());
        assertEquals(Math.atan(1.2 / 1.4), slips.inputs().get(0).amount().si(), 1e-9);
        // As listed 12.1 degrees, but known only to give or take 2 x 0.15 m: 23.2 degrees.
        assertEquals(Verdict.STOP, hanging(Hung.onHook(500, 1000, 0, 0.9, places).balance(0.3, 0, 0.5, 0.15)).verdict());
        assertEquals(Verdict.TIGHT, hanging(Hung.onHook(500, 1000, 0, 0.9, places).balance(0.1, 0, 0.5, 0.01)).verdict());
    }
}
