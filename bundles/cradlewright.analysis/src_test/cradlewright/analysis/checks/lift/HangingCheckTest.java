package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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

    private static final double[][] FOUR = {{0.9, -0.6}, {0.9, 0.6}, {-0.9, 0.6}, {-0.9, -0.6}};

    /**
     * Four equal straps in one hook 0.9 m above the points, balance point in the middle 1.4 m below it: whatever three stay taut, the hook
     * stays where it is, so the tilt is that of a pendulum, the way of the balance point over 1.4 m (statics).
     */
    @Test
    void fourEqualStrapsStayAlsoWhereTheBalancePointIsNotKnownExactly() {
        for (double u : new double[] {0, 0.001, 0.02}) {
            Finding finding = hanging(Hung.onHook(500, 1000, 0, 0.9, FOUR).balance(0, 0, 0.5, u));
            assertEquals(Verdict.TIGHT, finding.verdict(), finding.words());
            assertEquals(0, finding.inputs().get(0).amount().si(), 1e-7);
            assertEquals(Math.atan(Math.hypot(2 * u, 2 * u) / 1.4), finding.inputs().get(1).amount().si(), 1e-9 + 0.01 * u);
        }
        assertEquals(List.of(Verdict.TIGHT), Hung.onHook(500, 1000, 0, 0.9, FOUR).balance(0, 0, 0.5, 0.02).ask(new StrapLoadCheck())
                .stream().map(Finding::verdict).distinct().toList());
    }

    /**
     * One of them known to 2 x 5 mm: 10 mm too long it hangs slack and nothing tilts; 10 mm too short it carries with the one across, for
     * the squares of the ways from the hook to both ends of either diagonal add up to the same, so the other two are long enough. The
     * hook is in the upright plane through both points then, the triangle of two legs and the diagonal says where.
     */
    @Test
    void aStrapThatMayBeShortTilts() {
        double length = Math.sqrt(0.9 * 0.9 + 0.6 * 0.6 + 0.9 * 0.9);
        SupportShop shop = Hung.onHook(500, 1000, 0, 0.9, FOUR)
                .has(Hung.strap("strap-A", 1000, new Value(length, 0.005, Source.MEASURED), OptionalInt.empty()));
        double across = Math.hypot(1.8, 1.2);
        double foot = ((length - 0.01) * (length - 0.01) - length * length + across * across) / (2 * across);
        double off = across / 2 - foot;
        double height = Math.sqrt((length - 0.01) * (length - 0.01) - foot * foot);
        assertEquals(0, hanging(shop).inputs().get(0).amount().si(), 1e-7);
        assertEquals(Math.atan(off / (height + 0.5)), hanging(shop).inputs().get(1).amount().si(), 1e-5);
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
