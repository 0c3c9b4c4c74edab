package cradlewright.analysis.checks.castor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.testshop.RollingShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * 900 kg in the middle and low down, both rear castors braked: on an uneven floor one diagonal carries all, so one braked castor
 * has
 * 450 kg and the other none. Friction 0.4 (common practice) holds 180 kg times g, the brake test two tenths of the rating (EN
 * 12530): 100 kg times g for a castor rated 500 kg, so that governs.
 */
class CastorBrakeCheckTest {

    private static RollingShop shop(double use) {
        double sine = use * 100 / 900;
        return new RollingShop().weighs(760, 0).commonBalance(0, 0, 0).rated(Optional.of(RollingShop.measured(500))).braked(2, 3)
                .onFall(Math.tan(Math.asin(sine)));
    }

    private static Finding only(RollingShop shop) {
        List<Finding> findings = shop.ask(new CastorBrakeCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void holdsStandsTightAndStops() {
        Finding holds = only(shop(0.89));
        assertEquals(100 * 9.80665, holds.capacity().orElseThrow().si(), 1e-6);
        assertEquals(89 * 9.80665, holds.demand().orElseThrow().si(), 1e-6);
        assertEquals(Verdict.HOLDS, holds.verdict());
        assertEquals(Verdict.TIGHT, only(shop(0.91)).verdict());
        assertEquals(Verdict.STOP, only(shop(1.01)).verdict());
    }

    @Test
    void oneDiagonalWithBrakesMayCarryNothing() {
        assertEquals(0, only(shop(0.5).braked(0, 3)).capacity().orElseThrow().si(), 1e-9);
    }

    @Test
    void theWeightMovesDownhill() {
        // Height 0.8 m on a fall of 0.05 towards the front: 0.04 m, so the rear has 0.475 of the weight, on one castor at worst;
        // friction governs for castors rated 1000 kg.
        RollingShop shop = new RollingShop().weighs(760, 0).commonBalance(0, 0, 0.8).braked(2, 3).onFall(0.05);
        assertEquals(0.4 * 0.475 * 900 * 9.80665 / Math.hypot(1, 0.05), only(shop).capacity().orElseThrow().si(), 1e-6);
    }

    @Test
    void theBalancePointCountsAtItsWorstEnd() {
        // As above with the balance point of the shell known to 0.03 m each way: twice 760/900 of that, and the height of it through the
        // fall, together 0.0507 m sqrt(1 + 0.05^2) further forward (own derivation, checked by the search of the test of the worst point).
        RollingShop shop = new RollingShop().weighs(760, 0).commonBalance(0, 0, 0.8).balanceOff(0.03).braked(2, 3).onFall(0.05);
        double forward = 0.05 * 0.8 + 2 * 0.03 * 760 / 900 * Math.hypot(1, 0.05);
        assertEquals(0.4 * (0.8 - forward) / 1.6 * 900 * 9.80665 / Math.hypot(1, 0.05), only(shop).capacity().orElseThrow().si(), 1e-3);
    }

    @Test
    void brakesOnAllAreProven() {
        // Two castors of a diagonal then hold 100 kg each.
        assertEquals(Remedy.mends("Fit brakes to all castors, and set them all.", Verdict.HOLDS), only(shop(1.01))
                .remedies().get(0));
    }

    @Test
    void notAskedWithoutBrakesAndCantSayWithoutRating() {
        assertEquals(List.of(), shop(0.5).braked().ask(new CastorBrakeCheck()));
        assertEquals(List.of("rated load of castor rear left", "rated load of castor rear right"),
                only(shop(0.5).rated(Optional.empty())).missing());
    }
}
