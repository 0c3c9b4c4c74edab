package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Input;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Pads at x 1.15 and 2.95 m, span 1.8 m; shares by moments, F_front = m (x_rear - x) / span. Limits 2:3 to 3:2 for lifts up to
 * 3500 kg: DGUV information 208-015, section 3. With them the balance point may lie from 1.870 to 2.230 m.
 */
class LiftShareCheckTest {

    private static final Optional<Double> LOW = Optional.of(2.0 / 3);
    private static final Optional<Double> HIGH = Optional.of(1.5);

    private static VisitShop shop(double mass, double x, double u, Optional<Double> low, Optional<Double> high, Optional<Double> rated) {
        VisitShop shop = new VisitShop(CarrierKind.LIFT).part("body", VisitShop.measured(mass), new Vec3(x, 0.1, 0.5), u);
        shop.touch("FL").at(1.15, -0.45, 0);
        shop.touch("FR").at(1.15, 0.45, 0);
        shop.touch("RL").at(2.95, -0.5, 0);
        shop.touch("RR").at(2.95, 0.5, 0);
        shop.lift = Optional.of("lift");
        return shop.with(new GearFacts.Lift("lift", "lift", new Examination(Optional.empty(), Optional.empty(), Optional.empty()),
                rated.map(VisitShop::measured), low, high, List.of()));
    }

    private static Finding only(VisitShop shop) {
        List<Finding> findings = shop.ask(new LiftShareCheck());
        assertEquals(1, findings.size());
        return findings.get(0);
    }

    private static Finding ask(double mass, double x, double u) {
        return only(shop(mass, x, u, LOW, HIGH, Optional.of(3000.0)));
    }

    private static double input(Finding finding, String name) {
        return finding.inputs().stream().filter(input -> input.name().equals(name)).map(Input::amount).findFirst().orElseThrow().si();
    }

    @Test
    void holds() {
        // 1005 kg at 1.95 m: 558.333 and 446.667 kg, ratio 1.25.
        Finding finding = ask(1005, 1.95, 0);
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(1.25, finding.demand().orElseThrow().si(), 1e-9);
        assertEquals(1.5, finding.capacity().orElseThrow().si(), 1e-12);
        assertEquals(558.333, input(finding, "on the front arms"), 5e-4);
        assertEquals(446.667, input(finding, "on the rear arms"), 5e-4);
        assertEquals(0.8, input(finding, "balance point behind the front pads"), 1e-12);
    }

    @Test
    void standsTightInTheLastTenth() {
        // At 2.20 m: front over rear 0.75/1.05 = 0.714286, its reciprocal 1.4 above nine tenths of 1.5; at 2.155 m 1.005/0.795 = 1.264.
        assertEquals(Verdict.TIGHT, ask(800, 2.20, 0).verdict());
        assertEquals(0.714286, ask(800, 2.20, 0).capacity().orElseThrow().si(), 5e-7);
        assertEquals(2.0 / 3, ask(800, 2.20, 0).demand().orElseThrow().si(), 1e-12);
        assertEquals(Verdict.HOLDS, ask(800, 2.155, 0).verdict());
    }

    @Test
    void stopsWithTheEngineOut() {
        // 748 kg at 2.25 m: 290.889 and 457.111 kg, front over rear 0.636364, below the least of 2:3; 20 mm beyond the window.
        Finding finding = ask(748, 2.25, 0);
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals(0.636364, input(finding, "front over rear, best estimate"), 5e-7);
        assertEquals(0.636364, finding.capacity().orElseThrow().si(), 5e-7);
        assertEquals(2.0 / 3, finding.demand().orElseThrow().si(), 1e-12);
        assertTrue(finding.atLeast() && finding.ratedBy().endsWith("front over rear"), "the plate is read in one direction");
        assertEquals("Too much lies on the rear arms for the plate of this lift.", finding.words());
        assertEquals(0.020, input(finding, "all pads further back by at least"), 1e-9);
        assertFalse(finding.remedies().get(0).words().matches(".*\\d.*"), "lengths belong to the inputs");
    }

    @Test
    void whatWouldBeMovedThenKeepsTheLimit() {
        VisitShop moved = shop(748, 2.25 - 0.0201, 0, LOW, HIGH, Optional.empty());
        assertEquals(Verdict.TIGHT, only(moved).verdict(), "moving the pads back is the balance point moving forward");
    }

    @Test
    void theUnfavourableEndDecides() {
        // 1.95 m give or take 0.10 m: at 1.85 m front over rear is 1.1/0.7 = 1.571429; the window begins at 1.87 m.
        Finding finding = ask(1005, 1.95, 0.05);
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals(1.571429, finding.demand().orElseThrow().si(), 5e-7);
        assertEquals("Too much lies on the front arms at the unfavourable end of what is known.", finding.words());
        assertEquals(0.020, input(finding, "all pads further forward by at least"), 1e-9);
    }

    @Test
    void theEndThatBreaksThePlateIsNamedNotTheHeavierOne() {
        // Plate 0.5 to 1.1, 2.10 m give or take 0.10 m: nominal front over rear 0.85/0.95 < 1, but 0.95/0.85 = 1.117647 at 2.00 m.
        Finding finding = only(shop(800, 2.10, 0.05, Optional.of(0.5), Optional.of(1.1), Optional.empty()));
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals(1.117647, finding.demand().orElseThrow().si(), 5e-7);
        assertTrue(finding.words().startsWith("Too much lies on the front arms"), finding.words());
    }

    @Test
    void noPlaceOfThePadsHelpsWhenTooLittleIsKnown() {
        // Give or take 0.20 m on either side is more than the 0.36 m of the window.
        Finding finding = ask(800, 2.05, 0.1);
        assertEquals(Verdict.STOP, finding.verdict());
        assertTrue(finding.remedies().get(0).words().startsWith("Weigh the car"));
    }

    @Test
    void stopsWhenTheBalancePointIsNotBetweenThePads() {
        assertEquals(Verdict.STOP, ask(800, 3.0, 0).verdict());
        assertEquals(Verdict.STOP, ask(800, 1.1, 0).verdict());
        Finding perhaps = ask(800, 2.9, 0.05);
        assertEquals(Verdict.STOP, perhaps.verdict());
        assertTrue(perhaps.words().startsWith("At the unfavourable end"));
        assertEquals(Optional.empty(), perhaps.demand());
    }

    @Test
    void cantSayWithoutThePlateButShowsTheRule() {
        assertTrue(only(shop(1005, 1.95, 0, Optional.empty(), HIGH, Optional.of(3500.0))).words().endsWith("would be allowed."));
        Finding narrow = only(shop(748, 2.25, 0, LOW, Optional.empty(), Optional.of(3500.0)));
        assertEquals(Verdict.CANT_SAY, narrow.verdict());
        assertTrue(narrow.words().endsWith("would not be allowed."));
        // Above 3500 kg the rule is 1:3 to 3:1.
        assertTrue(only(shop(748, 2.25, 0, LOW, Optional.empty(), Optional.of(3501.0))).words().endsWith("would be allowed."));
    }

    @Test
    void cantSayWhenAMassIsMissing() {
        VisitShop shop = shop(1005, 1.95, 0, LOW, HIGH, Optional.empty());
        shop.partsOn.add("engine");
        assertEquals(Verdict.CANT_SAY, only(shop).verdict());
    }

    @Test
    void cantSayWhenThePadsLieInOneRow() {
        VisitShop shop = shop(1005, 1.95, 0, LOW, HIGH, Optional.empty());
        shop.touches.get(2).at(1.15, -0.2, 0);
        shop.touches.get(3).at(1.15, 0.2, 0);
        assertEquals(Verdict.CANT_SAY, only(shop).verdict());
    }

    @Test
    void asksOnlyAboutFourPadsOnALift() {
        VisitShop three = shop(1005, 1.95, 0, LOW, HIGH, Optional.empty());
        three.touches.remove(3);
        assertEquals(List.of(), three.ask(new LiftShareCheck()));
        VisitShop straps = shop(1005, 1.95, 0, LOW, HIGH, Optional.empty());
        straps.kind = CarrierKind.STRAPS;
        assertEquals(List.of(), straps.ask(new LiftShareCheck()));
    }

    @Test
    void thePlateSpeaksOfTheLiftNotOfTheCar() {
        // Plate 0.5 to 1.1 front over rear. 1005 kg at 1.95 m have 1.25 nose first: too much in front. Tail first the front arms of the
        // lift hold the rear of the car, 1 / 1.25 = 0.8: allowed.
        VisitShop shop = shop(1005, 1.95, 0, Optional.of(0.5), Optional.of(1.1), Optional.empty());
        assertEquals(Verdict.STOP, only(shop).verdict());
        assertEquals(0.0, input(only(shop), "all pads further forward by at least") - (1.15 + 1.8 / 2.1 - 1.95), 1e-9);
        shop.heading = Math.PI;
        shop.shift = new Vec3(5, 0, 0);
        Finding turned = only(shop);
        assertEquals(Verdict.HOLDS, turned.verdict());
        assertEquals(0.8, input(turned, "front over rear, best estimate"), 1e-9);
        assertEquals(446.667, input(turned, "on the front arms"), 5e-4);
        // 748 kg at 2.25 m, tail first: front over rear 1 / 0.636364 = 1.571; the pads go back on the car as they do nose first.
        VisitShop heavyTail = shop(748, 2.25, 0, LOW, HIGH, Optional.empty());
        heavyTail.heading = Math.PI;
        Finding finding = only(heavyTail);
        assertEquals("Too much lies on the front arms for the plate of this lift.", finding.words());
        assertEquals(0.020, input(finding, "all pads further back by at least"), 1e-9);
    }
}
