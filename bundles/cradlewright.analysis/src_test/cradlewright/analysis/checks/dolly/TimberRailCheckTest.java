package cradlewright.analysis.checks.dolly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.testshop.FrameShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Rails 100 x 75 of C24 at rest for months under a roof: EN 1995-1-1 k_mod 0.70, gamma_M 1.3, k_h = (150/100)^0.2 = 1.0845,
 * f_m,d = 24 x 0.70/1.3 x 1.0845 = 14.015 MPa; W = 75 x 100^2/6 = 125 000 mm3, M_Rd = 1751.9 N*m. Moment 1.838747 N*m per kg: reached at
 * 953 kg, TIGHT from 858 kg. Shear at 600 kg: V 2206.5 N, 1.5 V/(0.67 b h) = 0.659 MPa against 2.5 x 0.70/1.3 = 1.346 MPa: 0.489.
 */
class TimberRailCheckTest {

    private static FrameShop shop(double kilograms, String timber) {
        StockFacts.TimberRail rail = new StockFacts.TimberRail("rail", "rail 100x75", Optional.of(FrameShop.measured(0.100)),
                Optional.of(FrameShop.measured(0.075)), Optional.of("wood"));
        return new FrameShop(rail, 235e6, 360e6).weighs(kilograms)
                .has(new StockFacts.Timber("wood", timber, Optional.empty(), Optional.empty(), Optional.empty()));
    }

    private static Finding of(String member, FrameShop shop) {
        return shop.ask(new TimberRailCheck()).stream().filter(finding -> finding.objectId().equals(member)).findFirst().orElseThrow();
    }

    @Test
    void holdsWithTheUseWorkedOutByHand() {
        Finding finding = of("left-1", shop(600, "spruce C24"));
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(600 / 952.8, finding.use().orElseThrow(), 0.01);
        assertTrue(finding.inputs().get(0).origin().contains("assumed"), finding.inputs().toString());
    }

    @Test
    void isTightInTheLastTenth() {
        assertEquals(Verdict.TIGHT, of("left-1", shop(910, "spruce C24")).verdict());
    }

    @Test
    void stopsBeyondAndASecondRailIsProven() {
        Finding finding = of("left-1", shop(1000, "spruce C24"));
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals(Optional.of(Verdict.HOLDS), finding.remedies().get(0).after());
    }

    @Test
    void unknownStrengthIsNoAnswer() {
        List<Finding> findings = shop(600, "old beam").ask(new TimberRailCheck());
        assertEquals(1, findings.size());
        assertEquals(Verdict.CANT_SAY, findings.get(0).verdict());
        assertTrue(findings.get(0).missing().get(0).contains("strength class"), findings.get(0).missing().toString());
    }

    @Test
    void pressedTimberIsNoAnswer() {
        // a leg takes 3.6775 N per kg: at 3000 kg 11 033 N on 7500 mm2, 1.47 MPa, above 0.05 x 14.015 MPa = 0.70 MPa; at 1000 kg 0.49 MPa
        Finding pressed = of("leg-left0", shop(3000, "spruce C24").legs(0.4));
        assertEquals(Verdict.CANT_SAY, pressed.verdict());
        assertTrue(pressed.remedies().get(0).words().contains("steel member"), pressed.remedies().toString());
        assertEquals(Verdict.HOLDS, of("leg-left0", shop(1000, "spruce C24").legs(0.4)).verdict());
    }

    @Test
    void steelIsNotAskedAbout() {
        assertEquals(List.of(), new FrameShop(FrameShop.flat("flat", 0.06, 0.01), 235e6, 360e6).weighs(100).ask(new TimberRailCheck()));
    }
}
