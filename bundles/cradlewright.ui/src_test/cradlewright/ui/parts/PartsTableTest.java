package cradlewright.ui.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.TemporaryLoad;
import cradlewright.quantity.Source;
import cradlewright.ui.properties.Reply;
import java.util.Comparator;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;

/** The cells of the parts list and what may be done to its rows, each with undo and redo. */
class PartsTableTest {

    private final PartsShop shop = new PartsShop();
    private final PartsTable table = shop.table(PartsShop.METRIC);

    private void type(EObject thing, PartColumn column, String text) {
        Reply reply = table.type(thing, column, text);
        assertFalse(reply.isRefused(), reply.trouble());
        backAndForth(() -> shop.run(reply.change()));
    }

    /** Does something, takes it back, does it again, and compares the whole list each time. */
    private void backAndForth(Runnable edit) {
        String before = shop.picture();
        edit.run();
        String after = shop.picture();
        assertFalse(after.equals(before), "something changed");
        shop.stack.undo();
        assertEquals(before, shop.picture());
        shop.stack.redo();
        assertEquals(after, shop.picture());
    }

    @Test
    void cellsShowWhatIsKnownAndNothingElse() {
        assertEquals("19 kg", table.text(shop.leftDoor, PartColumn.MASS));
        assertEquals("0.4 kg", table.text(shop.leftDoor, PartColumn.GIVE));
        assertEquals("(3.44 kg)", table.text(shop.bare, PartColumn.GIVE), "twice 1 % of 172 kg stands in, in brackets");
        assertEquals("", table.typed(shop.bare, PartColumn.GIVE), "and is not typed as if somebody had stated it");
        assertEquals("weighed", table.text(shop.bare, PartColumn.SOURCE));
        assertEquals("-690", table.text(shop.leftDoor, PartColumn.Y));
        assertEquals("shell", table.text(shop.leftDoor, PartColumn.PIECE));
        assertEquals("people", table.text(shop.welder, PartColumn.PIECE));
        for (PartColumn column : List.of(PartColumn.MASS, PartColumn.GIVE, PartColumn.X, PartColumn.PLACE_GIVE)) {
            assertEquals("", table.text(shop.glass, column), "not known is empty, never 0");
        }
        assertEquals("-27.1654", shop.table(PartsShop.INCH).text(shop.leftDoor, PartColumn.Y), "690 / 25.4");
        assertEquals("y, in", shop.table(PartsShop.INCH).title(PartColumn.Y));
    }

    @Test
    void cellsAreTypedOver() {
        type(shop.glass, PartColumn.MASS, "12.5kg");
        assertEquals("12.5 kg", shop.glass.getMass().text());
        type(shop.glass, PartColumn.SOURCE, "guessed");
        type(shop.glass, PartColumn.GIVE, "3");
        assertEquals("12.5 kg u 1.5 guessed", shop.glass.getMass().text());
        type(shop.leftDoor, PartColumn.X, "18 in");
        assertEquals("457.2 -690 820 mm u 20 measured", shop.leftDoor.getPosition().text());
        type(shop.glass, PartColumn.Z, "1480 0 1150");
        assertEquals("1480 0 1150 mm", shop.glass.getPosition().text(), "all three in one field");
        type(shop.leftDoor, PartColumn.NAME, "door, left");
        type(shop.leftDoor, PartColumn.MASS, "");
        assertNull(shop.leftDoor.getMass());
        type(shop.welder, PartColumn.MASS, "95");
        assertEquals("95 kg guessed", shop.welder.getMass().text());
    }

    @Test
    void whatIsWrongIsRefusedInWords() {
        assertTrue(table.type(shop.glass, PartColumn.X, "100").trouble().contains("write three lengths"));
        assertTrue(table.type(shop.leftDoor, PartColumn.X, "1 kg").isRefused());
        assertTrue(table.type(shop.leftDoor, PartColumn.MASS, "-4").trouble().contains("left door"));
        assertFalse(table.editable(shop.glass, PartColumn.GIVE), "nothing is known that could be known better");
        assertFalse(table.editable(shop.bare, PartColumn.WHERE));
    }

    @Test
    void aTypedValueSaysHowItStillCountsAsKnown() {
        assertTrue(table.type(shop.leftDoor, PartColumn.MASS, "21").remark().contains("weighed ± 0.4 kg"));
        assertTrue(table.type(shop.leftDoor, PartColumn.Y, "-700").remark().contains("measured ± 40 mm"));
        assertEquals("", table.type(shop.leftDoor, PartColumn.MASS, "21 kg, guessed").remark());
    }

    @Test
    void ticksOfPartsAndLoadsAreOneChange() {
        backAndForth(() -> shop.run(Ticks.change(shop.file, shop.stripped, List.of(shop.leftDoor, shop.glass, shop.welder), true)));
        assertEquals(List.of(shop.bare, shop.leftDoor, shop.glass), shop.stripped.getOn());
        assertEquals(List.of(shop.welder), shop.stripped.getLoads());
        assertTrue(Ticks.change(shop.file, shop.stripped, List.of(shop.welder), true).isEmpty());
        backAndForth(() -> shop.run(Ticks.change(shop.file, shop.full, List.of(shop.bare, shop.welder, shop.glass), false)));
        assertEquals(List.of(shop.leftDoor), shop.full.getOn());
    }

    @Test
    void massesOfSeveralRowsAreKnownOtherwiseInOneChange() {
        BulkMass bulk = new BulkMass(table, List.of(shop.leftDoor, shop.glass, shop.welder));
        backAndForth(() -> shop.run(bulk.source(Source.MAKERS_SHEET).change()));
        assertEquals(Source.MAKERS_SHEET, shop.welder.getMass().source());
        assertNull(shop.glass.getMass(), "what is not known stays so");
        backAndForth(() -> shop.run(bulk.giveOrTake("2 kg").change()));
        assertEquals("19 kg u 1 maker's sheet", shop.leftDoor.getMass().text());
        assertTrue(bulk.giveOrTake("-2").isRefused());
        assertFalse(new BulkMass(table, List.of(shop.glass)).possible());
    }

    @Test
    void rowsAreAddedDuplicatedMirroredAndMoved() {
        backAndForth(() -> shop.run(shop.edits().part(shop.chassis).change()));
        Part fresh = shop.chassis.getParts().get(1);
        assertNull(fresh.getMass());
        backAndForth(() -> shop.run(shop.edits().load().change()));
        backAndForth(() -> shop.run(shop.edits().duplicate(List.of(shop.leftDoor, shop.welder)).change()));
        Part copy = shop.shell.getParts().get(2);
        assertEquals("left door, one more", copy.getName());
        assertTrue(Ticks.isOn(shop.full, copy));
        TemporaryLoad other = shop.car.getTemporaryLoads().get(1);
        assertEquals("120 kg guessed", other.getMass().text());
        backAndForth(() -> shop.run(shop.edits().move(List.of(copy, shop.rails, shop.welder), shop.chassis)));
        assertEquals(List.of(shop.rails, fresh, copy), shop.chassis.getParts());
        assertTrue(Ticks.isOn(shop.full, copy), "it is on as before");
    }

    @Test
    void aTwinLiesAcrossTheCarAndNobodyWeighedIt() {
        backAndForth(() -> shop.run(shop.edits().twins(List.of(shop.leftDoor, shop.bare, shop.glass)).orElseThrow().change()));
        assertEquals(4, shop.shell.getParts().size(), "what lies in the middle or nowhere has no twin");
        Part twin = shop.shell.getParts().get(2);
        assertEquals("right door", twin.getName());
        assertEquals("1900 690 820 mm u 20 drawing", twin.getPosition().text());
        assertEquals("19 kg like another car", twin.getMass().text());
        assertTrue(Ticks.isOn(shop.full, twin) && !Ticks.isOn(shop.stripped, twin));
        assertTrue(shop.edits().twins(List.of(shop.leftDoor, twin)).isEmpty(), "they are twins already");
        assertEquals("leftover bracket, other side", PartEdits.otherSide("leftover bracket"));
        assertEquals("bracket right of left rail",
                PartEdits.otherSide("bracket left of right rail"));
    }

    @Test
    void rowsAreSortedByNumbersAndWhatIsNotKnownComesLast() {
        Comparator<EObject> byMass = table.order(PartColumn.MASS);
        assertEquals(List.of(shop.leftDoor, shop.welder, shop.rails, shop.bare, shop.glass),
                table.things().stream().sorted(byMass).toList());
        assertEquals(shop.bare, table.things().stream().sorted(table.order(PartColumn.NAME)).findFirst().orElseThrow());
    }

    @Test
    void rowsAreFoundByNameSourcePieceAndStage() {
        assertTrue(table.matches(shop.leftDoor, "door LEFT"));
        assertTrue(table.matches(shop.rails, "guessed"));
        assertTrue(table.matches(shop.bare, "stripped weighed"));
        assertFalse(table.matches(shop.leftDoor, "stripped"));
        assertFalse(table.matches(shop.glass, "weighed"));
    }

    private static long nanos(Runnable body) {
        long start = System.nanoTime();
        body.run();
        return System.nanoTime() - start;
    }

    /** Five rows written sixty times over take about as long as three hundred once, on any machine, unless rows look at all the others. */
    @Test
    void threeHundredRowsTakeNoLongerEachThanAFew() {
        Runnable sixtyTimes = () -> {
            for (int i = 0; i < 60; i++) {
                shop.picture();
            }
        };
        nanos(sixtyTimes);
        long few = nanos(sixtyTimes);
        for (int i = 0; i < 300; i++) {
            shop.added(shop.shell, "part " + i, i + " kg weighed", i + " 0 0 mm");
        }
        long many = Math.min(nanos(shop::picture), nanos(shop::picture));
        assertTrue(many < 8 * few, many + " against " + few + " ns");
    }
}
