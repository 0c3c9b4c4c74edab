package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.LiftPointFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Words only: what was found at the place where the weight goes in. */
class SupportConditionCheckTest {

    private static final Map<Condition, Verdict> STANDING = Map.of(Condition.SOUND, Verdict.HOLDS, Condition.REPAIRED, Verdict.TIGHT,
            Condition.THIN, Verdict.TIGHT, Condition.HOLED, Verdict.STOP, Condition.NOT_LOOKED_AT, Verdict.CANT_SAY);

    private static Finding only(VisitShop shop) {
        List<Finding> findings = shop.ask(new SupportConditionCheck());
        assertEquals(1, findings.size());
        return findings.get(0);
    }

    private static Finding onMount(CarrierKind kind, Condition condition) {
        VisitShop shop = new VisitShop(kind).mount("2R", Vec3.ZERO, condition, Optional.empty());
        shop.touch("contact").mount("2R");
        return only(shop);
    }

    @Test
    void eachConditionHasItsVerdict() {
        STANDING.forEach((condition, verdict) -> assertEquals(verdict, onMount(CarrierKind.DOLLY, condition).verdict(), condition.name()));
        assertEquals("2R", onMount(CarrierKind.DOLLY, Condition.SOUND).objectId());
    }

    @Test
    void thinSheetStopsALift() {
        assertEquals(Verdict.STOP, onMount(CarrierKind.LIFT, Condition.THIN).verdict());
        assertEquals(Verdict.STOP, onMount(CarrierKind.STRAPS, Condition.THIN).verdict());
    }

    @Test
    void aLiftPointCountsLikeAMount() {
        VisitShop shop = new VisitShop(CarrierKind.LIFT);
        shop.liftPoints.add(new LiftPointFacts("sill", "sill", Optional.of(new Spot(Vec3.ZERO, 0)), Condition.HOLED, Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty()));
        shop.touch("contact").liftPoint("sill");
        assertEquals(Verdict.STOP, only(shop).verdict());
        assertEquals("sill", only(shop).objectId());
    }

    @Test
    void aPlaceThatIsNeitherWasNotLookedAt() {
        VisitShop shop = new VisitShop(CarrierKind.STANDS);
        shop.touch("contact").at(0, 0, 0);
        assertEquals(Verdict.CANT_SAY, only(shop).verdict());
    }
}
