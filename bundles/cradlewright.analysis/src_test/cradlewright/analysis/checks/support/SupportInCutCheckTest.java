package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.CutZoneFacts;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A cut from (1, -0.8) to (1.5, -0.4) seen from above; the height does not matter. */
class SupportInCutCheckTest {

    private static VisitShop shop(boolean planned, Optional<Vec3> high) {
        VisitShop shop = new VisitShop(CarrierKind.STANDS);
        shop.cuts.add(new CutZoneFacts("sill", "sill", Optional.of(new Vec3(1, -0.8, 0.2)), high, planned, List.of()));
        return shop;
    }

    private static List<Finding> ask(double x, double y) {
        VisitShop shop = shop(true, Optional.of(new Vec3(1.5, -0.4, 0.3)));
        shop.touch("outside").at(0, 0, 0);
        shop.touch("A").at(x, y, -0.4);
        return shop.ask(new SupportInCutCheck());
    }

    private static void stops(double x, double y) {
        List<Finding> findings = ask(x, y);
        assertEquals(List.of("A"), findings.stream().map(Finding::objectId).toList());
        assertEquals(Verdict.STOP, findings.get(0).verdict());
    }

    private static void holds(double x, double y) {
        List<Finding> findings = ask(x, y);
        assertEquals(List.of("sill"), findings.stream().map(Finding::objectId).toList());
        assertEquals(Verdict.HOLDS, findings.get(0).verdict());
    }

    @Test
    void stopsInsideAndOnTheLine() {
        stops(1.2, -0.6);
        stops(1, -0.6);
        stops(1.5, -0.4);
    }

    @Test
    void holdsOutsideOnEachSide() {
        holds(0.99, -0.6);
        holds(1.51, -0.6);
        holds(1.2, -0.81);
        holds(1.2, -0.39);
        holds(1.2, 0.6);
    }

    @Test
    void cantSayWithoutBothCorners() {
        assertEquals(Verdict.CANT_SAY, shop(true, Optional.empty()).ask(new SupportInCutCheck()).get(0).verdict());
    }

    @Test
    void asksNothingWithoutAPlannedCut() {
        assertEquals(List.of(), shop(false, Optional.empty()).ask(new SupportInCutCheck()));
    }
}
