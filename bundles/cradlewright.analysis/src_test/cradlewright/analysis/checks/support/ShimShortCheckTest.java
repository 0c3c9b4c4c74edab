package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Input;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.testshop.SupportShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** One corner of a rectangle is low, by which it lies off the plane of the others. Allowed: storing 3 mm, working 2 mm, welding 1 mm. */
class ShimShortCheckTest {

    private static SupportShop shop(double low) {
        SupportShop shop = new SupportShop(CarrierKind.DOLLY).weighs(900, 0);
        // A slope of 2 mm per metre is no twist.
        shop.support("FL", -1, -0.5, 0.5).low(low - 0.002);
        shop.support("FR", -1, 0.5, 0.5).low(-0.002);
        shop.support("RR", 1, 0.5, 0.5).low(0.002);
        shop.support("RL", 1, -0.5, 0.5).low(0.002);
        return shop;
    }

    private static Finding only(SupportShop shop) {
        List<Finding> findings = shop.ask(new ShimShortCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    private static StockFacts.Shim shim(String name, double thickness, int onHand) {
        return new StockFacts.Shim(name, name, Optional.of(SupportShop.measured(thickness)), Optional.empty(), Optional.empty(),
                Optional.of(onHand));
    }

    @Test
    void byTheTwistThatIsAllowed() {
        assertEquals(Verdict.HOLDS, only(shop(0.0009)).verdict());
        Finding working = only(shop(0.0019));
        assertEquals(Verdict.TIGHT, working.verdict());
        assertEquals("The stack at FL is short: the shell may be worked on so, but is twisted too much to weld.", working.words());
        assertEquals(0.0019, working.demand().orElseThrow().si(), 1e-12);
        assertEquals(0.001, working.capacity().orElseThrow().si(), 1e-12, "the limit that it misses: welding");
        assertEquals(0.002, only(shop(0.0029)).capacity().orElseThrow().si(), 1e-12, "working");
        assertEquals(0.003, only(shop(0.0031)).capacity().orElseThrow().si(), 1e-12, "storing");
        assertTrue(only(shop(0.0031)).words().endsWith("the shell twists more than the shop allows even for storing."));
        assertTrue(only(shop(0.0029)).words().contains("the shell may be stored so"));
        assertEquals(Verdict.TIGHT, only(shop(0.0029)).verdict());
        assertEquals(Verdict.STOP, only(shop(0.0031)).verdict());
    }

    /** Four supports in a plane but for one; of four the one lies off by its gap, known to u: by hand gap + 2 u. */
    private static SupportShop doubtful(double low, double... u) {
        SupportShop shop = new SupportShop(CarrierKind.DOLLY).weighs(900, 0);
        double[][] at = {{-1, -0.5}, {-1, 0.5}, {1, 0.5}, {1, -0.5}};
        for (int i = 0; i < 4; i++) {
            shop.support(List.of("FL", "FR", "RR", "RL").get(i), at[i][0], at[i][1], 0.5).low(i == 0 ? low : 0, i < u.length ? u[i] : 0);
        }
        return shop;
    }

    @Test
    void theGapsCountAtTheirUnfavourableEnd() {
        Finding stops = only(doubtful(0.0028, 0.0005));
        assertEquals(Verdict.STOP, stops.verdict());
        assertEquals(0.0038, stops.demand().orElseThrow().si(), 1e-12);
        assertEquals(List.of(0.0028, 0.001), stops.inputs().stream().filter(Input::shown)
                .map(input -> Math.round(input.amount().si() * 1e9) / 1e9).toList(), "as listed, and what the give or take adds");
        assertEquals("The gaps are not known closely enough: the shell may twist more than the shop allows even for storing.",
                stops.words());
        assertEquals(Verdict.STOP, only(doubtful(0.0009, 0.0015)).verdict(), "0.9 + 2 x 1.5 mm");
        assertEquals(Verdict.TIGHT, only(doubtful(0.0009, 0.0001)).verdict(), "1.1 mm: not to weld on");
        assertEquals(Verdict.HOLDS, only(doubtful(0.0007, 0.0001)).verdict());
        // Where it twists too much as listed already, closer measuring does not help.
        assertTrue(only(doubtful(0.0032, 0.0005)).words().startsWith("The stack at FL is short: the shell twists more"));
        assertEquals(1, only(doubtful(0.0032, 0.0005)).remedies().size());
    }

    @Test
    void theGiveOrTakeOfAllGapsJoins() {
        // At the corners of a rectangle all four gaps count alike: 0.7 + 2 x sqrt(4 x 0.1^2) = 1.1 mm.
        assertEquals(0.0011, only(doubtful(0.0007, 0.0001, 0.0001, 0.0001, 0.0001)).demand().orElseThrow().si(), 1e-12);
    }

    @Test
    void shimsOfTheStockThatCloseIt() {
        SupportShop shop = shop(0.0035).has(shim("thin", 0.0005, 2)).has(shim("thick", 0.002, 1)).has(shim("middle", 0.001, 4));
        // 2 + 1 + 0.5 mm closes it wholly.
        assertEquals(List.of(Remedy.mends("Lay 1 of thin and 1 of thick and 1 of middle under FL.", Verdict.HOLDS)), only(shop)
                .remedies());
    }

    @Test
    void ofADiagonalPairTheOneWithTheDaylightIsShimmed() {
        SupportShop shop = new SupportShop(CarrierKind.DOLLY).weighs(900, 0).has(shim("six", 0.006, 1));
        shop.support("FL", -1, -0.5, 0.5);
        shop.support("FR", -1, 0.5, 0.5);
        shop.support("RR", 1, 0.5, 0.5).low(0.006);
        shop.support("RL", 1, -0.5, 0.5);
        Finding finding = only(shop);
        assertEquals("RR", finding.objectName());
        assertEquals(List.of(Remedy.mends("Lay 1 of six under RR.", Verdict.HOLDS)), finding.remedies());
    }

    @Test
    void onlyWhatIsOnHandAndWhatTheStackStillTakes() {
        // With one thin and one middle 1.5 of 3.5 mm are closed: 2 mm remain.
        Finding some = only(shop(0.0035).has(shim("thin", 0.0005, 1)).has(shim("middle", 0.001, 1)));
        assertEquals(List.of(Remedy.mends("Lay 1 of thin and 1 of middle under FL.", Verdict.TIGHT)), some.remedies());
        SupportShop full = new SupportShop(CarrierKind.DOLLY).weighs(900, 0).has(shim("thick", 0.002, 9));
        full.support("FL", -1, -0.5, 0.5).low(0.0035).shims(5, 0.001);
        full.support("FR", -1, 0.5, 0.5);
        full.support("RR", 1, 0.5, 0.5);
        full.support("RL", 1, -0.5, 0.5);
        assertTrue(only(full).remedies().get(0).after().isEmpty());
    }

    @Test
    void cantSayWhenAGapIsUnknown() {
        SupportShop shop = shop(0);
        shop.support("M", 0, 0.5, 0.5).gapUnknown();
        assertEquals(Verdict.CANT_SAY, only(shop).verdict());
        assertEquals(1, only(shop).missing().size());
    }

    @Test
    void threeSupportsCannotTwist() {
        SupportShop shop = new SupportShop(CarrierKind.DOLLY).weighs(900, 0);
        shop.support("A", -1, -0.5, 0.5).low(0.02);
        shop.support("B", -1, 0.5, 0.5);
        shop.support("C", 1, 0, 0.5);
        assertEquals(List.of(), shop.ask(new ShimShortCheck()));
    }
}
