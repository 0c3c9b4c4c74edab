package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Words only: which mounts are ticked off when the shell alone is lifted. */
class StillFastCheckTest {

    private static VisitShop shop(CarrierKind kind, Optional<Boolean> first, Optional<Boolean> second) {
        return new VisitShop(kind).mount("1L", Vec3.ZERO, Condition.SOUND, first).mount("1R", Vec3.UP, Condition.SOUND, second);
    }

    private static List<Finding> ask(VisitShop shop) {
        return shop.ask(new StillFastCheck());
    }

    private static Finding only(VisitShop shop) {
        assertEquals(1, ask(shop).size());
        return ask(shop).get(0);
    }

    @Test
    void holdsWhenEveryMountIsFree() {
        assertEquals(Verdict.HOLDS, only(shop(CarrierKind.STRAPS, Optional.of(false), Optional.of(false))).verdict());
        assertEquals(Verdict.HOLDS, only(shop(CarrierKind.LIFT, Optional.of(false), Optional.of(false))).verdict());
    }

    @Test
    void stopsAtEachMountThatIsFast() {
        List<Finding> findings = ask(shop(CarrierKind.STRAPS, Optional.of(true), Optional.of(true)));
        assertEquals(List.of("1L", "1R"), findings.stream().map(Finding::objectId).toList());
        assertEquals(Verdict.STOP, only(shop(CarrierKind.STRAPS, Optional.of(true), Optional.empty())).verdict());
    }

    @Test
    void cantSayWhenNobodyTickedOneOffOrNamedAny() {
        Finding unsaid = only(shop(CarrierKind.STRAPS, Optional.of(false), Optional.empty()));
        assertEquals(Verdict.CANT_SAY, unsaid.verdict());
        assertTrue(unsaid.words().contains("1R") && !unsaid.words().contains("1L"), unsaid.words());
        assertEquals(Verdict.CANT_SAY, only(new VisitShop(CarrierKind.STRAPS)).verdict());
    }

    @Test
    void asksNothingWhenShellAndChassisStayTogether() {
        VisitShop both = shop(CarrierKind.LIFT, Optional.of(true), Optional.empty());
        both.carried.add("chassis");
        assertEquals(List.of(), ask(both));
        VisitShop chassis = shop(CarrierKind.LIFT, Optional.of(true), Optional.empty());
        chassis.carried.clear();
        chassis.carried.add("chassis");
        assertEquals(List.of(), ask(chassis));
        VisitShop inOne = shop(CarrierKind.LIFT, Optional.of(true), Optional.empty());
        inOne.separateChassis = false;
        assertEquals(List.of(), ask(inOne));
        assertEquals(List.of(), ask(shop(CarrierKind.DOLLY, Optional.of(true), Optional.of(true))));
    }
}
