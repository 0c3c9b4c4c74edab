package cradlewright.analysis.checks.dolly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.testshop.FrameShop;
import org.junit.jupiter.api.Test;

/**
 * Box 60 x 40 x 2, S235: the rail carries V = 1.5 m g/4 from the foot to the first support, 3.6775 N per kg. EN 1993-1-1 6.2.6(3):
 * A = 60 x 40 - 56 x 36 = 384 mm2, A_v = A h/(b + h) = 384 x 60/100 = 230.4 mm2, V_Rd = 230.4 x 235/sqrt(3) = 31 260 N, reached at
 * 8500 kg; TIGHT from 7650 kg. The mechanics round the corners, which takes away up to 3 %.
 */
class MemberShearCheckTest {

    private static final double PER_KILOGRAM = 1.5 * 9.80665 / 4;
    private static final double RESISTANCE = 31_260;

    private static Finding first(FrameShop shop) {
        return shop.ask(new MemberShearCheck()).stream().filter(finding -> finding.objectId().equals("left-0")).findFirst().orElseThrow();
    }

    private static FrameShop shop(double kilograms) {
        return new FrameShop(FrameShop.box("box 60x40x2", 0.060, 0.040, 0.002), 235e6, 360e6).weighs(kilograms);
    }

    @Test
    void holdsWithTheUseOfABoxInShear() {
        Finding finding = first(shop(4000));
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(4000 * PER_KILOGRAM / RESISTANCE, finding.use().orElseThrow(), 0.03);
        assertTrue(finding.words().contains("shear across its height"), finding.words());
    }

    @Test
    void isTightInTheLastTenth() {
        assertEquals(Verdict.TIGHT, first(shop(8000)).verdict());
    }

    @Test
    void stopsBeyond() {
        Finding finding = first(shop(8900));
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals(Verdict.HOLDS, finding.remedies().get(0).after().orElseThrow());
    }

    @Test
    void unknownSteelIsNoAnswer() {
        assertEquals(Verdict.CANT_SAY, first(shop(4000).steelUnknown()).verdict());
    }
}
