package cradlewright.ui.properties;

import static cradlewright.ui.properties.PropertyShop.METRIC;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.base.Condition;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Details other than quantities: words, counts, days, choices, references. Each is executed, undone and redone. */
class RowsTest {

    private final PropertyShop shop = new PropertyShop();

    private static int number(ChoiceRow row, String label) {
        return row.choices().stream().map(ChoiceRow.Choice::label).toList().indexOf(label);
    }

    @Test
    void detailsStandUnderTheirHeadings() {
        assertEquals(List.of("WHAT name", "WHAT note", "WHERE balance point", "HEAVY mass", "SIZE heat limit"),
                Rows.of(shop.chosen(METRIC, shop.bonnet)).stream().map(row -> row.section() + " " + row.label()).toList());
        assertEquals(List.of("note", "balance point", "mass", "heat limit"),
                Rows.of(shop.chosen(METRIC, shop.bonnet, shop.door)).stream().map(Row::label).toList(), "a name is for one thing");
        assertEquals(List.of("note"), Rows.of(shop.chosen(METRIC, shop.bonnet, shop.stage)).stream().map(Row::label).toList());
    }

    @Test
    void wordsAreStoredTrimmedAndClearedToNothing() {
        TypedRow note = shop.row(TypedRow.class, "note", METRIC, shop.bonnet);
        assertEquals("", note.text());
        shop.run(note.type("  dent\tat the left "));
        assertEquals("dent at the left", shop.bonnet.getNote());
        shop.run(note.type(" "));
        assertNull(shop.bonnet.getNote());
        shop.stack.undo();
        assertEquals("dent at the left", note.text());
        assertTrue(note.type("x".repeat(3000)).isRefused());
    }

    @Test
    void aMissingNameIsAllowedWithAWord() {
        Reply reply = shop.row(TypedRow.class, "name", METRIC, shop.bonnet).type("");
        assertFalse(reply.isRefused());
        assertTrue(reply.remark().contains("the name is missing"), reply.remark());
    }

    @Test
    void countsDaysAndDirectionsSayHowToWriteThem() {
        TypedRow bolts = shop.row(TypedRow.class, "number of bolts", METRIC, shop.mount);
        shop.run(bolts.type("2"));
        assertEquals(2, shop.mount.getBoltCount());
        assertTrue(bolts.type("two").trouble().contains("write digits only"));
        assertTrue(bolts.type("-2").trouble().contains("0 or more is wanted"), bolts.type("-2").trouble());
        TypedRow looked = shop.row(TypedRow.class, "looked at", METRIC, shop.liftPoint);
        shop.run(looked.type("2026-03-31"));
        assertEquals("2026-03-31", looked.text());
        assertTrue(looked.type("31.3.2026").trouble().contains("year-month-day"), looked.type("31.3.2026").trouble());
    }

    @Test
    void wordsOfAListAreChosenAndTakenBack() {
        ChoiceRow condition = shop.row(ChoiceRow.class, "condition", METRIC, shop.mount);
        assertEquals(List.of("", "sound", "thin", "holed", "repaired", "not looked at"),
                condition.choices().stream().map(ChoiceRow.Choice::label).toList());
        assertEquals(Optional.of(number(condition, "thin")), condition.current());
        shop.run(condition.choose(number(condition, "holed")));
        assertEquals(Condition.HOLED, shop.mount.getCondition());
        shop.stack.undo();
        assertEquals(Condition.THIN, shop.mount.getCondition());
        shop.stack.redo();
        assertEquals(Condition.HOLED, shop.mount.getCondition());
        shop.run(condition.choose(0));
        assertNull(shop.mount.getCondition());
    }

    @Test
    void referencesAreChosenAmongWhatFits() {
        ChoiceRow node = shop.row(ChoiceRow.class, "at corner", METRIC, shop.castor);
        assertEquals(List.of("", "front left"), node.choices().stream().map(ChoiceRow.Choice::label).toList());
        shop.run(node.choose(1));
        assertEquals(shop.corner, shop.castor.getNode());
        shop.stack.undo();
        assertNull(shop.castor.getNode());
        ChoiceRow swivel = shop.row(ChoiceRow.class, "swivels", METRIC, shop.castor);
        assertEquals(List.of("yes", "no"), swivel.choices().stream().map(ChoiceRow.Choice::label).toList());
        shop.run(swivel.choose(0));
        assertTrue(shop.castor.isSwivel());
    }

    @Test
    void partsAreTickedForAStage() {
        TickRow on = shop.row(TickRow.class, "parts on", METRIC, shop.stage);
        assertEquals(List.of(shop.bonnet, shop.door, shop.glass), on.candidates());
        shop.run(on.tick(List.of(shop.bonnet, shop.door)));
        assertEquals(List.of(shop.door, shop.bonnet), shop.stage.getOn(), "what was ticked keeps its order");
        assertEquals("door of shell, bonnet of shell", on.text());
        shop.stack.undo();
        assertEquals(List.of(shop.door), shop.stage.getOn());
        assertEquals(Optional.empty(), on.tick(List.of(shop.door)).change());
    }

    @Test
    void valuesThatContradictEachOtherAreRefused() {
        QuantityRow reach = shop.row(QuantityRow.class, "reach, out", METRIC, shop.arm);
        String trouble = reach.typeValue("500 mm").trouble();
        assertTrue(trouble.contains("a range whose end lies before its beginning"), trouble);
        shop.run(reach.typeValue("1100 mm"));
        assertEquals("1100 mm", shop.arm.getReachMax().text());
    }

    @Test
    void readingsAreNeverEdited() {
        assertTrue(shop.chosen(METRIC, shop.bonnet).editable());
        assertFalse(shop.chosen(METRIC, shop.weighing).editable());
    }
}
