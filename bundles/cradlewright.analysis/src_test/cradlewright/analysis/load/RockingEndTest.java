package cradlewright.analysis.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.dolly.DollyBody;
import cradlewright.analysis.dolly.DollyBodyKey;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.EndRelease;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.testshop.SteelDolly;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A dolly of 2 m by 1 m with a spine along its middle, whose rear beam turns on a pin at the end of the spine. The shell of 300 kg rests
 * at the front corners and above the pin, so that the pin carries half of it. Statics alone: whatever the floor does, the rear castors
 * share what the pin brings and the beam weighs. Bars 50 mm by 20 mm, 7850 kg/m3 (EN 1993-1-1, 3.2.6).
 */
class RockingEndTest {

    private static final double G = 9.80665;
    private static final double BAR = 7850 * 0.05 * 0.02;

    /** A castor that weighs nothing, so that the closed forms hold the bars alone; it gives what a castor is taken to give. */
    private static final StockFacts.CastorType LIGHT = new StockFacts.CastorType("light", "light", Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(VisitShop.measured(0)));

    private static SteelDolly dolly(EndRelease atThePin) {
        SteelDolly dolly = new SteelDolly("dolly").node("FL", -1, -0.5, 0.2).node("FM", -1, 0, 0.2).node("FR", -1, 0.5, 0.2)
                .node("RL", 1, -0.5, 0.2).node("RM", 1, 0, 0.2).node("RR", 1, 0.5, 0.2)
                .member("front left", "FL", "FM", "bar").member("front right", "FM", "FR", "bar")
                .member("rear left", "RL", "RM", "bar").member("rear right", "RM", "RR", "bar");
        dolly.members.add(new MemberFacts("spine", "spine", Optional.of("FM"), Optional.of("RM"), Optional.of("bar"), Optional.empty(),
                Optional.empty(), EndRelease.FIXED, atThePin, Optional.empty(), Optional.empty(), Optional.empty()));
        for (String corner : List.of("FL", "FR", "RL", "RR")) {
            dolly.castor("c" + corner, corner, Optional.of("light"));
        }
        return dolly;
    }

    private static VisitShop shop(EndRelease atThePin) {
        SteelDolly dolly = dolly(atThePin);
        VisitShop shop = new VisitShop(CarrierKind.DOLLY).part("body", 300, 0, 0, 1)
                .with(new StockFacts.Flat("bar", "bar", Optional.of(VisitShop.measured(0.05)), Optional.of(VisitShop.measured(0.02))))
                .with(LIGHT);
        shop.torsion = Optional.of(VisitShop.measured(1e9));
        dolly.fixture("fixFL", "FL", Optional.empty()).fixture("fixFR", "FR", Optional.empty()).node("SP", 0.9, 0, 0.2);
        dolly.members.removeIf(m -> m.id().equals("spine"));
        dolly.member("spine front", "FM", "SP", "bar");
        dolly.members.add(new MemberFacts("spine", "spine", Optional.of("SP"), Optional.of("RM"), Optional.of("bar"), Optional.empty(),
                Optional.empty(), EndRelease.FIXED, atThePin, Optional.empty(), Optional.empty(), Optional.empty()));
        dolly.fixture("fixSP", "SP", Optional.empty());
        shop.touch("sFL").at(-1, -0.5, 0.5).on("fixFL").stiff(1e6);
        shop.touch("sFR").at(-1, 0.5, 0.5).on("fixFR").stiff(1e6);
        shop.touch("sSP").at(0.9, 0, 0.5).on("fixSP").stiff(1e6);
        shop.dolly = Optional.of("dolly");
        return shop.with(dolly.facts());
    }

    private static Loads ask(VisitShop shop, String situation) {
        Situation wanted = shop.read(new SituationsKey("car", "visit")).stream().filter(s -> s.id().equals(situation)).findFirst()
                .orElseThrow();
        Loads loads = shop.read(new LoadsKey("car", "visit", wanted, false));
        assertEquals(Loads.Outcome.FOUND, loads.outcome(), loads.reason());
        return loads;
    }

    /** What the rear castors carry together: moments about the line of the front castors, 2 m ahead. */
    private static double rear() {
        return (300 * 1.0 + BAR * 2 * 1 + BAR * 1 * 2) * G / 2;
    }

    @Test
    void theRearCastorsShareAlikeWhateverTheFloorDoes() {
        Loads hole = ask(shop(EndRelease.ON_A_PIN), "hole.cRL");
        assertEquals(rear() / 2, hole.castors().get(2).force(), 0.5);
        assertEquals(rear() / 2, hole.castors().get(3).force(), 0.5);
        assertEquals(hole.castors().get(0).force(), hole.castors().get(1).force(), 0.5);
    }

    @Test
    void withoutThePinTheHoleTakesFromItsCastor() {
        Loads hole = ask(shop(EndRelease.FIXED), "hole.cRL");
        assertEquals(rear(), hole.castors().get(2).force() + hole.castors().get(3).force(), 1e-3);
        assertTrue(hole.castors().get(2).force() < rear() / 2 - 10, hole.toString());
    }

    @Test
    void thePinPartsTheDollyAndTheBeamWeighsOneMetreOfBar() {
        DollyBody body = shop(EndRelease.ON_A_PIN).read(new DollyBodyKey("dolly"));
        assertEquals(List.of(), body.missing());
        assertEquals(BAR * 1, body.rocking().orElseThrow().mass(), 1e-9);
        assertEquals(0, body.rocking().get().centre().minus(new Vec3(1, 0, 0.2)).norm(), 1e-12);
    }

    @Test
    void aPinThatPartsNothingAndTwoPinsAreNamed() {
        SteelDolly tied = dolly(EndRelease.ON_A_PIN).member("side", "FL", "RL", "bar");
        assertTrue(missing(tied).contains("tie both sides"), missing(tied));
        SteelDolly twice = dolly(new EndRelease(false, true));
        twice.members.replaceAll(m -> m.id().equals("front left") ? new MemberFacts(m.id(), m.name(), m.fromId(), m.toId(), m.sectionId(),
                m.steelId(), m.up(), EndRelease.ON_A_PIN, EndRelease.FIXED, m.jointFromId(), m.jointToId(), m.unbraced()) : m);
        assertTrue(missing(twice).contains("not several"), missing(twice));
    }

    private static String missing(SteelDolly dolly) {
        return String.join("; ", new VisitShop(CarrierKind.FLOOR).with(dolly.facts())
                .with(new StockFacts.Flat("bar", "bar", Optional.of(VisitShop.measured(0.05)), Optional.of(VisitShop.measured(0.02))))
                .read(new DollyBodyKey("dolly")).missing());
    }

    /** Somebody leans to the left, in the middle and 1 m up. */
    private static TipAnswer tip(EndRelease atThePin) {
        VisitShop shop = shop(atThePin);
        shop.workPoints.add(new WorkPointFacts("lean", "lean", Optional.of(new Spot(new Vec3(0, 0, 1), 0)), Optional.of(new Vec3(0, -1, 0)),
                Optional.of(WorkPointFacts.Kind.LEAN)));
        List<TipAnswer> answers = shop.read(new TipKey("car", "visit")).stream()
                .filter(a -> a.question() == TipAnswer.Question.ON_FLOOR && a.situation().kind() == Situation.Kind.LEAN).toList();
        assertEquals(1, answers.size());
        assertTrue(answers.get(0).answered());
        return answers.get(0);
    }

    @Test
    void aRockingEndTipsAboutTheLineToItsPin() {
        double push = shop(EndRelease.FIXED).settings.leanForce();
        double weight = (300 + BAR * (1 + 1 + 2)) * G;
        // Whole dolly stiff: tips over the left castors, half a metre off the middle.
        assertEquals(weight * 0.5 / (push * 1.0), tip(EndRelease.FIXED).ratio(), 0.01);
        // On a pin: the rear beam brings an upright force R at the pin's line only, so the roll is held by the front castors alone. Moments
        // about x: front left carries all of the front load F when it tips, F * 0.5 = push * h.
        assertEquals((weight - rear()) * 0.5 / (push * 1.0), tip(EndRelease.ON_A_PIN).ratio(), 0.01);
        assertFalse(tip(EndRelease.ON_A_PIN).over().isEmpty());
    }
}
