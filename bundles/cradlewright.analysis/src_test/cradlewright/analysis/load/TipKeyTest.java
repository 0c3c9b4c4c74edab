package cradlewright.analysis.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.Basis;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.testshop.SteelDolly;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Shell of 320 kg at (1.3, 0), dolly of 90 kg at (1.5, 0), pads at (0.3 | 2.4, +-0.45) and z 0.8 m, castors at (0 | 3, +-0.55); 400 N
 * to the right at 1.3 m. By moments: on the floor (320 + 90) g 0.55 / 1.3 = 1701.077 N, on the pads 320 g 0.45 / (1.3 - 0.8) =
 * 2824.315 N (own derivation, checked by two methods).
 */
class TipKeyTest {

    private static VisitShop shop(double y, Vec3 push) {
        return shop(y, push, Optional.empty());
    }

    private static VisitShop shop(double y, Vec3 push, Optional<PropFacts> prop) {
        return shop(y, push, prop, Optional.empty());
    }

    private static VisitShop shop(double y, Vec3 push, Optional<PropFacts> prop, Optional<Value> boltedAtTheLeft) {
        SteelDolly dolly = new SteelDolly("dolly");
        dolly.mass = Optional.of(VisitShop.measured(90));
        dolly.balance = Optional.of(new Vec3(1.5, 0, 0.3));
        VisitShop shop = new VisitShop(CarrierKind.DOLLY).part("body", 320, 1.3, y, 1.1);
        shop.dolly = Optional.of("dolly");
        for (double side : new double[] {-1, 1}) {
            String name = side < 0 ? "L" : "R";
            dolly.node("c1" + name, 0, 0.55 * side, 0.2).node("c2" + name, 3, 0.55 * side, 0.2).node("p1" + name, 0.3, 0.45 * side, 0.2)
                    .node("p2" + name, 2.4, 0.45 * side, 0.2);
            dolly.castor("castor 1" + name, "c1" + name, Optional.empty()).castor("castor 2" + name, "c2" + name, Optional.empty());
            dolly.fixture("fix1" + name, "p1" + name, Optional.empty()).fixture("fix2" + name, "p2" + name, Optional.empty());
            VisitShop.Touch front = shop.touch("1" + name).at(0.3, 0.45 * side, 0.8).on("fix1" + name);
            VisitShop.Touch rear = shop.touch("2" + name).at(2.4, 0.45 * side, 0.8).on("fix2" + name);
            if (side < 0 && boltedAtTheLeft.isPresent()) {
                dolly.fixtures.replaceAll(fixture -> fixture.id().endsWith("L") ? new FixtureFacts(fixture.id(), fixture.name(),
                        fixture.nodeId(), fixture.on(), fixture.height(), fixture.offset(), fixture.padId(), Hold.BOLTED, fixture.boltId(),
                        fixture.boltCount(), boltedAtTheLeft, Optional.of(Basis.RATED_LOAD), fixture.stiffness()) : fixture);
                front.holds(Hold.BOLTED);
                rear.holds(Hold.BOLTED);
            }
        }
        shop.workPoints.add(new WorkPointFacts("sill", "sill", Optional.of(new Spot(new Vec3(1.3, 0, 1.3), 0)), Optional.of(push),
                Optional.of(WorkPointFacts.Kind.LEAN)));
        prop.ifPresent(dolly.props::add);
        return shop.with(dolly.facts());
    }

    private static TipAnswer ask(VisitShop shop, TipAnswer.Question question) {
        List<TipAnswer> answers = shop.read(new TipKey("car", "visit"));
        assertEquals(2, answers.size());
        return answers.stream().filter(answer -> answer.question() == question).findFirst().orElseThrow();
    }

    @Test
    void eachQuestionHasItsOwnAnswer() {
        VisitShop shop = shop(0, new Vec3(0, 1, 0));
        TipAnswer floor = ask(shop, TipAnswer.Question.ON_FLOOR);
        TipAnswer pads = ask(shop, TipAnswer.Question.ON_SUPPORTS);
        assertEquals(1701.077, 400 * floor.ratio(), 1e-3);
        assertEquals(2824.315, 400 * pads.ratio(), 1e-3);
        assertTrue(floor.answered() && floor.standsAlone() && pads.answered() && pads.standsAlone());
        assertTrue(floor.over().contains("castor 1R") && floor.over().contains("castor 2R") && !floor.over().contains("L"), floor.over());
        assertTrue(pads.over().contains("1R") && pads.over().contains("2R") && !pads.over().contains("L"), pads.over());
    }

    @Test
    void theOtherWayItFallsOverTheOtherSide() {
        // Balance point 0.1 m to the right: to the left 3138.128 * 0.55 / 0.5 = 3451.941 N on the pads.
        VisitShop shop = shop(0.1, new Vec3(0, -1, 0));
        assertEquals(3451.941, 400 * ask(shop, TipAnswer.Question.ON_SUPPORTS).ratio(), 1e-3);
        assertTrue(ask(shop, TipAnswer.Question.ON_SUPPORTS).over().contains("1L"));
        // On the floor (3138.128 * 0.65 + 882.5985 * 0.55) / 1.3 = 1942.471 N.
        assertEquals(1942.471, 400 * ask(shop, TipAnswer.Question.ON_FLOOR).ratio(), 1e-3);
    }

    @Test
    void aPushDownBetweenTheSupportsUpsetsNothing() {
        assertEquals(Double.POSITIVE_INFINITY, ask(shop(0, new Vec3(0, 0, -1)), TipAnswer.Question.ON_SUPPORTS).ratio());
        assertEquals("", ask(shop(0, new Vec3(0, 0, -1)), TipAnswer.Question.ON_SUPPORTS).over());
    }

    @Test
    void whatDoesNotStandAloneSaysSo() {
        TipAnswer pads = ask(shop(0.5, new Vec3(0, 1, 0)), TipAnswer.Question.ON_SUPPORTS);
        assertFalse(pads.standsAlone());
        assertTrue(ask(shop(0.5, new Vec3(0, 1, 0)), TipAnswer.Question.ON_FLOOR).standsAlone());
    }

    @Test
    void aMissingMassLeavesItUnanswered() {
        VisitShop shop = shop(0, new Vec3(0, 1, 0));
        shop.shellParts.add(new PartFacts("door", "door", Optional.empty(), Optional.empty(), Optional.empty()));
        shop.partsOn.add("door");
        List<TipAnswer> answers = shop.read(new TipKey("car", "visit"));
        assertTrue(answers.stream().noneMatch(TipAnswer::answered) && !answers.isEmpty());
    }

    @Test
    void nothingIsAskedWithoutAPush() {
        VisitShop shop = shop(0, new Vec3(0, 1, 0));
        shop.workPoints.clear();
        assertEquals(List.of(), shop.read(new TipKey("car", "visit")));
    }

    @Test
    void aPropOnTheDollyHelpsOnItAndOneOnTheFloorHelpsOnTheFloorAsWell() {
        // A prop 1 m to the right of the middle: on the pads the line over which it goes runs through it and a pad; the front one, since
        // the balance point lies nearer to it than to the rear one. Line (0.3, 0.45) - (1.3, 1.0): distance of (1.3, 0) is
        // 1.0 * 1.0 / hypot(1, 0.55) = 0.876216 m; the push right of 400 N acts across it with 1 / hypot(1, 0.55).
        Vec3 right = new Vec3(0, 1, 0);
        PropFacts onDolly = new PropFacts("prop", "prop", Optional.of(new Vec3(1.3, 1, 0.8)), true, Optional.empty(), Optional.empty(),
                Optional.of("p1R"));
        VisitShop bolted = shop(0, right, Optional.of(onDolly));
        // Moment about that line: 320 g 0.876216 / (0.5 * 0.876216) = 320 g / 0.5 = 6276.256 N: the push and the weight act in one plane.
        assertEquals(6276.256, 400 * ask(bolted, TipAnswer.Question.ON_SUPPORTS).ratio(), 1e-3);
        assertTrue(ask(bolted, TipAnswer.Question.ON_SUPPORTS).over().contains("prop"));
        assertEquals(1701.077, 400 * ask(bolted, TipAnswer.Question.ON_FLOOR).ratio(), 1e-3);
        PropFacts onFloor = new PropFacts("prop", "prop", Optional.of(new Vec3(1.3, 1, 0.8)), true, Optional.empty(), Optional.empty(),
                Optional.empty());
        assertTrue(400 * ask(shop(0, right, Optional.of(onFloor)), TipAnswer.Question.ON_FLOOR).ratio() > 1701.077 + 100);
        PropFacts hung = new PropFacts("prop", "prop", Optional.of(new Vec3(1.3, 1, 0.8)), false, Optional.empty(), Optional.empty(),
                Optional.empty());
        assertEquals(1701.077, 400 * ask(shop(0, right, Optional.of(hung)), TipAnswer.Question.ON_FLOOR).ratio(), 1e-3);
    }

    private static VisitShop uncertain(double shellU, double place, double engineU) {
        VisitShop shop = shop(0, new Vec3(0, 1, 0));
        shop.shellParts.clear();
        shop.partsOn.clear();
        return shop.part("body", new Value(240, shellU, Source.WEIGHED), new Vec3(1.3, -0.1, 1.1), place)
                .part("engine", new Value(80, engineU, Source.MAKERS_SHEET), new Vec3(1.3, 0.3, 1.1), 0);
    }

    @Test
    void theUnfavourableEndIsAskedAnew() {
        // On the pads W (0.45 - y)/(1.3 - 0.8). Body 240 kg give or take 20 kg and 0.04 m, engine 80 kg give or take 6 kg: a search over
        // what they may weigh and where the body may have its balance point.
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 90; i++) {
            for (int j = 0; j < 360; j++) {
                double body = 240 + 20 * Math.cos(Math.toRadians(2 * i)) * Math.cos(Math.toRadians(j));
                double engine = 80 + 6 * Math.cos(Math.toRadians(2 * i)) * Math.sin(Math.toRadians(j));
                double place = -0.1 + 0.04 * Math.sin(Math.toRadians(2 * i));
                least = Math.min(least, 9.80665 * (body * (0.45 - place) + engine * (0.45 - 0.3)) / (1.3 - 0.8));
            }
        }
        TipAnswer pads = ask(uncertain(10, 0.02, 3), TipAnswer.Question.ON_SUPPORTS);
        assertEquals(2824.315, 400 * pads.ratio(), 1e-3);
        assertEquals(least, 400 * pads.low(), 1e-3 * least);
        assertEquals(2824.315, 400 * ask(uncertain(0, 0, 0), TipAnswer.Question.ON_SUPPORTS).low(), 1e-3);
    }

    private static VisitShop bolted(double u) {
        VisitShop shop = shop(0.5, new Vec3(0, 1, 0), Optional.empty(), Optional.of(VisitShop.measured(2000)));
        shop.shellParts.clear();
        shop.partsOn.clear();
        return shop.part("body", new Value(320, u, Source.WEIGHED), new Vec3(1.3, 0.5, 1.1), 0);
    }

    @Test
    void whereBoltsHoldALoadThatWouldFallTheHeavierEndCounts() {
        // Balance point 0.5 m to the right, beyond the pads at 0.45 m; two bolts at the left pull 2000 N each 0.9 m off them. Moments
        // about the right pads: push (2 x 2000 x 0.9 - 320 g 0.05)/(1.3 - 0.8) = 6886.187 N; 10 kg more take 10 g 0.05/0.5 off it.
        TipAnswer heavier = ask(bolted(5), TipAnswer.Question.ON_SUPPORTS);
        assertTrue(heavier.standsAlone());
        assertEquals(6886.187, 400 * heavier.ratio(), 1e-3);
        assertEquals(6886.187 - 10 * 9.80665 * 0.05 / 0.5, 400 * heavier.low(), 1e-3);
    }

    @Test
    void aMassThatMayBeNothingHoldsNothing() {
        assertEquals(0, ask(uncertain(200, 0, 0), TipAnswer.Question.ON_SUPPORTS).low());
    }

    @Test
    void aFaceThatLeansTipsOverWhereItStands() {
        VisitShop shop = shop(0, new Vec3(0, 1, 0));
        shop.touches.forEach(touch -> touch.pushes(0.3, 0.2, 1));
        assertEquals(2824.315, 400 * ask(shop, TipAnswer.Question.ON_SUPPORTS).ratio(), 1e-3);
    }
}
