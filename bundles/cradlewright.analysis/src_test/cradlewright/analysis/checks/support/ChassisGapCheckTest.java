package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.testshop.VisitShop;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A shell on its chassis never holds on mounts that nobody measured. */
class ChassisGapCheckTest {

    private static VisitShop shop(CarrierKind kind) {
        VisitShop shop = new VisitShop(kind);
        shop.touch("1L").at(0, -0.5, 0).low(0);
        shop.touch("1R").at(0, 0.5, 0).low(0.001);
        return shop;
    }

    @Test
    void holdsWhenEveryGapWasMeasured() {
        List<Finding> findings = shop(CarrierKind.CHASSIS).ask(new ChassisGapCheck());
        assertEquals(List.of(Verdict.HOLDS), findings.stream().map(Finding::verdict).toList());
    }

    @Test
    void cantSayWhenOneIsMissing() {
        VisitShop shop = shop(CarrierKind.CHASSIS);
        shop.touch("2L").at(2, -0.5, 0);
        Finding finding = shop.ask(new ChassisGapCheck()).get(0);
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertTrue(finding.missing().get(0).contains("2L"), finding.missing().get(0));
    }

    @Test
    void asksNothingOnStands() {
        VisitShop shop = shop(CarrierKind.STANDS);
        shop.touch("2L").at(2, -0.5, 0);
        assertEquals(List.of(), shop.ask(new ChassisGapCheck()));
    }
}
