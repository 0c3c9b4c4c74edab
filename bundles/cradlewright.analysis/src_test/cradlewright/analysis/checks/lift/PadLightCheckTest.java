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
