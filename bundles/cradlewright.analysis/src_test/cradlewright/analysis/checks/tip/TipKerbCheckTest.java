package cradlewright.analysis.checks.tip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.testshop.RollingShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A block whose foot is stopped (textbooks of dynamics, from memory): v = sqrt(2 g (sqrt(h^2 + d^2) - h)). Worked out by hand for
 * h = 0.9 m, d = 0.6 m: 1.887606 m/s; h = 1.1 m, d = 0.35 m: 1.032366 m/s, below the walking pace of 1.1 m/s (common practice).
 */
class TipKerbCheckTest {

    /** The balance point lies 0.65 m in front of the castors in the rear, and farther from those in front. */
    private static RollingShop lengthwise(double height) {
        return new RollingShop().weighs(760, 0).commonBalance(0.15, 0, height).fixed();
    }

    private static Finding only(RollingShop shop) {
        List<Finding> findings = shop.ask(new TipKerbCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void holdsStandsTightAndStops() {
        Finding holds = only(new RollingShop().weighs(760, 0).commonBalance(0.2, 0, 0.9).fixed());
        assertEquals(1.887606, holds.capacity().orElseThrow().si(), 1e-6);
        assertEquals(1.1, holds.demand().orElseThrow().si(), 0);
        assertEquals(Verdict.HOLDS, holds.verdict());
        // d = 0.65 m: h 2.7 m gives 1.230 m/s, of which 1.1 m/s is 0.894; h 2.9 m gives 1.188 m/s; h 3.4 m gives 1.099 m/s.
        assertEquals(Verdict.HOLDS, only(lengthwise(2.7)).verdict());
        assertEquals(Verdict.TIGHT, only(lengthwise(2.9)).verdict());
        assertEquals(Verdict.STOP, only(lengthwise(3.4)).verdict());
    }

    @Test
    void sidewaysIsWorseAndLengthwiseIsProven() {
        // All swivels turn: sideways 0.4 m less 0.05 m of lead.
        Finding finding = only(new RollingShop().weighs(760, 0).commonBalance(0, 0, 1.1));
        assertEquals(1.032366, finding.capacity().orElseThrow().si(), 1e-6);
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals("Rolled sideways at walking pace it may go over its castors.", finding.words());
        assertEquals(Remedy.alone("Move it lengthwise only.", Verdict.HOLDS), finding.remedies().get(0));
        assertEquals(Remedy.mends("Move it at half the walking pace.", Verdict.HOLDS), finding.remedies().get(1));
    }

    @Test
    void theBalancePointCountsAtItsUnfavourablePlace() {
        // Standard uncertainty 0.02 m: the least, by a search, with the balance point anywhere within 0.04 x 760/900 m of its listed place.
        double off = 0.04 * 760 / 900;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3600; i++) {
            double height = 0.9 + off * Math.cos(Math.PI * i / 1800);
            double distance = 0.65 + off * Math.sin(Math.PI * i / 1800);
            least = Math.min(least, Math.sqrt(2 * 9.80665 * (Math.hypot(height, distance) - height)));
        }
        assertEquals(least, only(lengthwise(0.9).balanceOff(0.02)).capacity().orElseThrow().si(), 1e-3 * least);
    }

    @Test
    void aHeavierShellMovesTheCommonBalancePoint() {
        // 20 kg more: the common point moves towards that of the shell, by first order 20 x 140/900^2 of the way between both.
        double move = 0.15 * 900 / 760 * 20 * 140 / (900.0 * 900);
        double expected = Math.sqrt(2 * 9.80665 * (Math.hypot(0.9, 0.65 - move) - 0.9));
        assertEquals(expected, only(lengthwise(0.9).weighs(760, 10)).capacity().orElseThrow().si(), 1e-9);
    }

    @Test
    void cantSayWithoutLeadOrMass() {
        assertEquals(Verdict.CANT_SAY, only(new RollingShop().weighs(760, 0).commonBalance(0, 0, 1).lead(Optional.empty()))
                .verdict());
        assertEquals(Verdict.CANT_SAY, only(new RollingShop()).verdict());
    }
}
