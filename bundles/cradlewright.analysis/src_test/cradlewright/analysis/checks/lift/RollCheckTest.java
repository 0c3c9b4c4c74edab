package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.analysis.testshop.VisitShop;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two lines of straps as springs: rights k s2/2, upsets W h (own derivation, by the potential energy of two springs). */
class RollCheckTest {

    /** Two straps on each side, s 1.0 m apart, at z 1. */
    private static SupportShop shop(double strapStiffness, double height) {
        SupportShop shop = new SupportShop(CarrierKind.STRAPS).weighs(4000 / Hung.G, 0).balance(0, 0, height, 0);
        for (double x : new double[] {-1, 1}) {
            for (double y : new double[] {-0.5, 0.5}) {
                shop.support("at " + x + " " + y, x, y, 1).gives(1 / strapStiffness);
            }
        }
        return shop;
    }

    private static Finding only(SupportShop shop) {
        List<Finding> findings = shop.ask(new RollCheck());
        assertEquals(1, findings.size());
        return findings.get(0);
    }

    @Test
    void standsOnStiffStraps() {
        // Line stiffness 2 x 100 kN/m, s 1.0 m, W 4 kN, h 0.4 m: 100 kN m/rad against 1.6 kN m/rad.
        Finding finding = only(shop(100e3, 1.4));
        assertEquals(Verdict.TIGHT, finding.verdict());
        assertEquals(1600, finding.demand().orElseThrow().si(), 1e-6);
        assertEquals(100e3, finding.capacity().orElseThrow().si(), 1e-3);
    }

    @Test
    void rollsOverOnSoftStraps() {
        // Line stiffness 2 x 1.5 kN/m gives 1.5 kN m/rad, less than 1.6; 2 x 1.7 gives more.
        assertEquals(Verdict.STOP, only(shop(1.5e3, 1.4)).verdict());
        assertEquals(Verdict.TIGHT, only(shop(1.7e3, 1.4)).verdict());
    }

    @Test
    void rightsItselfBelowTheStraps() {
        Finding finding = only(shop(1.5e3, 0.9));
        assertEquals(Verdict.TIGHT, finding.verdict());
        assertTrue(finding.words().contains("rights itself"));
    }

    @Test
    void theHeightCountsAtItsUpperEnd() {
        // 1.6 kN m/rad at h 0.4 m is held by 1.7; with 2 x 0.02 m more it is 1.76.
        assertEquals(Verdict.STOP, only(shop(1.7e3, 1.4).balance(0, 0, 1.4, 0.02)).verdict());
    }

    @Test
    void itRollsAboutTheLengthOfTheCarWhicheverWayItHangs() {
        VisitShop shop = new VisitShop(CarrierKind.STRAPS).part("body", 4000 / Hung.G, 0, 0, 1.4);
        for (double y : new double[] {-0.5, 0.5}) {
            shop.touch("front " + y).at(-1, y, 1).stiff(100e3);
            shop.touch("rear " + y).at(1, y, 1).stiff(100e3);
        }
        for (double heading : new double[] {0, 90, 180, 215}) {
            shop.heading = Math.toRadians(heading);
            assertEquals(100e3, shop.ask(new RollCheck()).get(0).capacity().orElseThrow().si(), 1e-3, "turned by " + heading);
        }
    }

    @Test
    void oneLineOfStrapsRollsOver() {
        SupportShop shop = new SupportShop(CarrierKind.STRAPS).weighs(400, 0).balance(0, 0, 2, 0);
        shop.support("A", -1, 0, 1);
        shop.support("B", 1, 0, 1);
        assertEquals(Verdict.STOP, only(shop).verdict());
    }

    @Test
    void namesWhatIsAssumed() {
        SupportShop shop = new SupportShop(CarrierKind.STRAPS).weighs(400, 0).balance(0, 0, 2, 0);
        shop.support("A", -1, -0.5, 1).giveUnknown();
        shop.support("B", 1, 0.5, 1);
        shop.support("C", 1, -0.5, 1);
        assertTrue(only(shop).inputs().stream().anyMatch(input -> input.origin().startsWith("assumed")));
    }

    @Test
    void asksOnlyAboutStraps() {
        SupportShop shop = new SupportShop(CarrierKind.LIFT).weighs(400, 0);
        shop.support("A", 0, 0, 0);
        assertEquals(List.of(), shop.ask(new RollCheck()));
    }
}
