package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Input;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.LiftPointFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Pivot of the left column at (0, -1.40), pad at (0.85, -0.45): distance sqrt(0.85^2 + 0.95^2) = 1.274755 m, direction 48.18 degrees
 * from rearward to the right (plane geometry).
 */
class ArmReachCheckTest {

    private static Optional<Value> value(double si) {
        return Optional.of(VisitShop.measured(si));
    }

    private static Optional<Value> degrees(double degrees) {
        return value(Math.toRadians(degrees));
    }

    private static VisitShop shop(GearFacts.ArmFacts arm) {
        VisitShop shop = new VisitShop(CarrierKind.LIFT);
        shop.touch("pad").at(0.85, -0.45, 0.3).on("arm");
        shop.lift = Optional.of("lift");
        return shop.with(new GearFacts.Lift("lift", "lift", new Examination(Optional.empty(), Optional.empty(), Optional.empty()),
                Optional.empty(),
                Optional.empty(), Optional.empty(), List.of(arm)));
    }

    private static GearFacts.ArmFacts arm(Optional<Value> shortest, Optional<Value> longest, Optional<Value> from, Optional<Value> to) {
        return new GearFacts.ArmFacts("arm", "arm", Optional.of(new Vec3(0, -1.4, 1)), shortest, longest, from, to, Optional.empty(),
                Optional.empty(), Optional.empty());
    }

    private static Finding ask(double shortest, double longest, double from, double to) {
        return only(shop(arm(value(shortest), value(longest), degrees(from), degrees(to))));
    }

    private static Finding only(VisitShop shop) {
        List<Finding> findings = shop.ask(new ArmReachCheck());
        assertEquals(1, findings.size());
        return findings.get(0);
    }

    @Test
    void holds() {
        // 1.274755 of 1.45 m is 0.879, of 1.4 m 0.911.
        Finding finding = ask(0.8, 1.45, 0, 90);
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(1.274755, finding.demand().orElseThrow().si(), 5e-7);
        assertEquals(48.18, Math.toDegrees(finding.inputs().get(3).amount().si()), 0.005);
    }

    @Test
    void standsTightWhenItIsNearlyAllOutAndShowsWhatIsLeft() {
        Finding finding = ask(0.8, 1.4, 0, 90);
        assertEquals(Verdict.TIGHT, finding.verdict());
        List<Input> shown = finding.inputs().stream().filter(Input::shown).toList();
        assertEquals(List.of("left before the arm is all out", "left before it is all in"), shown.stream().map(Input::name).toList());
        assertEquals(0.125245, shown.get(0).amount().si(), 5e-7);
        assertEquals(0.474755, shown.get(1).amount().si(), 5e-7);
        // An arm all in is none the worse for it.
        assertEquals(Verdict.HOLDS, ask(1.27, 1.45, 0, 90).verdict());
    }

    @Test
    void aMeasuredReachCountsAtItsLowEnd() {
        Optional<Value> longest = Optional.of(new Value(1.3, 0.015, Source.MEASURED));
        // 1.3 m less twice 0.015 m is 1.27 m.
        assertEquals(Verdict.STOP, only(shop(arm(value(0.8), longest, degrees(0), degrees(90)))).verdict());
        Optional<Value> shortest = Optional.of(new Value(1.25, 0.015, Source.MEASURED));
        assertEquals(Verdict.STOP, only(shop(arm(shortest, value(2), degrees(0), degrees(90)))).verdict());
    }

    /** The pad is a lift point, its place known to give or take 2 x 0.02 m (JCGM 100, k = 2): from 1.234755 m to 1.314755 m away. */
    private static Finding askPoint(double shortest, double longest, double from, double to) {
        VisitShop shop = new VisitShop(CarrierKind.LIFT);
        shop.liftPoints.add(new LiftPointFacts("point", "point", Optional.of(new Spot(new Vec3(0.85, -0.45, 0.3), 0.02)),
                Condition.SOUND, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
        shop.touch("pad").liftPoint("point").on("arm");
        shop.lift = Optional.of("lift");
        shop.with(new GearFacts.Lift("lift", "lift", new Examination(Optional.empty(), Optional.empty(), Optional.empty()),
                Optional.empty(), Optional.empty(), Optional.empty(),
                List.of(arm(value(shortest), value(longest), degrees(from), degrees(to)))));
        return only(shop);
    }

    @Test
    void theGiveOrTakeOfTheLiftPointCounts() {
        Finding holds = askPoint(1.23, 1.5, 0, 90);
        assertEquals(Verdict.HOLDS, holds.verdict());
        assertEquals(1.314755, holds.demand().orElseThrow().si(), 5e-7);
        assertEquals(Verdict.STOP, askPoint(0.8, 1.31, 0, 90).verdict());
        assertEquals("The lift point may lie beyond the reach of this arm: its place is not known that well.",
                askPoint(0.8, 1.31, 0, 90).words());
        assertEquals("The lift point lies beyond the reach of this arm.", askPoint(0.8, 1.27, 0, 90).words());
        assertEquals("The lift point may lie too close for this arm: its place is not known that well.",
                askPoint(1.24, 1.6, 0, 90).words());
        // Give or take 0.04 m at 1.274755 m is asin(0.031379) = 1.798 degrees beside 48.180 degrees.
        assertEquals(Verdict.HOLDS, askPoint(0.8, 1.5, 46.3, 50).verdict());
        assertEquals(Verdict.STOP, askPoint(0.8, 1.5, 46.5, 60).verdict());
        assertEquals(Verdict.STOP, askPoint(0.8, 1.5, 0, 49.9).verdict());
    }

    @Test
    void stopsBeyondAndBeforeItsReach() {
        assertEquals("The lift point lies beyond the reach of this arm.", ask(0.8, 1.274, 0, 90).words());
        assertEquals(Verdict.STOP, ask(0.8, 1.274, 0, 90).verdict());
        assertEquals("The lift point lies too close for this arm.", ask(1.275, 1.6, 0, 90).words());
        assertEquals(Verdict.STOP, ask(1.275, 1.6, 0, 90).verdict());
    }

    @Test
    void stopsWhereItDoesNotSwing() {
        assertEquals(Verdict.STOP, ask(0.8, 1.45, 49, 180).verdict());
        assertEquals(Verdict.STOP, ask(0.8, 1.45, -90, 48).verdict());
        assertEquals(Verdict.HOLDS, ask(0.8, 1.45, 48, 49).verdict());
    }

    @Test
    void theSwingMayPassRearwardAndGoRoundWholly() {
        assertEquals(Verdict.HOLDS, ask(0.8, 1.45, 270, 90).verdict());
        assertEquals(Verdict.STOP, ask(0.8, 1.45, 270, 45).verdict());
        assertEquals(Verdict.HOLDS, ask(0.8, 1.45, 180, 540).verdict());
    }

    @Test
    void thePlaceOnTheLiftCounts() {
        VisitShop shop = shop(arm(value(0.8), value(1.3), degrees(0), degrees(90)));
        shop.shift = new Vec3(0.1, 0, 0);
        // sqrt(0.95^2 + 0.95^2)
        assertEquals(1.343503, only(shop).demand().orElseThrow().si(), 5e-7);
        assertEquals(Verdict.STOP, only(shop).verdict());
    }

    @Test
    void cantSayWithoutReachOrSwing() {
        Finding reach = only(shop(arm(value(0.8), Optional.empty(), degrees(0), degrees(90))));
        assertEquals(Verdict.CANT_SAY, reach.verdict());
        Finding swing = only(shop(arm(value(0.8), value(1.5), degrees(0), Optional.empty())));
        assertEquals(Verdict.CANT_SAY, swing.verdict());
        assertTrue(swing.missing().get(0).contains("swings"));
        assertEquals(Verdict.STOP, only(shop(arm(value(0.8), value(1.2), Optional.empty(), Optional.empty()))).verdict(),
                "too short is too short, however far it swings");
    }

    @Test
    void asksOnlyAboutArms() {
        VisitShop shop = shop(arm(value(0.8), value(1.5), degrees(0), degrees(90)));
        shop.lift = Optional.empty();
        assertEquals(List.of(), shop.ask(new ArmReachCheck()));
    }
}
