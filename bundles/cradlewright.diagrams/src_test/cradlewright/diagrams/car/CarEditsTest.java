package cradlewright.diagrams.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.diagrams.car.CarAdditions.Sort;
import cradlewright.diagrams.shared.TwinName;
import cradlewright.diagrams.shared.TypedPlace;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.base.Condition;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Fixture;
import cradlewright.model.fixture.Prop;
import cradlewright.model.vehicle.CutZone;
import cradlewright.model.vehicle.LiftPoint;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.Shim;
import cradlewright.model.vehicle.WorkPoint;
import cradlewright.quantity.Position;
import cradlewright.quantity.QuantityFormatException;
import cradlewright.quantity.Source;
import cradlewright.quantity.Unit;
import cradlewright.report.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Every edit of the diagram there and back; places worked out by hand from the file of the car. */
class CarEditsTest {

    private final RedCoupe red = new RedCoupe();

    /** 4R lies at 3240 450 424.2; 30 mm to the front and, seen from above, 20 mm to the right. */
    @Test
    void aMountIsMoved() {
        Mount mount = red.mount("4R");
        red.thereAndBack(red.edits().move(mount, new Vec3(-0.03, 0.02, 0), 0).orElseThrow(), () -> {
            assertEquals("3210 470 424.2 mm u 0.15 drawing", mount.getPosition().text());
        });
        assertEquals(Source.MEASURED, mount.getPosition().source());
    }

    /** 424.2 is no multiple of 5, but nothing moves up or down here, so it stays; 3240 - 31 = 3209 goes to 3210. */
    @Test
    void aGridHoldsOnlyAlongTheMove() {
        Position to = red.edits().moved(red.mount("4R"), new Vec3(-0.031, 0, 0), 5).orElseThrow();
        assertEquals("3210 450 424.2 mm u 0.15 drawing", to.text());
    }

    /** Turned by a quarter on its carrier, what goes rearward there goes to the left on the car. */
    @Test
    void aTurnedCarMovesInItsOwnAxes() {
        Vec3 onCar = new Axes(new Vec3(1, 0, 0), Math.PI / 2).way(new Vec3(0.1, 0, 0));
        assertEquals(0, onCar.x(), 1e-12);
        assertEquals(-0.1, onCar.y(), 1e-12);
        Vec3 place = new Axes(new Vec3(1, 2, 3), Math.PI / 2).onCar(new Vec3(1, 3, 3));
        assertEquals(1, place.x(), 1e-12, "1 to the right of the shifted zero lies 1 rearward on the car");
        assertEquals(0, place.y(), 1e-12);
    }

    @Test
    void aSupportThatIsMovedRestsOnNoMountAnyMore() {
        Contact contact = red.contact("4R");
        red.thereAndBack(red.edits().move(contact, new Vec3(-0.3, 0, 0), 0).orElseThrow(), () -> {
            assertNull(contact.getMount());
            assertEquals("2940 450 424.2 mm u 0.15 drawing", contact.getPoint().text());
        });
        assertSame(red.mount("4R"), contact.getMount());
    }

    /** 3R lies at 2320 480 426, which is 920 mm ahead of 4R, 30 mm farther right and 1.8 mm higher. */
    @Test
    void aSupportThatComesNearAnotherMountRestsOnThat() {
        Contact contact = red.contact("4R");
        red.thereAndBack(red.edits().move(contact, new Vec3(-0.91, 0.025, 0), 0).orElseThrow(), () -> {
            assertSame(red.mount("3R"), contact.getMount());
            assertNull(contact.getPoint());
        });
        Optional<?> taken = red.edits().caught(contact, red.mount("2R").getPosition());
        assertEquals(Optional.empty(), taken, "2R has a support already");
    }

    @Test
    void aPropIsMovedInTheFileOfItsDolly() {
        Prop prop = red.setup().getDolly().getProps().get(0);
        Position before = prop.getPosition();
        red.thereAndBack(red.edits().move(prop, new Vec3(0.05, 0, 0), 0).orElseThrow(),
                () -> assertEquals(before.x() + 50, prop.getPosition().x(), 1e-9));
        assertFalse(red.edits().move(red.car(), Vec3.ZERO, 0).isPresent());
    }

    @Test
    void aPlaceIsTyped() {
        LiftPoint point = red.liftPoint("front left");
        Position typed = TypedPlace.place("51; -480; 440 mm", point.getPosition(), UnitSystem.METRIC, Locale.ENGLISH);
        red.thereAndBack(red.edits().place(point, typed), () -> assertEquals("51 -480 440 mm u 3 measured", point.getPosition().text()));
        assertEquals(25.4 * 2, TypedPlace.place("2 in; 0; 0 mm", point.getPosition(), UnitSystem.METRIC, Locale.ENGLISH).x(), 1e-9);
        assertEquals(25.4 * 2, TypedPlace.place("2; 0; 1 in", point.getPosition(), UnitSystem.METRIC, Locale.ENGLISH).x(), 1e-9);
        for (String wrong : new String[] {"", "1; 2", "1; 2; x", "1; 2; 3 kg", "1; 2; 3; 4"}) {
            assertThrows(QuantityFormatException.class,
                    () -> TypedPlace.place(wrong, point.getPosition(), UnitSystem.METRIC, Locale.ENGLISH), wrong);
        }
        assertEquals(25.4 * 2, TypedPlace.place("2; 0; 1", point.getPosition(), UnitSystem.INCH, Locale.ENGLISH).x(), 1e-9);
        assertEquals("24.409; -17.323; 16.713 in", TypedPlace.text(Position.of(620, -440, 424.5), UnitSystem.INCH), "over 25.4");
        assertEquals("1; 0; 0 in", TypedPlace.text(Position.of(25.4, 0, -0.001), UnitSystem.INCH));
        assertEquals("620; -440; 424.5 mm", TypedPlace.text(Position.of(620, -440, 424.5), UnitSystem.METRIC));
    }

    @Test
    void thingsArePutBesideTheFirst() {
        LiftPoint left = red.liftPoint("front left");
        LiftPoint right = red.liftPoint("front right");
        LiftPoint rear = red.liftPoint("rear right");
        red.thereAndBack(red.edits().align(List.of(left, right, rear)).orElseThrow(), () -> {
            assertEquals(1300, rear.getPosition().x(), 0);
            assertEquals(480, rear.getPosition().y(), 0);
            assertEquals(1300, left.getPosition().x(), 0);
        });
        assertFalse(red.edits().align(List.of(left)).isPresent());
    }

    /** Stock has 5, 2, 1 and 0.5 mm: 3.2 mm is 2 and 1 and a loose one of 0.2. */
    @Test
    void shimsAreMadeUpFromStock() {
        Contact contact = red.contact("4R");
        red.thereAndBack(ShimText.lay(contact, 3.2, red.folder()), () -> {
            List<Shim> shims = contact.getMount().getOnDolly().getShims();
            assertEquals(List.of(2.0, 1.0),
                    shims.stream().limit(2).map(shim -> shim.getShim().getThickness().in(Unit.MILLIMETRE)).toList());
            assertEquals("0.2 mm drawing", shims.get(2).getLoose().text());
            assertEquals("3.20 mm", ShimText.shown(contact, UnitSystem.METRIC));
        });
        assertEquals("2.00 mm", ShimText.shown(contact, UnitSystem.METRIC), "one of 2 mm, as the file says");
        assertEquals("0.0787 in", ShimText.shown(contact, UnitSystem.INCH), "2 over 25.4");
        assertEquals(25.4, typed("1", UnitSystem.INCH), 1e-9);
        assertEquals(25.4, typed("1 in", UnitSystem.METRIC), 1e-9);
        for (String wrong : new String[] {"-1", "2 kg", "501"}) {
            assertThrows(QuantityFormatException.class, () -> typed(wrong, UnitSystem.METRIC), wrong);
        }
    }

    private static double typed(String text, UnitSystem units) {
        return TypedPlace.length(text, 500, "{0} is no height", "write up to 500 mm", units, Locale.ENGLISH);
    }

    /** The dolly's zero lies 560 mm behind that of the car and 60 mm lower: what is at 440, 0, 500 there is at 1000, 0, 440 on the car. */
    @Test
    void thingsAreAdded() {
        Vec3 at = new Vec3(0.44, 0, 0.5);
        red.thereAndBack(red.additions().add(Sort.LIFT_POINT, at, Optional.empty()), () -> {
            LiftPoint point = red.liftPoint("new lift point");
            assertEquals("1000 0 440 mm drawing", point.getPosition().text());
            assertEquals(Condition.NOT_LOOKED_AT, point.getCondition());
        });
        red.thereAndBack(red.additions().add(Sort.WORK_POINT, at, Optional.empty()), () -> {
            WorkPoint point = red.car().getWorkPoints().get(red.car().getWorkPoints().size() - 1);
            assertEquals("1000 0 440 mm drawing", point.getPosition().text());
        });
        red.thereAndBack(red.additions().add(Sort.CUT_ZONE, at, Optional.of(new Vec3(0.34, 0.1, 0.45))), () -> {
            CutZone zone = red.car().getCutZones().get(0);
            assertEquals("900 0 390 mm", zone.getLow().text());
            assertEquals("1000 100 440 mm", zone.getHigh().text());
        });
        red.thereAndBack(red.additions().add(Sort.PROP, at, Optional.empty()), () -> {
            Prop prop = red.setup().getDolly().getProps().get(1);
            assertEquals("440 0 500 mm drawing", prop.getPosition().text(), "a prop has its place on the dolly");
        });
        red.thereAndBack(red.additions().add(Sort.SUPPORT, at, Optional.empty()), () -> {
            Contact contact = red.contact("new support");
            assertEquals("1000 0 440 mm drawing", contact.getPoint().text());
        });
    }

    /**
     * Mount 3R lies at 2320 480 426, so at 1760 480 486 on the dolly. The right rail runs at 480, its axis at 280: the fixture stands on
     * it beside nothing, 486 - 280 = 206 high. The member from node 1400 to 2680 begins at 1400: 360 mm along.
     */
    @Test
    void aSupportNearAMountGetsAFixtureOnTheRailBelow() {
        red.thereAndBack(red.additions().add(Sort.SUPPORT, new Vec3(1.75, 0.47, 0.48), Optional.empty()), () -> {
            Contact contact = red.contact("3R");
            assertSame(red.mount("3R"), contact.getMount());
            Fixture fixture = contact.getFixture();
            assertEquals("206 mm drawing", fixture.getHeight().text());
            assertEquals("360 mm drawing", fixture.getDistance().text());
            assertEquals("right rail 3", fixture.getMember().getName());
            assertEquals("0 0 0 mm", fixture.getOffset().text());
            assertSame(red.setup().getDolly(), fixture.eContainer());
        });
    }

    @Test
    void aSupportOverAFixtureThatIsFreeStandsOnThat() {
        Contact before = red.contact("2R");
        Fixture fixture = before.getFixture();
        red.stack().execute(new ShopChange("take 2R out", red.file(), () -> red.setup().getContacts().remove(before)));
        red.thereAndBack(red.additions().add(Sort.SUPPORT, new Vec3(0.87, 0.48, 0.48), Optional.empty()), () -> {
            assertSame(fixture, red.contact("2R").getFixture());
            assertSame(red.mount("2R"), red.contact("2R").getMount());
        });
    }

    @Test
    void aTwinStandsOnTheOtherSideAndNobodyLookedAtItYet() {
        WorkPoint roof = red.car().getWorkPoints().stream().filter(w -> "left roof edge".equals(w.getName())).findFirst().orElseThrow();
        red.thereAndBack(red.twins().mirror(List.of(roof)).orElseThrow(), () -> {
            WorkPoint twin = red.car().getWorkPoints().get(red.car().getWorkPoints().size() - 1);
            assertEquals("right roof edge", twin.getName());
            assertEquals(-roof.getPosition().y(), twin.getPosition().y(), 0);
        });
        assertFalse(red.twins().mirror(List.of(red.mount("1L"), red.contact("2L"))).isPresent(), "1R and 2R are there");
        assertEquals("12R", TwinName.of("12L"));
        assertEquals("front left", TwinName.of("front right"));
    }

    @Test
    void aTwinOfASupportRestsOnTheMountThere() {
        red.stack().execute(new ShopChange("take 2R out", red.file(),
                () -> red.setup().getContacts().remove(red.contact("2R"))));
        red.thereAndBack(red.twins().mirror(List.of(red.contact("2L"))).orElseThrow(), () -> {
            Contact twin = red.contact("2R");
            assertSame(red.mount("2R"), twin.getMount());
            assertNull(twin.getFixture(), "which fixture carries it is for people to say");
        });
        assertTrue(red.stack().canUndo());
    }
}
