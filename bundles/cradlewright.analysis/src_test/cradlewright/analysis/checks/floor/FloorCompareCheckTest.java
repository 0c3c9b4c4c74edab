package cradlewright.analysis.checks.floor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.SlabFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.RollingShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * 440 kg on four castors, over a joint 154 kg each (1.4 times, common practice). The two at one end are nearer than the wheels
 * of a car
 * and count as 308 kg. A car wheel of 350 kg on 0.02 m2 stands there daily: the same pressure needs 0.0176 m2, the same force
 * along the
 * edge (which goes with the root of the area) 0.0155 m2.
 */
class FloorCompareCheckTest {

    private static SlabFacts slab(Optional<Value> wheel, Optional<Boolean> suspended) {
        return new SlabFacts("slab", "slab", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), wheel,
                Optional.of(RollingShop.measured(0.02)), suspended);
    }

    private static RollingShop shop(double contact) {
        return new RollingShop().weighs(300, 0).commonBalance(0, 0, 0.8).stiffness(1e5).contact(contact)
                .on(slab(Optional.of(RollingShop.measured(350)), Optional.of(false)));
    }

    private static Finding only(RollingShop shop) {
        List<Finding> findings = shop.ask(new FloorCompareCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void holdsOnlyWhenNoMeasureIsWorse() {
        Finding holds = only(shop(0.0177));
        assertEquals(Verdict.HOLDS, holds.verdict());
        assertEquals(308 * 9.80665, holds.demand().orElseThrow().si(), 1e-6);
        assertEquals("It is worse than the car wheel that stands there daily in its pressure.", only(shop(0.0175)).words());
        assertTrue(only(shop(0.0154)).words().endsWith("in its pressure, force along the edge of the contact."));
        assertEquals(Verdict.CANT_SAY, only(shop(0.0175)).verdict());
        assertEquals("It is worse than the car wheel that stands there daily in its force.", only(shop(0.03).weighs(380, 0))
                .words());
    }

    @Test
    void aPlateIsProven() {
        // 0.15 m square is 0.0225 m2; 0.10 m square is too small.
        Finding finding = only(shop(5e-4));
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertEquals(Remedy.alone("Stand each castor on a stiff square plate of the side shown.", Verdict.HOLDS),
                finding.remedies().get(0));
        assertEquals(0.15, finding.inputs().get(5).amount().si(), 1e-12);
    }

    @Test
    void cantSayWithoutWheelOrAboveARoomOrWithoutSlab() {
        assertEquals(Verdict.CANT_SAY, only(shop(0.02).on(slab(Optional.empty(), Optional.of(false)))).verdict());
        assertEquals(List.of("whether there is a room below slab"),
                only(shop(0.02).on(slab(Optional.of(RollingShop.measured(350)), Optional.empty()))).missing());
        assertEquals(Verdict.CANT_SAY, only(shop(0.02).on(slab(Optional.of(RollingShop.measured(350)), Optional.of(true))))
                .verdict());
        assertEquals(List.of("which slab the place lies on"), only(shop(0.02).onFall(0)).missing());
    }

    @Test
    void notAskedAwayOrNowhere() {
        assertEquals(List.of(), new RollingShop().weighs(300, 0).ask(new FloorCompareCheck()));
        assertEquals(List.of(), shop(0.02).at(new PlaceFacts("away", "away", PlaceFacts.Kind.AWAY, Optional.empty(), false,
                Optional.empty(),
                Optional.empty(), Optional.empty())).ask(new FloorCompareCheck()));
    }
}
