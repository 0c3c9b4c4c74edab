package cradlewright.analysis.checks.dolly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.testshop.FrameShop;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Legs of flat 30 x 30, S235, 0.4 m under each corner, feet at their lower ends: each is pressed by 1.5 m g/4 = 3.6775 N per kg without
 * bending, as feet only push upward. Buckling length 0.8 m (one end may sway): N_cr = pi^2 E 67 500 mm4/0.8^2 = 218.6 kN, slenderness
 * sqrt(900 x 235/218 600) = 0.9837, curve c: phi 1.1759, chi = 1/(1.1759 + sqrt(1.1759^2 - 0.9837^2)) = 0.5498, N_b,Rd = 116.3 kN,
 * reached at 31 620 kg. The frame between is not asked about here.
 */
class StrutCheckTest {

    private static FrameShop shop(double kilograms) {
        return new FrameShop(FrameShop.flat("flat 30x30", 0.030, 0.030), 235e6, 360e6).weighs(kilograms).legs(0.4);
    }

    private static List<Finding> legs(FrameShop shop) {
        return shop.ask(new StrutCheck()).stream().filter(finding -> finding.objectId().startsWith("leg-")).toList();
    }

    @Test
    void holdsWithTheUseOfAPressedFlat() {
        List<Finding> findings = legs(shop(20_000));
        assertEquals(4, findings.size());
        assertEquals(Verdict.HOLDS, findings.get(0).verdict());
        assertEquals(20_000 / 31_620.0, findings.get(0).use().orElseThrow(), 0.01);
    }

    @Test
    void isTightInTheLastTenth() {
        assertEquals(Verdict.TIGHT, legs(shop(30_000)).get(0).verdict());
    }

    @Test
    void stopsBeyond() {
        Finding finding = legs(shop(33_000)).get(0);
        assertEquals(Verdict.STOP, finding.verdict());
        assertTrue(finding.remedies().get(0).after().isPresent(), finding.remedies().toString());
    }

    @Test
    void aLittlePushDoesNotRaiseTheQuestion() {
        // 0.04 N_cr = 8744 N, EN 1993-1-1 6.3.1.2(4) (from memory): at 2378 kg
        assertEquals(0, legs(shop(2300)).size());
        assertEquals(4, legs(shop(2450)).size());
    }

    @Test
    void unknownSteelIsNoAnswer() {
        assertEquals(Verdict.CANT_SAY, legs(shop(20_000).steelUnknown()).get(0).verdict());
    }
}
