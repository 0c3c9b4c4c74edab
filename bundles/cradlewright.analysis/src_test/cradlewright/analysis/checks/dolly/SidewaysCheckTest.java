package cradlewright.analysis.checks.dolly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.testshop.FrameShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Flat 60 x 10 on edge, S235, middle piece of the rail 1 m long. EN 1993-1-1 6.3.2.2 with the critical moment of a flat,
 * N (sqrt(G I_t/N + (C2 z_g)^2) - C2 z_g) of NCCI SN003, load on the top edge: I_z = 5000 mm4, I_t = 60 x 10^3/3 (1 - 0.63 x 10/60)
 * = 17 900 mm4, N = pi^2 E I_z/L^2 = 10 363 N, C2 z_g = 0.63 x 30 mm, gives 3685 N*m; slenderness sqrt(1410/3685) = 0.6186, curve d: phi
 * 0.8504, chi 0.6974, M_b,Rd = 983 N*m. Moment 1.838747 N*m per kg: reached at 535 kg, TIGHT from 481 kg. Held at 0.25 m: M_cr
 * 12 685 N*m, slenderness 0.3334, phi 0.6063, chi 0.8988, 1267 N*m.
 */
class SidewaysCheckTest {

    private static final double PER_KILOGRAM = 1.5 * 9.80665 / 4 * FrameShop.ARM;

    private static FrameShop shop(double kilograms) {
        return new FrameShop(FrameShop.flat("flat 60x10", 0.060, 0.010), 235e6, 360e6).weighs(kilograms);
    }

    private static Finding middle(FrameShop shop) {
        return shop.ask(new SidewaysCheck()).stream().filter(finding -> finding.objectId().equals("left-1")).findFirst().orElseThrow();
    }

    private static MemberFacts heldAt(MemberFacts m, double length) {
        return new MemberFacts(m.id(), m.name(), m.fromId(), m.toId(), m.sectionId(), m.steelId(), m.up(), m.releaseFrom(), m.releaseTo(),
                m.jointFromId(),
                m.jointToId(), Optional.of(FrameShop.measured(length)));
    }

    @Test
    void holdsWithTheUseWorkedOutByHand() {
        Finding finding = middle(shop(400));
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(400 * PER_KILOGRAM / 983, finding.use().orElseThrow(), 0.015);
    }

    @Test
    void isTightInTheLastTenth() {
        assertEquals(Verdict.TIGHT, middle(shop(490)).verdict());
    }

    @Test
    void stopsBeyondAndAThickerFlatIsProven() {
        Finding finding = middle(shop(600));
        assertEquals(Verdict.STOP, finding.verdict());
        assertTrue(finding.remedies().get(0).after().isPresent(), finding.remedies().toString());
    }

    @Test
    void theStatedLengthCounts() {
        Finding finding = middle(shop(600).members(member -> heldAt(member, 0.25)));
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(600 * PER_KILOGRAM / 1267, finding.use().orElseThrow(), 0.015);
    }

    @Test
    void aTeeIsNotCovered() {
        StockFacts.Tee tee = new StockFacts.Tee("tee", "tee", Optional.of(FrameShop.measured(0.05)), Optional.of(FrameShop.measured(0.006)),
                Optional.of(FrameShop.measured(0.05)), Optional.of(FrameShop.measured(0.006)));
        Finding finding = middle(new FrameShop(tee, 235e6, 360e6).weighs(100));
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertEquals(List.of(), finding.missing());
        assertTrue(finding.remedies().get(0).words().contains("channel, flat or tube"), finding.remedies().toString());
    }
}
