package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Three equal supports, balance point and a pull of 800 N across both in their middle and level with them: each carries a third of the
 * weight and holds a third of the pull, 266.7 N. Friction 0.3 (common practice).
 */
class SupportSlideCheckTest {

    private static SupportShop shop(double weight, Hold behind) {
        SupportShop shop = new SupportShop(CarrierKind.FLOOR).weighs(weight / 9.80665, 0).balance(-1.0 / 3, 0, 1, 0)
                .work("bar", WorkPointFacts.Kind.BAR, new Vec3(-1.0 / 3, 0, 0.5), new Vec3(0, 1, 0));
        shop.support("A", -1, -0.5, 0.5);
        shop.support("B", -1, 0.5, 0.5);
        shop.support("C", 1, 0, 0.5).holds(behind);
        return shop;
    }

    private static Finding first(SupportShop shop) {
        return shop.ask(new SupportSlideCheck()).get(0);
    }

    @Test
    void holdsStandsTightAndStops() {
        // Weight 3000 N: 266.7 against 300 N, 0.889; 2900 N: 0.92; 2600 N: 780 N of friction against 800 N.
        Finding holds = first(shop(3000, Hold.RESTS));
        assertEquals(Verdict.HOLDS, holds.verdict());
        assertEquals(800.0 / 3, holds.demand().orElseThrow().si(), 0.01);
        assertEquals(300, holds.capacity().orElseThrow().si(), 0.01);
        assertEquals(Verdict.TIGHT, first(shop(2900, Hold.RESTS)).verdict());
        Finding stop = first(shop(2600, Hold.RESTS));
        assertEquals(Verdict.STOP, stop.verdict());
        assertEquals(Remedy.mends("Nobody pulls on a bar while it stands like this.", Verdict.HOLDS), stop.remedies()
                .get(0));
    }

    @Test
    void theShopsOwnFrictionDecidesAtItsLowEnd() {
        // 3000 N: 266.7 N against 0.25 * 1000 = 250 N here, and 800 N against 750 N in all; at 0.35 it is 1050 N.
        SupportShop shop = shop(3000, Hold.RESTS).friction(0.25, 0.35);
        Finding stop = first(shop);
        assertEquals(Verdict.STOP, stop.verdict());
        assertEquals(250, stop.capacity().orElseThrow().si(), 0.01);
        assertTrue(stop.remedies().stream().anyMatch(remedy -> remedy.words().contains("spring balance")), stop.remedies()::toString);
        assertTrue(first(shop.friction(0.25, 0.26)).remedies().stream().noneMatch(remedy -> remedy.words().contains("spring balance")));
        // 2600 N held no more at 0.3; at 0.35 it is 266.7 N against 303.3 N.
        assertEquals(Verdict.HOLDS, first(shop(2600, Hold.RESTS).friction(0.35, 0.35)).verdict());
    }

    @Test
    void aPinHoldsTheRest() {
        List<Finding> findings = shop(2600, Hold.PINNED).ask(new SupportSlideCheck());
        assertEquals(List.of("A", "B"), findings.stream().map(Finding::objectName).toList());
        assertEquals(Verdict.TIGHT, findings.get(0).verdict());
        assertTrue(findings.get(0).words().contains("other supports hold"));
    }

    @Test
    void nothingSlidesWithoutAPushSideways() {
        SupportShop shop = new SupportShop(CarrierKind.FLOOR).weighs(100, 0).work("step", WorkPointFacts.Kind.STAND_ON,
                Vec3.ZERO, new Vec3(0, 0, -1));
        shop.support("A", -1, -0.5, 0.5);
        assertEquals(List.of(), shop.ask(new SupportSlideCheck()));
    }

    @Test
    void cantSayWithoutMass() {
        SupportShop shop = new SupportShop(CarrierKind.FLOOR).work("bar", WorkPointFacts.Kind.BAR, Vec3.ZERO, new Vec3(0, 1, 0));
        shop.support("A", -1, -0.5, 0.5);
        assertEquals(Verdict.CANT_SAY, first(shop).verdict());
    }
}
