package cradlewright.analysis.checks.castor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.testshop.RollingShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * 900 kg, half on each line of castors 1.6 m apart, wheels of 125 mm, pushed at 1.0 m. By solving the equilibrium equations: a
 * step of
 * 5 mm takes 2505.26 N, one of 20 mm 12 922.8 N; the castors behind lift at 7531.51 N.
 */
class CastorStepCheckTest {

    private static RollingShop shop(double step) {
        return new RollingShop().weighs(760, 0).commonBalance(0, 0, 0.8).at(new PlaceFacts("place", "place", PlaceFacts.Kind.BAY,
                Optional.empty(), false, Optional.empty(), Optional.empty(), Optional.of(RollingShop.measured(step))));
    }

    private static Finding only(RollingShop shop) {
        List<Finding> findings = shop.ask(new CastorStepCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void climbsTheSettledStep() {
        // Nothing stated for the place: 5 mm, common practice.
        Finding finding = only(new RollingShop().weighs(760, 0).commonBalance(0, 0, 0.8));
        assertEquals(2505.26, finding.demand().orElseThrow().si(), 0.01);
        assertEquals(7531.51, finding.capacity().orElseThrow().si(), 0.01);
        assertEquals("It gets over the step.", finding.words());
        assertEquals(Verdict.HOLDS, finding.verdict());
    }

    @Test
    void standsTightAndStops() {
        // 14 mm: the push at the axle over the load is 0.8128, 0.77594 of the weight climbs and 0.85333 of it tips: 0.909.
        assertEquals(Verdict.TIGHT, only(shop(0.014)).verdict());
        Finding stop = only(shop(0.020));
        assertEquals(12922.8, stop.demand().orElseThrow().si(), 0.1);
        assertEquals(Verdict.STOP, stop.verdict());
        assertEquals("It tips over the castors at the step before they climb it.", stop.words());
        assertTrue(only(shop(0.0625)).words().startsWith("The step is as high as the axles"));
    }

    @Test
    void theWorseOfBothWaysCounts() {
        // Castors behind carry 0.35/1.6 less of the weight when pushed rearward with the balance point 0.35 m behind the middle.
        Finding finding = only(new RollingShop().weighs(760, 0).commonBalance(0.35, 0, 0.8));
        assertEquals(7531.51 * (0.5 - 0.35 / 1.6) / 0.5, finding.capacity().orElseThrow().si(), 0.01);
    }

    @Test
    void largerWheelsAndALowPullAreProven() {
        // Wheels of 200 mm: 0.75 at the axle, 0.6486 of the weight climbs, 0.8889 tips: 0.73.
        // A larger wheel that is rated lower than those it replaces (1000 kg) is no help.
        List<Remedy> remedies = only(shop(0.020).has(RollingShop.type("weaker", 500, 0.2)).has(RollingShop.type("larger", 1000, 0.2)))
                .remedies();
        assertEquals(Remedy.mends("Fit castors of the type larger all round. Their wheels are of another size: the dolly then stands at "
                + "another height.", Verdict.HOLDS), remedies.get(0));
        assertEquals(Remedy.alone("Pull it low, by a strap at the height of the axles.", Verdict.HOLDS),
                remedies.get(1));
    }

    @Test
    void tellsWhenItTipsSideways() {
        // 0.8 m across: 6 mm tips sideways and is climbed lengthwise.
        assertEquals("It gets over the step. Pushed sideways it would tip: take it over lengthwise.", only(shop(0.006)).words());
    }

    @Test
    void cantSayWithoutDiameterOrMass() {
        assertEquals(Verdict.CANT_SAY, only(shop(0.005).diameter(Optional.empty())).verdict());
        assertEquals(Verdict.CANT_SAY, only(new RollingShop()).verdict());
        assertEquals(List.of(), shop(0).ask(new CastorStepCheck()));
    }
}
