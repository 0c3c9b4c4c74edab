package cradlewright.ui.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.vehicle.Part;
import cradlewright.ui.parts.PastePlan.Kind;
import cradlewright.ui.properties.Habits;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * What becomes of pasted rows. 1 in is 25.4 mm and 1 lb is 0.45359237 kg exactly (international yard and pound agreement of 1959); a give
 * or take is two standard uncertainties (JCGM 100, 6.3.3, from memory).
 */
class PastePlannerTest {

    private final PartsShop shop = new PartsShop();

    private PastePlan plan(String text, Habits reader) {
        PastedCells cells = PastedCells.of(text);
        DecimalSign sign = DecimalSign.of(cells.rows(), reader.locale());
        boolean header = PasteColumn.isHeader(cells.rows().get(0));
        List<PasteColumn> columns = header ? PasteColumn.ofHeader(cells.rows().get(0), shop.car.getStages())
                : PasteColumn.proposed(cells.columns());
        return new PastePlanner(shop.file, shop.car, shop.shell, PastePlanner.Written.of(reader, sign), shop.ids)
                .plan(cells.rows().subList(header ? 1 : 0, cells.rows().size()), columns);
    }

    private PastePlan plan(String text) {
        return plan(text, PartsShop.METRIC);
    }

    private static List<Kind> kinds(PastePlan plan) {
        return plan.rows().stream().map(PastePlan.Row::kind).toList();
    }

    private Part part(String name) {
        return shop.car.getPieces().stream().flatMap(piece -> piece.getParts().stream()).filter(part -> part.getName().equals(name))
                .findFirst().orElseThrow();
    }

    @Test
    void newRowsAreEnteredInOneChangeThatCanBeUndoneAndRedone() {
        String before = shop.picture();
        PastePlan plan = plan("""
                name\tmass\tgive or take\tsource\tx, mm\ty, mm\tz, mm\tfull
                bonnet\t15.5 kg\t0.4\tweighed\t720\t0\t900\tx
                heater\t\t\t\t\t\t\t
                spare wheel\t30 lb\t\tguessed\t18 in\t-450\t300\toff
                """);
        assertEquals(List.of(Kind.NEW, Kind.NEW, Kind.NEW), kinds(plan));
        assertEquals(before, shop.picture(), "a plan changes nothing");
        shop.run(plan.change());
        assertEquals("15.5 kg u 0.2 weighed", part("bonnet").getMass().text());
        assertEquals("720 0 900 mm", part("bonnet").getPosition().text());
        assertTrue(Ticks.isOn(shop.full, part("bonnet")) && !Ticks.isOn(shop.full, part("spare wheel")));
        assertNull(part("heater").getMass(), "an empty cell is not known, never zero");
        assertNull(part("heater").getPosition());
        assertEquals(30 * 0.45359237, part("spare wheel").getMass().value(), 1e-12);
        assertEquals(18 * 25.4, part("spare wheel").getPosition().x(), 1e-12);
        String after = shop.picture();
        shop.stack.undo();
        assertEquals(before, shop.picture());
        shop.stack.redo();
        assertEquals(after, shop.picture());
    }

    @Test
    void aNameThatIsThereIsChangedAndWhatIsNotSaidStays() {
        PastePlan plan = plan("name\tmass\tstripped\nLEFT DOOR\t20\tyes\nglass\t\t\n");
        assertEquals(List.of(Kind.CHANGED, Kind.SAME), kinds(plan));
        shop.run(plan.change());
        assertEquals("20 kg u 0.2 weighed", shop.leftDoor.getMass().text(), "as typed over: known as before");
        assertTrue(Ticks.isOn(shop.stripped, shop.leftDoor));
        assertTrue(Ticks.isOn(shop.full, shop.leftDoor), "a stage that is no column stays");
    }

    @Test
    void decimalsFollowAPointOrACommaWhateverTheReaderWrites() {
        shop.run(plan("name;mass\nbonnet;15,5\nheater;6,95\n", PartsShop.METRIC).change());
        assertEquals("15.5 kg", part("bonnet").getMass().text());
        assertEquals("16.5 kg in place of 15.5 kg", plan("name;mass\nbonnet;16,5\n").rows().get(0).words(), "as the reader writes");
        shop.run(plan("name\tmass\nboot lid\t11.25\n", PartsShop.COMMA).change());
        assertEquals("11.25 kg", part("boot lid").getMass().text());
        assertEquals(DecimalSign.COMMA, DecimalSign.of(List.of(List.of("1,234")), Locale.GERMANY), "could be either: as the reader");
        assertEquals(DecimalSign.POINT, DecimalSign.of(List.of(List.of("1,234")), Locale.ENGLISH));
        assertEquals(List.of(Kind.REFUSED), kinds(plan("name\tmass\nseal\t1,234\n")), "thousands or decimals: refused, not guessed");
    }

    @Test
    void unitsStandInTheHeaderOrInTheCell() {
        shop.run(plan("part;weight (lb);x (in);y (in);z (in)\nbonnet;10;10;-20;30,5\n").change());
        assertEquals(4.5359237, part("bonnet").getMass().value(), 1e-12);
        assertEquals("254 -508 774.7 mm", part("bonnet").getPosition().text());
        shop.run(plan("name\tmass\nboot lid\t10\n", PartsShop.INCH).change());
        assertEquals(4.5359237, part("boot lid").getMass().value(), 1e-12, "a bare number is in the unit of the reader");
    }

    @Test
    void whatCannotBeUnderstoodIsRefusedWholeAndSaysWhy() {
        String[][] wrong = {{"\t12 kg", "no name"}, {"a\t12 m", "kg"}, {"a\t-3", "mass"}, {"a\tabc", "number"}, {"a\t1e400", "mass"},
            {"a\t12\t-1", "below zero"}, {"a\t\t2", "without a mass"}, {"a\t12\t\tby eye", "is no source"},
            {"a\t12\t\t\t100", "all three"}, {"a\tNaN", "number"}, {"a\t200 t", "beyond"}, {"a".repeat(300) + "\t1", "too long"}};
        String before = shop.picture();
        for (String[] row : wrong) {
            PastePlan plan = plan("name\tmass\tgive or take\tsource\tx\ty\tz\n" + row[0] + "\n");
            assertEquals(List.of(Kind.REFUSED), kinds(plan), row[0]);
            assertTrue(plan.rows().get(0).words().contains(row[1]), plan.rows().get(0).words());
            assertTrue(plan.change().isEmpty());
        }
        PastePlan twice = plan("name\tmass\tfull\nseal\t1\tperhaps\nclip\t1\tx\nClip\t2\tx\n");
        assertEquals(List.of(Kind.REFUSED, Kind.NEW, Kind.REFUSED), kinds(twice));
        assertEquals(before, shop.picture());
        shop.run(twice.change());
        assertEquals("1 kg", part("clip").getMass().text(), "the good rows go in without the refused ones");
    }

    @Test
    void aNameThatTwoRowsHaveWantsThePiece() {
        shop.added(shop.shell, "bracket", null, null);
        Part other = shop.added(shop.chassis, "bracket", null, null);
        assertTrue(plan("name\tmass\nbracket\t1\n").rows().get(0).words().contains("2 rows"));
        shop.run(plan("name\tmass\tpiece\nbracket\t1\tchassis\nbolt\t2\tChassis\nbox\t5\tbox\n").change());
        assertEquals("1 kg", other.getMass().text());
        assertEquals(shop.chassis, part("bolt").eContainer());
        assertEquals(2, shop.car.getTemporaryLoads().size(), "what is called a box and belongs to no piece is a temporary load");
        assertTrue(plan("name\tpiece\nseal\troof\n").rows().get(0).words().contains("shell, chassis"));
    }

    @Test
    void aHeaderIsKnownByItsWordsElseTheUsualOrderIsProposed() {
        assertTrue(PasteColumn.isHeader(List.of("Part", "Weight (kg)")));
        assertFalse(PasteColumn.isHeader(List.of("left door", "19")));
        assertFalse(PasteColumn.isHeader(List.of("name", "19")), "a row with a number is no header");
        shop.run(plan("bonnet\t15\t0.4\tweighed\t720\t0\t900\n").change());
        assertEquals("15 kg u 0.2 weighed", part("bonnet").getMass().text());
        List<PasteColumn> read = PasteColumn.ofHeader(List.of("mass", "+-", "x", "y", "z", "+-", "mass", "colour", "full"),
                shop.car.getStages());
        assertEquals(PartColumn.GIVE, read.get(1).column().orElseThrow());
        assertEquals(PartColumn.PLACE_GIVE, read.get(5).column().orElseThrow());
        assertEquals(PasteColumn.SKIPPED, read.get(6), "the second of a sort");
        assertEquals(PasteColumn.SKIPPED, read.get(7));
        assertEquals(shop.full, read.get(8).stage().orElseThrow());
    }

    @Test
    void whatIsCopiedOutAndPastedAgainChangesNothing() {
        shop.added(shop.shell, "18\" \"rim\"", "7 kg", "1 2 3 mm u 4 measured");
        for (Habits habits : List.of(PartsShop.METRIC, PartsShop.COMMA)) {
            PartsTable table = shop.table(habits);
            String copied = CopiedRows.of(table, table.things());
            PastePlan plan = plan(copied, habits);
            assertEquals(List.of(Kind.SAME), kinds(plan).stream().distinct().toList(), () -> copied + plan.rows());
        }
    }

    @Test
    void threeHundredRowsAreOneChange() {
        StringBuilder text = new StringBuilder("name\tmass\tsource\tx\ty\tz\tfull\r\n");
        for (int i = 0; i < 300; i++) {
            text.append("part ").append(i).append('\t').append(i / 10.0).append(" kg\tweighed\t").append(i).append("\t0\t1\tx\r\n");
        }
        int before = shop.shell.getParts().size();
        shop.run(plan(text.toString()).change());
        assertEquals(before + 300, shop.shell.getParts().size());
        shop.stack.undo();
        assertEquals(before, shop.shell.getParts().size());
    }
}
