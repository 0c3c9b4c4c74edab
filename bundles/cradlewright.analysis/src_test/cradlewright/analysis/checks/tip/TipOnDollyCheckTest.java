package cradlewright.analysis.checks.tip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.testshop.RollingShop;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Shell of 760 kg above the middle of supports at (-0.7, -0.4), (-0.7, 0.4) and (0.7, 0). The edge from the second to the third
 * has the
 * outward direction (0.4, 1.4)/1.456; moments about it, times 1.456: 760 x 0.28 hold, a person of 120 kg at (0, y) upsets with
 * 120 (1.4 y - 0.28) (statics). 1.5 times are asked for (common practice).
 */
class TipOnDollyCheckTest {

    private static RollingShop shop(double ratio) {
        double y = (760 * 0.28 / (120 * ratio) + 0.28) / 1.4;
        return new RollingShop().weighs(760, 0).commonBalance(0, 0, 0.8).work("sill", WorkPointFacts.Kind.STAND_ON, new Vec3(0,
                y, 0.6),
                new Vec3(0, 0, -1));
    }

    private static Finding only(List<Finding> findings) {
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    private static Finding only(RollingShop shop) {
        return only(shop.ask(new TipOnDollyCheck()));
    }

    @Test
    void holdsStandsTightAndStops() {
        Finding holds = only(shop(1.7));
        assertEquals(1.7, holds.capacity().orElseThrow().si(), 1e-6);
        assertEquals(1.5, holds.demand().orElseThrow().si(), 0);
        assertEquals(Verdict.HOLDS, holds.verdict());
        assertEquals("sill", holds.objectName());
        assertEquals(Verdict.TIGHT, only(shop(1.6)).verdict());
        assertEquals("It is too close to falling over. It would go over B and C.", only(shop(1.4)).words());
        assertEquals("It falls over. It would go over B and C.", only(shop(0.9)).words());
    }

    @Test
    void massAndBalancePointCountAtTheirUnfavourableEnds() {
        // A search: give or take 20 kg and 0.04 m, which straight across the line takes 0.04 hypot(0.4, 1.4) off 0.28, never both.
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3600; i++) {
            least = Math.min(least, (760 - 20 * Math.cos(Math.PI * i / 1800))
                    * (0.28 - 0.04 * Math.hypot(0.4, 1.4) * Math.sin(Math.PI * i / 1800)) / (760 * 0.28 / 1.7));
        }
        double found = only(shop(1.7).weighs(760, 10).balanceOff(0.02)).capacity().orElseThrow().si();
        assertEquals(least, found, 1e-3 * least);
        assertTrue(found > (760 - 20) * (0.28 - 0.04 * 1.8) / (760 * 0.28 / 1.7), "not at a corner of the give or take");
    }

    @Test
    void whatFallsByItselfStops() {
        SupportShop shop = new SupportShop(CarrierKind.STANDS).weighs(800, 0).balance(2, 0, 1, 0);
        shop.support("A", -1, -0.5, 0.5);
        shop.support("B", -1, 0.5, 0.5);
        shop.support("C", 1, 0, 0.5);
        Finding finding = only(shop.ask(new TipOnDollyCheck()));
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals("at rest", finding.situation());
    }
}
