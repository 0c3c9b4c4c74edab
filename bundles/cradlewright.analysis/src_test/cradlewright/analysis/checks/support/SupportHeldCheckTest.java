package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.Basis;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Bolt C at x 1, two plain supports at x -1, balance point at x -1.5: by moments C pulls a quarter of the weight, 1961.3 N, and 1.4
 * times that, 2745.9 N, while rolled over a joint.
 */
class SupportHeldCheckTest {

    private static final double PULL = 1.4 * 800 * 9.80665 / 4;

    private static SupportShop.Place behind(SupportShop shop) {
        shop.support("A", -1, -0.5, 0.5);
        shop.support("B", -1, 0.5, 0.5);
        return shop.support("C", 1, 0, 0.5);
    }

    private static Finding bolted(double capacity) {
        SupportShop shop = new SupportShop(CarrierKind.DOLLY).weighs(800, 0).balance(-1.5, 0, 1, 0);
        behind(shop).holds(Hold.BOLTED).takes(capacity, Basis.WORKING_LOAD_LIMIT);
        return only(shop);
    }

    private static Finding only(SupportShop shop) {
        List<Finding> findings = shop.ask(new SupportHeldCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void aBoltThatPulls() {
        assertEquals(Verdict.HOLDS, bolted(PULL / 0.89).verdict());
        assertEquals(Verdict.TIGHT, bolted(PULL / 0.91).verdict());
        Finding stop = bolted(PULL / 1.01);
        assertEquals(Verdict.STOP, stop.verdict());
        assertEquals(PULL, stop.demand().orElseThrow().si(), 1e-3);
        // Without the joint 1/1.4 of it is left.
        assertEquals(Remedy.mends("Do not roll it over joints while it is this heavy.", Verdict.HOLDS),
                stop.remedies().get(0));
    }

    @Test
    void aBoltThatOnlyCarriesIsNotPulled() {
        SupportShop shop = new SupportShop(CarrierKind.DOLLY).weighs(800, 0);
        behind(shop).holds(Hold.BOLTED);
        assertEquals(Verdict.HOLDS, only(shop).verdict());
    }

    @Test
    void aPinThatIsPushedSideways() {
        // A lean of 400 N across, level with the supports and through their middle: a third on each, 133.3 N.
        SupportShop shop = new SupportShop(CarrierKind.DOLLY).weighs(800, 0).work("side", WorkPointFacts.Kind.LEAN,
                new Vec3(-1.0 / 3, 0, 0.5), new Vec3(0, 1, 0));
        behind(shop).holds(Hold.PINNED).takes(140, Basis.RATED_LOAD);
        Finding finding = only(shop);
        assertEquals(400.0 / 3, finding.demand().orElseThrow().si(), 0.01);
        assertEquals(Verdict.TIGHT, finding.verdict());
    }

    @Test
    void cantSayWithoutCapacityWhenPushed() {
        SupportShop shop = new SupportShop(CarrierKind.DOLLY).weighs(800, 0).work("side", WorkPointFacts.Kind.LEAN, new Vec3(0,
                0, 0.5), new Vec3(0, 1, 0));
        behind(shop).holds(Hold.PINNED);
        assertEquals(Verdict.CANT_SAY, only(shop).verdict());
    }

    @Test
    void plainSupportsAreNotAsked() {
        SupportShop shop = new SupportShop(CarrierKind.DOLLY).weighs(800, 0);
        behind(shop);
        assertEquals(List.of(), shop.ask(new SupportHeldCheck()));
    }
}
