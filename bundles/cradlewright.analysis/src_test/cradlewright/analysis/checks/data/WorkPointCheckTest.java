package cradlewright.analysis.checks.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What work points leave open is asked for. */
class WorkPointCheckTest {

    private static VisitShop shop(Optional<Spot> at, Optional<WorkPointFacts.Kind> kind) {
        VisitShop shop = new VisitShop(CarrierKind.STANDS);
        shop.workPoints.add(new WorkPointFacts("sill", "left sill", at, Optional.empty(), kind));
        return shop;
    }

    @Test
    void cantSayWithoutPlaceOrKind() {
        Finding nowhere = shop(Optional.empty(), Optional.of(WorkPointFacts.Kind.LEAN)).ask(new WorkPointCheck()).get(0);
        assertEquals(Verdict.CANT_SAY, nowhere.verdict());
        assertTrue(nowhere.missing().get(0).startsWith("where left sill is"), nowhere.missing().get(0));
        Finding idle = shop(Optional.of(new Spot(Vec3.ZERO, 0)), Optional.empty()).ask(new WorkPointCheck()).get(0);
        assertTrue(idle.missing().get(0).startsWith("what is done at left sill"), idle.missing().get(0));
    }

    @Test
    void saysNothingWhenItIsKnownOrNobodyWorksThere() {
        assertEquals(List.of(), shop(Optional.of(new Spot(Vec3.ZERO, 0)), Optional.of(WorkPointFacts.Kind.BAR)).ask(new WorkPointCheck()));
        VisitShop lifted = shop(Optional.empty(), Optional.empty());
        lifted.kind = CarrierKind.LIFT;
        assertEquals(List.of(), lifted.ask(new WorkPointCheck()));
    }
}
