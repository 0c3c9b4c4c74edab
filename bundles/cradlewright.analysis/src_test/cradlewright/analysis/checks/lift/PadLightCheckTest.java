package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.testshop.SupportShop;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Three pads: C carries the share (1 + x)/2 of the weight, by moments about the front pads; a tenth of the mean is a thirtieth. */
class PadLightCheckTest {

    private static Finding only(SupportShop shop) {
        List<Finding> findings = shop.ask(new PadLightCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    private static SupportShop onLift(double x) {
        return Hung.onLift(900, Optional.empty(), Optional.empty()).balance(x, 0, 1, 0);
    }

    @Test
    void namesTheLeastLoaded() {
        // Share of C 0.2: 0.2 x 900 kg = 180 kg.
        Finding finding = only(onLift(-0.6));
        assertEquals("C", finding.objectName());
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(180 * Hung.G, finding.capacity().orElseThrow().si(), 1e-6);
        assertEquals(30 * Hung.G, finding.demand().orElseThrow().si(), 1e-6);
    }

    @Test
    void stopsBelowATenthOfTheMean() {
        // Share 0.03 is less, 0.035 a little more than a thirtieth (0.952 of it used), 0.04 is clear of it.
        assertEquals(Verdict.STOP, only(onLift(-0.94)).verdict());
        assertEquals(Verdict.TIGHT, only(onLift(-0.93)).verdict());
        assertEquals(Verdict.HOLDS, only(onLift(-0.92)).verdict());
    }

    @Test
    void theBalancePointCountsAtItsUnfavourableEnd() {
        assertEquals(Verdict.STOP, only(onLift(-0.92).balance(-0.92, 0, 1, 0.01)).verdict());
    }

    @Test
    void inStrapsNeverBetterThanTight() {
        assertEquals(Verdict.TIGHT, only(Hung.inStraps(900, 1000, GearFacts.Mode.STRAIGHT)).verdict());
    }

    @Test
    void fourPadsGoLightWhenOneIsLow() {
        // Four equal pads, 900 kg in the middle: 225 kg each. One pad 5 mm low takes 5 mm/(4 x 3e-6 m/N) = 417 N off it (closed form of
        // the warp of four springs), leaving 1790 N; on pads ten times as stiff it takes all.
        assertEquals(Verdict.HOLDS, only(four(3e-6)).verdict());
        Finding stiff = only(four(3e-7));
        assertEquals(Verdict.TIGHT, stiff.verdict());
        assertTrue(stiff.words().contains("set a little low"));
        double left = only(four(3e-6)).inputs().get(1).amount().si();
        assertEquals(225 * Hung.G - 0.005 / (4 * 3e-6), left, 1e-3);
    }

    private static SupportShop four(double compliance) {
        SupportShop shop = new SupportShop(CarrierKind.LIFT).weighs(900, 0).torsion(4e6);
        shop.support("FL", -1, -0.5, 1).gives(compliance);
        shop.support("FR", -1, 0.5, 1).gives(compliance);
        shop.support("RR", 1, 0.5, 1).gives(compliance);
        shop.support("RL", 1, -0.5, 1).gives(compliance);
        return shop;
    }

    private static final double[][] FOUR = {{0.9, -0.6}, {0.9, 0.6}, {-0.9, 0.6}, {-0.9, -0.6}};

    @Test
    void ofFourStrapsInOneHookAnyMayHangSlack() {
        Finding four = only(Hung.onHook(800, 1000, 0, 0.9, FOUR));
        assertEquals(Verdict.TIGHT, four.verdict());
        assertTrue(four.words().contains("any one of them may hang slack"), four.words());
        assertEquals(0, four.inputs().get(0).amount().si());
        assertTrue(four.capacity().isEmpty(), "nothing is said to be enough");
        // One 20 mm longer hangs slack for certain; without lengths nobody knows which.
        SupportShop longer = Hung.onHook(800, 1000, 0, 0.9, FOUR)
                .has(Hung.strap("strap-A", 1000, SupportShop.measured(1.92), OptionalInt.empty()));
        assertEquals(four.words(), only(longer).words());
        SupportShop unknown = Hung.onHook(800, 1000, 0, 0.9, FOUR)
                .has(Hung.strap("strap-A", Optional.of(SupportShop.measured(1000)), GearFacts.Mode.STRAIGHT));
        assertEquals(four.words(), only(unknown).words());
    }

    @Test
    void ofThreeStrapsInOneHookThePullsFollowFromHowItHangs() {
        // Balance point below the hook at x 0, points at 0.9 (two) and -0.9: half of 800 kg hangs in C, its leg leans by atan(0.9/0.9).
        double[][] three = {{0.9, -0.6}, {0.9, 0.6}, {-0.9, 0}};
        Finding least = only(Hung.onHook(800, 1000, 0, 0.9, three));
        assertEquals(Verdict.TIGHT, least.verdict());
        // A and B: a quarter each, legs of sqrt(0.9^2 + 0.6^2 + 0.9^2) over a rise of 0.9.
        assertEquals(200 * Hung.G * Math.sqrt(1.98) / 0.9, least.capacity().orElseThrow().si(), 1e-3);
        // The hook straight above the line that is 1/60 of the way from C to A and B: A and B share 1/60.
        Finding light = only(Hung.onHook(800, 1000, -0.9 + 1.8 / 60, 0.9, three));
        assertEquals(Verdict.STOP, light.verdict());
    }

    @Test
    void whatDoesNotStayHangingIsStoppedElsewhere() {
        double[][] three = {{0.9, -0.6}, {0.9, 0.6}, {-0.9, 0}};
        // The balance point above the hook: it turns over, though as pads the three places would hold it.
        assertEquals(List.of(), Hung.onHook(500, 1000, 0, 0.9, three).balance(0, 0, 3, 0).ask(new PadLightCheck()));
    }

    @Test
    void cantSayWithoutMassAndNothingOnADolly() {
        SupportShop bare = new SupportShop(CarrierKind.LIFT);
        bare.support("A", 0, 0, 0);
        assertEquals(Verdict.CANT_SAY, only(bare).verdict());
        SupportShop dolly = new SupportShop(CarrierKind.DOLLY).weighs(900, 0);
        dolly.support("A", 0, 0, 0);
        assertEquals(List.of(), dolly.ask(new PadLightCheck()));
    }
}
