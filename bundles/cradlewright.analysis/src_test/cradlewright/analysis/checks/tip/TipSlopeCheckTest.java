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
 * Balance point 0.15 m and 0.05 m off the middle of castors at 0.8 m and 0.4 m: least way to an edge 0.35 m, with a lead of 0.05
 * m
 * taken off 0.30 m (swivels in their worst position, ISO 22915-16). A fall s takes h s off it; one and a half times that is
 * asked for.
 */
class TipSlopeCheckTest {

    private static final double MARGIN = 0.30;

    private static RollingShop shop(double use) {
        return new RollingShop().weighs(760, 0).commonBalance(0.15, 0.05, 0.9).onFall(use * MARGIN / (1.5 * 0.9));
    }

    private static Finding only(RollingShop shop) {
        List<Finding> findings = shop.ask(new TipSlopeCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void holdsStandsTightAndStops() {
        Finding holds = only(shop(0.89));
        assertEquals(MARGIN, holds.capacity().orElseThrow().si(), 1e-9);
        assertEquals(0.89 * MARGIN, holds.demand().orElseThrow().si(), 1e-9);
        assertEquals(Verdict.HOLDS, holds.verdict());
        assertEquals(Verdict.TIGHT, only(shop(0.91)).verdict());
        assertEquals("It is too close to falling over.", only(shop(1.1)).words());
        assertEquals("It falls over.", only(shop(1.51)).words());
        assertEquals(Verdict.STOP, only(shop(1.51)).verdict());
    }

    @Test
    void castorsThatDoNotTurnKeepTheirPlace() {
        assertEquals(0.35, only(shop(0.5).fixed().lead(Optional.empty())).capacity().orElseThrow().si(), 1e-9);
    }

    @Test
    void theSettledFallCountsWhereNobodyMeasured() {
        // Common practice: one in a hundred; 1.5 x 0.9 x 0.01.
        assertEquals(0.0135, only(new RollingShop().weighs(760, 0).commonBalance(0, 0, 0.9)).demand().orElseThrow().si(), 1e-9);
    }

    @Test
    void feetAreProven() {
        // Feet at 0.6 m to the side: the least way is 0.55 m across, lengthwise 0.65 m.
        assertEquals(Remedy.mends("Put the feet down while it stands there.", Verdict.HOLDS),
                only(shop(1.1).feet(0.6, false)).remedies().get(0));
        assertEquals(0.55, only(shop(1.1).feet(0.6, true)).capacity().orElseThrow().si(), 1e-9);
    }

    @Test
    void cantSayWithoutLeadOrMass() {
        Finding finding = only(shop(0.5).lead(Optional.empty()));
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertEquals(1, finding.missing().size());
        assertEquals(Verdict.CANT_SAY, only(new RollingShop()).verdict());
    }
}
