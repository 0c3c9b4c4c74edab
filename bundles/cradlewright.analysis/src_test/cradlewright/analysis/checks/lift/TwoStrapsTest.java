package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.support.SupportRankCheck;
import cradlewright.analysis.checks.tip.TipOnDollyCheck;
import cradlewright.analysis.facts.Basis;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.testshop.SupportShop;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * A body on exactly two straps from one hook hangs, with its balance point below the hook: 800 kg on straps at x -0.8 m and 1 m, hook and
 * balance point above each other at x 0, hook 1.2 m above the line of the straps. By moments the straps hold up 800 x 1/1.8 and
 * 800 x 0.8/1.8 kg; along the straps that is times length over rise (statics of a two-leg sling). Nothing holds it level about the line
 * of the straps, so it swings until the balance point is below, which changes neither pull.
 */
class TwoStrapsTest {

    private static final double[][] PLACES = {{-0.8, 0}, {1, 0}};
    private static final double FRONT = 800 * 1 / 1.8 * Math.hypot(0.8, 1.2) / 1.2;
    private static final double REAR = 800 * 0.8 / 1.8 * Math.hypot(1, 1.2) / 1.2;

    private static SupportShop shop(double limit, double y, double z, double u) {
        return Hung.onHook(800, limit, 0, 1.2, PLACES).balance(0, y, z, u);
    }

    private static Finding of(SupportShop shop, Check check, String object) {
        return shop.ask(check).stream().filter(finding -> finding.objectId().equals(object)).findFirst().orElseThrow();
    }

    @Test
    void statics() {
        // Beside the line too: 0.05 m aside and 0.5 m below it the load solver finds nothing that would hold it level.
        for (double y : new double[] {0, 0.05}) {
            assertEquals(FRONT, of(shop(540, y, 0.5, 0), new StrapLoadCheck(), "strap-A").demand().orElseThrow().si(), 1e-6);
            assertEquals(REAR, of(shop(540, y, 0.5, 0), new StrapLoadCheck(), "strap-B").demand().orElseThrow().si(), 1e-6);
            assertEquals(Verdict.TIGHT, of(shop(FRONT + 1, y, 0.5, 0), new StrapLoadCheck(), "strap-A").verdict());
            assertEquals(Verdict.STOP, of(shop(FRONT - 1, y, 0.5, 0), new StrapLoadCheck(), "strap-A").verdict());
            assertEquals(List.of(), shop(540, y, 0.5, 0).ask(new TipOnDollyCheck()));
            assertEquals(List.of(), shop(540, y, 0.5, 0).ask(new SupportRankCheck()));
        }
    }

    @Test
    void theLiftPointsCarryThePullToo() {
        SupportShop shop = new SupportShop(CarrierKind.STRAPS).weighs(800, 0).balance(0, 0.05, 0.5, 0).has(Hung.hoist());
        for (int i = 0; i < 2; i++) {
            String id = i == 0 ? "A" : "B";
            double length = Math.hypot(PLACES[i][0], 1.2);
            shop.support(id, PLACES[i][0], 0, 1).on("strap-" + id).atLiftPoint().takes(FRONT * Hung.G - 10, Basis.WORKING_LOAD_LIMIT);
            shop.has(Hung.strap("strap-" + id, 900, SupportShop.measured(length), OptionalInt.empty()));
        }
        Finding front = of(shop, new PointCapacityCheck(), "point-A");
        assertEquals(FRONT * Hung.G, front.demand().orElseThrow().si(), 1e-5);
        assertEquals(Verdict.STOP, front.verdict());
        assertEquals(Verdict.TIGHT, of(shop, new PointCapacityCheck(), "point-B").verdict());
    }

    @Test
    void withoutLengthsNobodyCanSay() {
        for (double y : new double[] {0, 0.05}) {
            SupportShop shop = shop(540, y, 0.5, 0);
            for (String id : List.of("strap-A", "strap-B")) {
                shop.has(Hung.strap(id, Optional.of(SupportShop.measured(540)), GearFacts.Mode.STRAIGHT));
            }
            for (String id : List.of("strap-A", "strap-B")) {
                Finding open = of(shop, new StrapLoadCheck(), id);
                assertEquals(Verdict.CANT_SAY, open.verdict());
                assertTrue(open.missing().get(0).startsWith("length of strap-A"), open.missing().toString());
            }
            assertEquals(List.of(Verdict.CANT_SAY), shop.ask(new SupportRankCheck()).stream().map(Finding::verdict).toList());
            assertEquals(List.of(), shop.ask(new TipOnDollyCheck()));
        }
    }

    @Test
    void aboveItsStrapsItRollsOver() {
        assertEquals(Verdict.STOP, of(shop(540, 0, 1.01, 0), new StrapLoadCheck(), "strap-A").verdict());
        assertEquals(Verdict.STOP, of(shop(540, 0, 1.01, 0), new HangingCheck(), "visit").verdict());
        // 0.02 m below the line, known to give or take 2 x 0.02 m.
        assertEquals(Verdict.STOP, of(shop(540, 0, 0.98, 0.02), new RollCheck(), "visit").verdict());
        assertEquals(Verdict.TIGHT, of(shop(540, 0, 0.95, 0.02), new RollCheck(), "visit").verdict());
    }

    /** Straps left and right: nothing holds the body about the line across, however far apart they are. */
    @Test
    void oneLineAcrossIsOneLine() {
        SupportShop shop = Hung.onHook(800, 900, 0, 1.2, new double[][] {{0, -0.6}, {0, 0.6}}).balance(0, 0, 0.98, 0.02);
        assertEquals(Verdict.STOP, of(shop, new RollCheck(), "visit").verdict());
    }
}
