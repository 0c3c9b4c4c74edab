package cradlewright.ui.properties;

import static cradlewright.ui.properties.PropertyShop.COMMA;
import static cradlewright.ui.properties.PropertyShop.INCH;
import static cradlewright.ui.properties.PropertyShop.METRIC;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.VehiclePackage;
import cradlewright.quantity.Position;
import cradlewright.ui.properties.Coordinate.Axis;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** One length of a position in a field of its own; 1 in is 25.4 mm exactly (international yard and pound agreement of 1959). */
class CoordinateTest {

    private final PropertyShop shop = new PropertyShop();

    private Coordinate field(Habits habits, Part part, Axis axis) {
        return new Coordinate(shop.chosen(habits, part), VehiclePackage.Literals.PART__POSITION, axis);
    }

    @Test
    void oneLengthIsShownAndTypedAndTheOthersStayExactlyAsTheyWere() {
        assertEquals("-254", field(METRIC, shop.bonnet, Axis.Y).text());
        assertEquals("-10", field(INCH, shop.bonnet, Axis.Y).text());
        Reply reply = field(INCH, shop.bonnet, Axis.X).type("1 1/2");
        assertTrue(reply.remark().contains("measured ± 0.394 in"), reply.remark());
        shop.run(reply);
        assertEquals("38.1 -254 1000.123456 mm u 5 measured", shop.bonnet.getPosition().text());
        shop.run(field(COMMA, shop.bonnet, Axis.Z).type("12,5 in"));
        assertEquals(317.5, shop.bonnet.getPosition().z(), 1e-12);
        shop.stack.undo();
        assertEquals("38.1 -254 1000.123456 mm u 5 measured", shop.bonnet.getPosition().text());
    }

    @Test
    void whatReadsTheSameChangesNothing() {
        assertEquals(Optional.empty(), field(INCH, shop.bonnet, Axis.Z).type(" 39.3749 ").change());
        assertEquals(Optional.empty(), field(METRIC, shop.bonnet, Axis.X).type("457.2 mm").change());
    }

    @Test
    void aPositionIsKnownWhollyOrNotAtAll() {
        Reply half = field(METRIC, shop.glass, Axis.X).type("100");
        assertTrue(half.isRefused() && half.trouble().contains("three lengths"), half.trouble());
        shop.run(field(METRIC, shop.glass, Axis.Y).type("100; -20; 30"));
        assertEquals(Position.of(100, -20, 30), shop.glass.getPosition());
        shop.run(field(METRIC, shop.glass, Axis.Y).type(""));
        assertNull(shop.glass.getPosition());
    }

    @Test
    void whatCannotBeReadIsRefused() {
        for (String wrong : new String[] {"abc", "12 kg", "1,5", "1e400", "1e9"}) {
            assertTrue(field(METRIC, shop.bonnet, Axis.X).type(wrong).isRefused(), wrong);
        }
    }
}
