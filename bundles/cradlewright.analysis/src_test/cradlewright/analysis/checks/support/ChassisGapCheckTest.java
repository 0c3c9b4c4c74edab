package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShimFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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

    @Test
    void stacksTellItWhereTheShopSaidWhatTheyAreMadeUpTo() {
        for (Condition condition : List.of(Condition.SOUND, Condition.REPAIRED)) {
            VisitShop shop = new VisitShop(CarrierKind.CHASSIS);
            shop.shimTarget = Optional.of(SetupFacts.ShimTarget.AS_FOUND);
            ShimStackFacts stack = new ShimStackFacts(List.of(new ShimFacts(Optional.empty(), Optional.of(VisitShop.measured(0.01)),
                    OptionalInt.of(1))));
            shop.mounts.add(new MountFacts("1L", "1L", Optional.of(new Spot(Vec3.ZERO, 0)), condition, Optional.empty(), Optional.empty(),
                    OptionalInt.empty(), Optional.empty(), Optional.of(stack), Optional.empty(), Optional.empty()));
            shop.touch("1L").mount("1L").on("1L");
            Finding open = shop.ask(new ChassisGapCheck()).get(0);
            assertEquals(Verdict.CANT_SAY, open.verdict());
            assertTrue(open.missing().contains("or the stack there now at 1L"), open.missing().toString());
            shop.touches.get(0).shims(stack);
            assertEquals(condition == Condition.REPAIRED ? Verdict.TIGHT : Verdict.HOLDS, shop.ask(new ChassisGapCheck()).get(0).verdict());
        }
    }
}
