package cradlewright.analysis.checks.castor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.testshop.RollingShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Motion down a slope without friction: v = sqrt(2 g sin(a) s). Polymer wheels of 125 mm roll at 0.08 at the most. */
class CastorRunAwayCheckTest {

    private static RollingShop shop() {
        return new RollingShop().weighs(760, 0);
    }

    private static Finding only(RollingShop shop) {
        List<Finding> findings = shop.ask(new CastorRunAwayCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void stopsOnAFallWithoutBrakes() {
        Finding finding = only(shop().onFall(0.02));
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals("It may roll off by itself, and it has no brakes.", finding.words());
        assertEquals(Math.sqrt(2 * 9.80665 * 0.02 / Math.hypot(1, 0.02) * 5), finding.inputs().get(2).amount().si(), 1e-9);
        assertEquals("It rolls off by itself, and it has no brakes.", only(shop().onFall(0.0801)).words());
        assertEquals("It may roll off by itself, and it has no brakes.", only(shop().onFall(0.0799)).words());
    }

    @Test
    void tightWithBrakesOnAFallOrWithoutBrakesIndoors() {
        assertEquals(Verdict.TIGHT, only(shop().onFall(0.02).braked(3)).verdict());
        assertEquals(Verdict.TIGHT, only(shop()).verdict());
    }

    @Test
    void outdoorsCountsAsAFall() {
        PlaceFacts yard = new PlaceFacts("yard", "yard", PlaceFacts.Kind.YARD, Optional.empty(), false, Optional.empty(),
                Optional.empty(),
                Optional.empty());
        assertEquals(Verdict.STOP, only(shop().at(yard)).verdict());
    }

    @Test
    void holdsOnLevelFloorAndIndoorsWithBrakes() {
        assertEquals(Verdict.HOLDS, only(shop().onFall(0)).verdict());
        assertEquals(Verdict.HOLDS, only(shop().braked(2, 3)).verdict());
    }

    @Test
    void feetAreTheFirstRemedy() {
        assertEquals(Remedy.mends("Put the feet down.", Verdict.HOLDS), only(shop().onFall(0.02).feet(0.6, false))
                .remedies().get(0));
        assertEquals(List.of(), shop().onFall(0.02).feet(0.6, true).ask(new CastorRunAwayCheck()));
    }

    @Test
    void cantSayWithoutMass() {
        assertEquals(Verdict.CANT_SAY, only(new RollingShop()).verdict());
    }
}
