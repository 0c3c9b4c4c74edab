package cradlewright.analysis.checks.dolly;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.testshop.RollingShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A shell of 500 kg, standard uncertainty 10 kg, so 520 kg at its upper end (twice, JCGM 100), against the plate. */
class DollyRatedCheckTest {

    private static Finding only(RollingShop shop) {
        List<Finding> findings = shop.ask(new DollyRatedCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    private static RollingShop shop(double plate) {
        return new RollingShop().weighs(500, 10).bought(Optional.of(RollingShop.measured(plate)));
    }

    @Test
    void holdsStandsTightAndStops() {
        Finding holds = only(shop(520 / 0.89));
        assertEquals(520, holds.demand().orElseThrow().si(), 1e-9);
        assertEquals(Verdict.HOLDS, holds.verdict());
        assertEquals(Verdict.TIGHT, only(shop(520 / 0.91)).verdict());
        assertEquals(Verdict.STOP, only(shop(519)).verdict());
    }

    @Test
    void cantSayWithoutPlateOrMass() {
        Finding finding = only(new RollingShop().bought(Optional.empty()));
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertEquals(List.of("body: mass of a part that is on", "rated load of dolly: read it off its plate"), finding.missing());
    }

    @Test
    void aDollyOfOnesOwnMakeNeedsNoPlate() {
        assertEquals(List.of(), new RollingShop().weighs(500, 10).ask(new DollyRatedCheck()));
    }
}
