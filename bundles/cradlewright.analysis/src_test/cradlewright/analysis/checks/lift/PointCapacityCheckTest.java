package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.Basis;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.testshop.SupportShop;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** The lift point C carries half of 800 kg: 3922.66 N. */
class PointCapacityCheckTest {

    private static SupportShop.Place place(SupportShop shop) {
        shop.support("A", -1, -0.5, 1);
        shop.support("B", -1, 0.5, 1);
        return shop.support("C", 1, 0, 1).atLiftPoint();
    }

    private static Verdict verdict(CarrierKind kind, double capacity, Basis basis) {
        SupportShop shop = new SupportShop(kind).weighs(800, 0);
        place(shop).takes(capacity, basis);
        List<Finding> findings = shop.ask(new PointCapacityCheck());
        assertEquals(1, findings.size());
        assertEquals("point-C", findings.get(0).objectId());
        return findings.get(0).verdict();
    }

    @Test
    void holdsStandsTightAndStops() {
        // 3922.66 N against 4400, 4300 and 3900 N: 0.892, 0.912, 1.006.
        assertEquals(Verdict.HOLDS, verdict(CarrierKind.LIFT, 4400, Basis.WORKING_LOAD_LIMIT));
        assertEquals(Verdict.TIGHT, verdict(CarrierKind.LIFT, 4300, Basis.WORKING_LOAD_LIMIT));
        assertEquals(Verdict.STOP, verdict(CarrierKind.LIFT, 3900, Basis.WORKING_LOAD_LIMIT));
        assertEquals(Verdict.STOP, verdict(CarrierKind.STRAPS, 3900, Basis.WORKING_LOAD_LIMIT));
    }

    @Test
    void inStrapsNeverBetterThanTight() {
        assertEquals(Verdict.TIGHT, verdict(CarrierKind.STRAPS, 9000, Basis.WORKING_LOAD_LIMIT));
    }

    @Test
    void designResistanceStandsAgainstOneAndAHalfTimes() {
        // 1.5 x 3922.66 = 5884 N.
        assertEquals(Verdict.STOP, verdict(CarrierKind.LIFT, 5800, Basis.DESIGN_RESISTANCE));
        assertEquals(Verdict.TIGHT, verdict(CarrierKind.LIFT, 5900, Basis.DESIGN_RESISTANCE));
    }

    @Test
    void cantSayWithoutCapacityWhileLifted() {
        SupportShop lifted = new SupportShop(CarrierKind.LIFT).weighs(800, 0);
        place(lifted);
        assertEquals(Verdict.CANT_SAY, lifted.ask(new PointCapacityCheck()).get(0).verdict());
        SupportShop standing = new SupportShop(CarrierKind.FLOOR).weighs(800, 0);
        place(standing);
        assertEquals(List.of(), standing.ask(new PointCapacityCheck()));
    }

    @Test
    void cantSayWhereTheStrapsMeetInOneHook() {
        SupportShop shop = new SupportShop(CarrierKind.STRAPS).weighs(800, 0).has(new GearFacts.Hoist("hoist", "hoist",
                SupportShop.examined(), Optional.of(SupportShop.measured(2000)), List.of()));
        for (String id : List.of("A", "B", "C")) {
            shop.has(Hung.strap("strap-" + id, Optional.of(SupportShop.measured(4000)), GearFacts.Mode.STRAIGHT));
        }
        shop.support("A", -1, -0.5, 1).on("strap-A");
        shop.support("B", -1, 0.5, 1).on("strap-B");
        shop.support("C", 1, 0, 1).on("strap-C").atLiftPoint().takes(9000, Basis.WORKING_LOAD_LIMIT);
        assertEquals(Verdict.CANT_SAY, shop.ask(new PointCapacityCheck()).get(0).verdict());
    }

    /** 9 kN below a hook 1.6 m above three points: 4.356005 kN in the rear leg (equilibrium of three forces, by a matrix package). */
    @Test
    void thePullAlongALeaningStrapCounts() {
        assertEquals(Verdict.TIGHT, leaning(4400).verdict());
        assertEquals(4356.005, leaning(4400).demand().orElseThrow().si(), 1e-3);
        assertEquals(Verdict.STOP, leaning(4300).verdict());
    }

    private static Finding leaning(double capacity) {
        SupportShop shop = new SupportShop(CarrierKind.STRAPS).weighs(9000 / Hung.G, 0).balance(0.4 / 3, 0, 0.5, 0).has(Hung.hoist());
        double[][] places = {{0.9, -0.5}, {0.9, 0.5}, {-1.1, 0}};
        for (int i = 0; i < 3; i++) {
            String id = "ABC".substring(i, i + 1);
            double aside = Math.hypot(places[i][0] - 0.4 / 3, places[i][1]);
            shop.has(Hung.strap("strap-" + id, 1000, SupportShop.measured(Math.hypot(aside, 1.6)), OptionalInt.empty()));
            SupportShop.Place place = shop.support(id, places[i][0], places[i][1], 1).on("strap-" + id);
            if (i == 2) {
                place.atLiftPoint().takes(capacity, Basis.WORKING_LOAD_LIMIT);
            }
        }
        return shop.ask(new PointCapacityCheck()).get(0);
    }
}
