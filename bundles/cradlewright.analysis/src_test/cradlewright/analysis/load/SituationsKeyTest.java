package cradlewright.analysis.load;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.FootFacts;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.testshop.SteelDolly;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Forces of people: 400 N leaning, 800 N on a bar, 120 kg standing; 3 mm unevenness and 1.4 over a joint: common practice, no source. */
class SituationsKeyTest {

    private static VisitShop shop(CarrierKind kind) {
        VisitShop shop = new VisitShop(kind);
        for (WorkPointFacts.Kind work : WorkPointFacts.Kind.values()) {
            shop.workPoints.add(new WorkPointFacts(work.name(), work.name(), Optional.of(new Spot(new Vec3(1, 2, 3), 0)),
                    Optional.of(new Vec3(1, 0, 0)), Optional.of(work)));
        }
        shop.workPoints.add(new WorkPointFacts("nowhere", "nowhere", Optional.empty(), Optional.empty(),
                Optional.of(WorkPointFacts.Kind.BAR)));
        return shop;
    }

    private static List<Situation> ask(VisitShop shop) {
        return shop.read(new SituationsKey("car", "visit"));
    }

    private static void near(Vec3 expected, Vec3 actual) {
        assertEquals(0, expected.minus(actual).norm(), 1e-9, actual::toString);
    }

    @Test
    void peoplePushWhereAndHowTheWorkPointSays() {
        VisitShop shop = shop(CarrierKind.STANDS);
        shop.heading = Math.PI / 2;
        shop.shift = new Vec3(10, 0, 0);
        List<Situation> situations = ask(shop);
        assertEquals(List.of(Situation.Kind.AT_REST, Situation.Kind.LEAN, Situation.Kind.BAR, Situation.Kind.STAND_ON),
                situations.stream().map(Situation::kind).toList());
        // A quarter turn from rearward to the right: (1, 2, 3) goes to (-2, 1, 3), rearward becomes to the right.
        near(new Vec3(8, 1, 3), situations.get(1).push().orElseThrow().at());
        near(new Vec3(0, 400, 0), situations.get(1).push().orElseThrow().force());
        near(new Vec3(0, 800, 0), situations.get(2).push().orElseThrow().force());
        near(new Vec3(0, 0, -120 * 9.80665), situations.get(3).push().orElseThrow().force());
    }

    @Test
    void theBarIsSaidOnce() {
        VisitShop shop = new VisitShop(CarrierKind.STANDS);
        for (String name : List.of("bar at the tow bracket", "the tow bracket")) {
            shop.workPoints.add(new WorkPointFacts(name, name, Optional.of(new Spot(new Vec3(1, 2, 3), 0)), Optional.of(new Vec3(1, 0, 0)),
                    Optional.of(WorkPointFacts.Kind.BAR)));
        }
        assertEquals(List.of("at rest", "one person pulling on the bar at the tow bracket",
                "one person pulling on a bar at the tow bracket"), ask(shop).stream().map(Situation::words).toList());
    }

    @Test
    void nobodyWorksOnWhatHangsOrIsAway() {
        assertEquals(List.of("rest"), ask(shop(CarrierKind.LIFT)).stream().map(Situation::id).toList());
        assertEquals(List.of("rest"), ask(shop(CarrierKind.STRAPS)).stream().map(Situation::id).toList());
        assertEquals(List.of(), ask(shop(CarrierKind.AWAY)));
    }

    @Test
    void eachCastorComesIntoAHoleAndAllOverAJoint() {
        VisitShop shop = new VisitShop(CarrierKind.DOLLY).with(SteelDolly.square("dolly").facts());
        shop.dolly = Optional.of("dolly");
        List<Situation> situations = ask(shop);
        assertEquals(List.of("rest", "hole.dolly-c0", "hole.dolly-c1", "hole.dolly-c2", "hole.dolly-c3", "joint"),
                situations.stream().map(Situation::id).toList());
        assertEquals(Optional.of("dolly-c2"), situations.get(3).loweredCastor());
        assertEquals(0.003, situations.get(3).lowered());
        assertEquals(1, situations.get(3).weightFactor());
        assertEquals(1.4, situations.get(5).weightFactor());
    }

    @Test
    void onItsFeetItDoesNotRoll() {
        SteelDolly dolly = SteelDolly.square("dolly");
        dolly.feet.add(new FootFacts("up", "up", Optional.of("dolly-n0"), false, Optional.empty()));
        VisitShop up = new VisitShop(CarrierKind.DOLLY).with(dolly.facts());
        up.dolly = Optional.of("dolly");
        assertEquals(6, ask(up).size());
        dolly.feet.add(new FootFacts("down", "down", Optional.of("dolly-n0"), true, Optional.empty()));
        VisitShop down = new VisitShop(CarrierKind.DOLLY).with(dolly.facts());
        down.dolly = Optional.of("dolly");
        assertEquals(List.of("rest"), ask(down).stream().map(Situation::id).toList());
    }

    @Test
    void whereNobodySaidWhichWayAllFourWaysAreAsked() {
        VisitShop shop = new VisitShop(CarrierKind.STANDS);
        shop.workPoints.add(new WorkPointFacts("sill", "sill", Optional.of(new Spot(new Vec3(1, 2, 3), 0)), Optional.empty(),
                Optional.of(WorkPointFacts.Kind.LEAN)));
        shop.workPoints.add(new WorkPointFacts("boot", "boot", Optional.of(new Spot(new Vec3(1, 2, 3), 0)), Optional.empty(),
                Optional.of(WorkPointFacts.Kind.STAND_ON)));
        shop.heading = Math.PI / 2;
        List<Situation> situations = ask(shop);
        assertEquals(List.of("rest", "sill.front", "sill.back", "sill.left", "sill.right", "boot"),
                situations.stream().map(Situation::id).toList());
        assertEquals("one person leaning at sill, towards the front", situations.get(1).words());
        assertEquals(Optional.of("sill"), situations.get(1).about());
        // Turned a quarter from rearward to the right, the front of the car lies to the left of the carrier and its left at the rear.
        near(new Vec3(0, -400, 0), situations.get(1).push().orElseThrow().force());
        near(new Vec3(0, 400, 0), situations.get(2).push().orElseThrow().force());
        near(new Vec3(400, 0, 0), situations.get(3).push().orElseThrow().force());
        near(new Vec3(-400, 0, 0), situations.get(4).push().orElseThrow().force());
    }

    @Test
    void aDollyWithAPropOnTheFloorIsNotRolled() {
        for (boolean onFloor : new boolean[] {true, false}) {
            SteelDolly dolly = SteelDolly.square("dolly");
            dolly.props.add(new PropFacts("prop", "prop", Optional.of(Vec3.ZERO), true, Optional.empty(), Optional.empty(),
                    onFloor ? Optional.empty() : Optional.of("dolly-n0")));
            VisitShop shop = new VisitShop(CarrierKind.DOLLY).with(dolly.facts());
            shop.dolly = Optional.of("dolly");
            assertEquals(onFloor ? 1 : 6, ask(shop).size());
        }
    }
}
