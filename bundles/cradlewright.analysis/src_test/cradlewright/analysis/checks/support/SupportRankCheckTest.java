package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Distances to the edge are read off the plan: supports at x -1 and +1, y -0.5 and +0.5. */
class SupportRankCheckTest {

    private static SupportShop four() {
        SupportShop shop = new SupportShop(CarrierKind.DOLLY).weighs(800, 0);
        shop.support("FL", -1, -0.5, 0.5);
        shop.support("FR", -1, 0.5, 0.5);
        shop.support("RR", 1, 0.5, 0.5);
        shop.support("RL", 1, -0.5, 0.5);
        return shop;
    }

    private static Finding only(SupportShop shop) {
        List<Finding> findings = shop.ask(new SupportRankCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void holdsWithTheBalancePointInside() {
        Finding finding = only(four().balance(0.2, 0.1, 1, 0.05));
        assertEquals(Verdict.HOLDS, finding.verdict());
        // Nearest edge FR - RR at y 0.5: 0.5 - 0.1 = 0.4 m; give or take 2 x 0.05 m.
        assertEquals(0.4, finding.capacity().orElseThrow().si(), 1e-12);
        assertEquals(0.1, finding.demand().orElseThrow().si(), 1e-9);
    }

    @Test
    void stopsWhenTheBalancePointMayLieOutside() {
        assertEquals(Verdict.STOP, only(four().balance(0, 0.41, 1, 0.05)).verdict());
        assertEquals(Verdict.HOLDS, only(four().balance(0, 0.35, 1, 0.05)).verdict());
    }

    @Test
    void giveOrTakeThatRunsAslantCountsAcrossTheEdge() {
        // Two parts of 400 kg, each give or take 2 x 20 kg, at (1, 1.02) and (-1, -0.98): the balance point moves along (1, 1) with a
        // standard
        // uncertainty of sqrt(2) x 20/800 m in each coordinate. Edge B - C has the normal (0.5, 2)/sqrt(4.25); by hand.
        SupportShop shop = new SupportShop(CarrierKind.DOLLY).weighs(400, 20).balance(1, 1.02, 0, 0).part("tail", 400, 20,
                new Vec3(-1, -0.98, 0));
        shop.support("A", -1, -0.5, 0);
        shop.support("B", -1, 0.5, 0);
        shop.support("C", 1, 0, 0);
        Finding finding = only(shop);
        double root = Math.sqrt(4.25);
        assertEquals((0.5 - 2 * 0.02) / root, finding.capacity().orElseThrow().si(), 1e-9);
        assertEquals(2 * (2.5 / root) * Math.sqrt(2) * 20 / 800, finding.demand().orElseThrow().si(), 2e-4);
    }

    @Test
    void stopsOutsideAndOnTheEdge() {
        Finding outside = only(four().balance(1.1, 0, 1, 0));
        assertEquals(Verdict.STOP, outside.verdict());
        assertEquals("The balance point lies outside the line RR - RL: it goes over.", outside.words());
        assertTrue(only(four().balance(1, 0, 1, 0)).words().startsWith("The balance point lies on the line RR - RL"));
    }

    @Test
    void boltsAreLeftToTheirOwnCheck() {
        SupportShop shop = four().balance(1.1, 0, 1, 0);
        shop.support("B", 0, 0, 0.5).holds(Hold.BOLTED);
        assertEquals(Verdict.TIGHT, only(shop).verdict());
    }

    @Test
    void stopsOnOneOrTwoOrInLine() {
        SupportShop two = new SupportShop(CarrierKind.DOLLY).weighs(800, 0);
        two.support("A", 0, -0.5, 0);
        assertEquals("Only one support: it falls to any side.", only(two).words());
        two.support("B", 0, 0.5, 0);
        assertEquals("Nothing holds it about the line A - B.", only(two).words());
        two.support("C", 0, 0.1, 0.3);
        assertEquals("Nothing holds it about the line A - B.", only(two).words());
        assertEquals(Verdict.STOP, only(two).verdict());
    }

    @Test
    void cantSayWithoutSupportsOrWithSupportsThatNobodyDescribed() {
        assertEquals(Verdict.CANT_SAY, only(new SupportShop(CarrierKind.DOLLY).weighs(800, 0)).verdict());
        SupportShop open = new SupportShop(CarrierKind.STANDS).weighs(800, 0);
        open.support("A", 0, -0.5, 0);
        open.support("B", 0, 0.5, 0);
        assertEquals(List.of("A: what it rests on", "B: what it rests on"), only(open).missing());
        SupportShop nowhere = new SupportShop(CarrierKind.DOLLY).weighs(800, 0);
        nowhere.support("A", 0, -0.5, 0);
        nowhere.support("B", 0, 0.5, 0).nowhere();
        assertEquals(Verdict.CANT_SAY, only(nowhere).verdict());
    }

    @Test
    void cantSayWithoutMass() {
        SupportShop shop = new SupportShop(CarrierKind.DOLLY);
        shop.support("A", -1, -0.5, 0);
        shop.support("B", -1, 0.5, 0);
        shop.support("C", 1, 0, 0);
        assertEquals(List.of("body: mass"), only(shop).missing());
    }

    @Test
    void namesSupportsAtOnePlace() {
        SupportShop shop = four();
        shop.support("X", 1, 0.5, 0.5);
        List<Finding> findings = shop.ask(new SupportRankCheck());
        assertEquals(List.of(Verdict.HOLDS, Verdict.TIGHT), findings.stream().map(Finding::verdict).toList());
        assertEquals("RR and X stand at one place and count as one support.", findings.get(1).words());
    }

    @Test
    void saysNothingAboutACarThatIsAway() {
        assertEquals(List.of(), new SupportShop(CarrierKind.AWAY).weighs(800, 0).ask(new SupportRankCheck()));
    }
}
