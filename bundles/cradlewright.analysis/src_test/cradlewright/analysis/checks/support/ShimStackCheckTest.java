package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.ShimFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** At most five pieces in a stack: common practice, no source. */
class ShimStackCheckTest {

    private static final Optional<Value> TWO_MM = Optional.of(VisitShop.measured(0.002));

    private static ShimFacts shims(int count) {
        return new ShimFacts(Optional.empty(), TWO_MM, OptionalInt.of(count));
    }

    private static List<Finding> ask(ShimFacts... stack) {
        VisitShop shop = new VisitShop(CarrierKind.STANDS);
        shop.touch("bare").at(1, 0, 0);
        shop.touch("A").at(0, 0, 0).shims(new ShimStackFacts(List.of(stack)));
        return shop.ask(new ShimStackCheck());
    }

    private static Verdict verdict(ShimFacts... stack) {
        List<Finding> findings = ask(stack);
        assertEquals(1, findings.size());
        assertEquals("A", findings.get(0).objectId());
        return findings.get(0).verdict();
    }

    @Test
    void fourHoldFiveAreTightSixStop() {
        assertEquals(Verdict.HOLDS, verdict(shims(1)));
        assertEquals(Verdict.HOLDS, verdict(shims(3), shims(1)));
        assertEquals(Verdict.TIGHT, verdict(shims(3), shims(2)));
        assertEquals(Verdict.STOP, verdict(shims(3), shims(3)));
    }

    @Test
    void cantSayWithoutThicknessOrCount() {
        ShimFacts unmeasured = new ShimFacts(Optional.empty(), Optional.empty(), OptionalInt.of(1));
        ShimFacts uncounted = new ShimFacts(Optional.empty(), TWO_MM, OptionalInt.empty());
        assertEquals(Verdict.CANT_SAY, verdict(shims(1), unmeasured));
        assertEquals(Verdict.CANT_SAY, verdict(uncounted));
        assertEquals(Verdict.STOP, verdict(shims(5), uncounted), "it is one at least");
    }

    @Test
    void theShimsOfTheMountCountUnlessTheContactNamesItsOwn() {
        VisitShop shop = new VisitShop(CarrierKind.DOLLY);
        shop.mounts.add(new MountFacts("2L", "2L", Optional.of(new Spot(Vec3.ZERO, 0)), Condition.SOUND, Optional.empty(), Optional.empty(),
                OptionalInt.empty(), Optional.empty(), Optional.of(new ShimStackFacts(List.of(shims(1)))),
                Optional.of(new ShimStackFacts(List.of(shims(6)))), Optional.of(new ShimStackFacts(List.of(shims(1))))));
        shop.touch("A").mount("2L");
        assertEquals(Verdict.STOP, shop.ask(new ShimStackCheck()).get(0).verdict());
        shop.kind = CarrierKind.STANDS;
        assertEquals(List.of(), shop.ask(new ShimStackCheck()), "shims of the dolly do not lie on stands");
        shop.touches.get(0).shims(new ShimStackFacts(List.of(shims(2))));
        assertEquals(Verdict.HOLDS, shop.ask(new ShimStackCheck()).get(0).verdict());
    }

    @Test
    void asksNothingWithoutShims() {
        assertEquals(List.of(), ask());
    }
}
