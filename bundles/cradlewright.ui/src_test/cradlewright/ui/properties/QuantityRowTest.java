package cradlewright.ui.properties;

import static cradlewright.ui.properties.PropertyShop.COMMA;
import static cradlewright.ui.properties.PropertyShop.INCH;
import static cradlewright.ui.properties.PropertyShop.METRIC;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.vehicle.Part;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Values with give or take and source as they are shown, typed and stored. Conversions: 1 in is 25.4 mm and 1 lb is 0.45359237 kg exactly
 * (international yard and pound agreement of 1959); a give or take that holds 19 times in 20 is two standard uncertainties (k = 2,
 * JCGM 100, 6.3.3, from memory).
 */
class QuantityRowTest {

    private final PropertyShop shop = new PropertyShop();

    private QuantityRow mass(Habits habits, Part... parts) {
        return shop.row(QuantityRow.class, "mass", habits, parts);
    }

    private QuantityRow place(Habits habits) {
        return shop.row(QuantityRow.class, "balance point", habits, shop.bonnet);
    }

    @Test
    void valueGiveOrTakeAndSourceStandBesideEachOther() {
        QuantityRow row = mass(METRIC, shop.bonnet);
        assertEquals("18 kg", row.value());
        assertEquals("0.4 kg", row.giveOrTake());
        assertEquals(Optional.of(Source.WEIGHED), row.source());
        assertEquals("", row.usual());
        assertEquals("20 kg, usual when guessed", mass(METRIC, shop.door).aboutGiveOrTake());
        assertEquals("", mass(METRIC, shop.glass).value());
        assertFalse(mass(METRIC, shop.glass).anyKnown());
    }

    @Test
    void aReaderInInchesSeesInchesAndPounds() {
        assertEquals("39.6832 lb", mass(INCH, shop.bonnet).value());
        assertEquals("18 -10 39.3749 in", place(INCH).value());
        assertEquals("0.394 in", place(INCH).giveOrTake());
    }

    @Test
    void valuesAreTypedFreelyAndKeptInTheUnitOfFiles() {
        shop.run(mass(METRIC, shop.glass).typeValue("12.5kg"));
        assertEquals("12.5 kg", shop.glass.getMass().text());
        shop.run(mass(METRIC, shop.glass).typeValue("2 lb"));
        assertEquals("0.90718474 kg", shop.glass.getMass().text());
        shop.run(mass(INCH, shop.glass).typeValue("1/2"));
        assertEquals("0.226796185 kg", shop.glass.getMass().text());
        shop.run(mass(COMMA, shop.glass).typeValue("12,5"));
        assertEquals("12.5 kg", shop.glass.getMass().text());
        QuantityRow thickness = shop.row(QuantityRow.class, "sheet thickness", METRIC, shop.mount);
        shop.run(thickness.typeValue("3/4 in"));
        assertEquals("19.05 mm", shop.mount.getSheetThickness().text());
    }

    @Test
    void howWellItIsKnownMayBeTypedInTheSameField() {
        Reply reply = mass(METRIC, shop.glass).typeValue("285 kg +- 8, weighed");
        assertEquals("285 kg +- 8, weighed = 285 kg ± 8 kg, weighed", reply.remark());
        shop.run(reply);
        assertEquals("285 kg u 4 weighed", shop.glass.getMass().text());
        shop.run(mass(METRIC, shop.glass).typeValue("300 ± 6 lb maker's sheet"));
        assertEquals(Source.MAKERS_SHEET, shop.glass.getMass().source());
        assertEquals(1.36077711, shop.glass.getMass().uncertainty().orElseThrow(), 1e-12, "half of 6 lb");
    }

    @Test
    void anotherValueStaysKnownAsWellAsItWas() {
        shop.run(mass(METRIC, shop.bonnet).typeValue("19"));
        assertEquals("19 kg u 0.2 weighed", shop.bonnet.getMass().text());
    }

    @Test
    void giveOrTakeAndSourceAreEditedAlone() {
        shop.run(mass(METRIC, shop.bonnet).typeGiveOrTake("+- 1 kg"));
        assertEquals("18 kg u 0.5 weighed", shop.bonnet.getMass().text());
        shop.run(mass(METRIC, shop.bonnet).typeGiveOrTake(""));
        assertEquals("18 kg weighed", shop.bonnet.getMass().text());
        assertEquals("0.36 kg, usual when weighed", mass(METRIC, shop.bonnet).aboutGiveOrTake(), "twice 1 %");
        shop.run(mass(METRIC, shop.bonnet).choose(Source.GUESSED));
        assertEquals("18 kg guessed", shop.bonnet.getMass().text());
    }

    @Test
    void whatCannotBeReadIsRefusedInWordsAndNothingIsStored() {
        for (String wrong : new String[] {"abc", "12 m", "1,5 kg", "12 kg +- x", "12 kg +- -3", "1e400 kg"}) {
            Reply reply = mass(METRIC, shop.bonnet).typeValue(wrong);
            assertTrue(reply.isRefused() && reply.change().isEmpty(), wrong);
            assertTrue(reply.trouble().contains("; "), reply.trouble());
        }
        assertTrue(mass(METRIC, shop.bonnet).typeValue("12 m").trouble().contains("kg"), "says which units there are");
        assertEquals("18 kg u 0.2 weighed", shop.bonnet.getMass().text());
    }

    @Test
    void theRulesOfTheModelAreAsked() {
        Reply negative = mass(METRIC, shop.bonnet).typeValue("-3 kg");
        assertTrue(negative.trouble().startsWith("part bonnet: mass is -3 kg u 0.2 weighed, "), negative.trouble());
        assertTrue(mass(METRIC, shop.bonnet).typeValue("200 t").trouble().contains("beyond anything in a shop"));
        assertTrue(place(METRIC).typeValue("1e9 0 0").isRefused());
    }

    @Test
    void clearingMakesItUnknownAgain() {
        shop.run(mass(METRIC, shop.bonnet).typeValue(""));
        assertNull(shop.bonnet.getMass());
        shop.stack.undo();
        assertEquals("18 kg u 0.2 weighed", shop.bonnet.getMass().text());
        assertTrue(mass(METRIC, shop.glass).typeGiveOrTake("3").isRefused(), "nothing is known that could be known better");
    }

    @Test
    void whatReadsTheSameIsNotChangedByRounding() {
        Position before = shop.bonnet.getPosition();
        assertEquals(Optional.empty(), place(INCH).typeValue(" 18 -10 39.3749 ").change());
        shop.run(place(INCH).typeValue("19 -10 39.3749"));
        assertEquals(new Position(482.6, before.y(), before.z(), before.uncertainty(), before.source()), shop.bonnet.getPosition());
        Measured odd = shop.bonnet.getMass();
        assertEquals(Optional.empty(), mass(INCH, shop.bonnet).typeValue("39.6832lb").change());
        assertEquals(odd, shop.bonnet.getMass());
    }

    @Test
    void positionsAreTypedWithOneUnitForAll() {
        shop.run(place(METRIC).typeValue("10, -20, 30.5 in ± 1/2 in, measured"));
        assertEquals("254 -508 774.7 mm u 6.35 measured", shop.bonnet.getPosition().text());
        shop.run(place(COMMA).typeValue("1250,5 -450 300"));
        assertEquals(1250.5, shop.bonnet.getPosition().x());
        assertTrue(place(METRIC).typeValue("1 2").trouble().contains("three lengths"));
        assertTrue(place(METRIC).typeValue("1 2 3 kg").isRefused());
    }

    @Test
    void severalAreOneChange() {
        QuantityRow row = mass(METRIC, shop.bonnet, shop.door, shop.glass);
        assertEquals("", row.value());
        assertTrue(row.differ(Known::raw));
        Reply source = row.choose(Source.MAKERS_SHEET);
        assertEquals("change mass of part bonnet and 1 more", source.change().orElseThrow().label(), "the one that is not known stays so");
        shop.run(source);
        assertEquals("18 kg u 0.2 maker's sheet", shop.bonnet.getMass().text());
        assertEquals("25 kg maker's sheet", shop.door.getMass().text());
        assertNull(shop.glass.getMass());
        shop.run(row.typeValue("20"));
        assertEquals("20 kg u 0.2 maker's sheet", shop.bonnet.getMass().text());
        assertEquals("20 kg", shop.glass.getMass().text());
        shop.stack.undo();
        shop.stack.undo();
        assertEquals("18 kg u 0.2 weighed", shop.bonnet.getMass().text());
        assertEquals("25 kg guessed", shop.door.getMass().text());
        assertNull(shop.glass.getMass());
        shop.stack.redo();
        assertEquals("25 kg maker's sheet", shop.door.getMass().text());
    }

    @Test
    void severalAreRefusedTogether() {
        assertTrue(mass(METRIC, shop.bonnet, shop.door).typeValue("-1").isRefused());
    }
}
