package cradlewright.ui.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Text from spreadsheets taken apart; quoting as in RFC 4180, 2.5 to 2.7, with tabs or semicolons between the cells. */
class PastedCellsTest {

    private static List<List<String>> rows(String text) {
        return PastedCells.of(text).rows();
    }

    @Test
    void tabsAndSemicolonsStandBetweenCells() {
        assertEquals(List.of(List.of("door", "19"), List.of("bonnet", "15")), rows("door\t19\nbonnet\t15\n"));
        assertEquals(List.of(List.of("door", "19,5"), List.of("bonnet", "15")), rows("door;19,5\r\nbonnet;15\r\n"));
        assertEquals(List.of(List.of("tank; empty", "11")), rows("tank; empty\t11"), "with a tab anywhere a semicolon is only a sign");
        assertEquals(List.of(List.of("door"), List.of("bonnet")), rows("door\rbonnet"), "names alone are a list, too");
    }

    @Test
    void quotedCellsMayHoldAnything() {
        assertEquals(List.of(List.of("a b", "c")), rows("\"a\tb\"\tc"), "a tab in a name becomes a blank");
        assertEquals(List.of(List.of("18\" rim", "7")), rows("\"18\"\" rim\"\t7"));
        assertEquals(List.of(List.of("two lines", "7")), rows("\"two\nlines\"\t7"));
        assertEquals(List.of(List.of("18\" rim", "7")), rows("18\" rim\t7"), "a sign for inches begins no quoted cell");
        assertEquals(List.of(List.of("\"open", "7"), List.of("door", "8")), rows("\"open\t7\ndoor\t8"), "never closed");
    }

    @Test
    void rowsAreFilledUpAndEmptyOnesLeftOut() {
        assertEquals(List.of(List.of("a", "", ""), List.of("b", "1", "2")), rows("\uFEFFa\n\n\t\t\nb\t1\t2\n"));
        assertEquals(List.of(List.of("a", "")), rows("a\t"), "the last cell is there though it is empty");
        assertEquals(List.of(List.of("a b", "1")), rows("a\u0000b\t\u00A01 "));
    }

    @Test
    void nothingAndTooMuchAreRefusedInWords() {
        for (String text : new String[] {"", " \n\t\n", ";", "x\n".repeat(6000), "\t".repeat(300) + "x", "x".repeat(3_000_000)}) {
            PastedCells cells = PastedCells.of(text);
            assertTrue(cells.rows().isEmpty() && !cells.trouble().isEmpty(), () -> "length " + text.length());
        }
    }

    @Test
    void anyTextAtAllEndsSoon() {
        Random random = new Random(7);
        String signs = "a1;\t\n\r\" ,.\u0000";
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            for (int i = 0; i < 3000; i++) {
                StringBuilder text = new StringBuilder();
                random.ints(random.nextInt(60), 0, signs.length()).forEach(at -> text.append(signs.charAt(at)));
                PastedCells cells = PastedCells.of(text.toString());
                assertTrue(cells.rows().stream().allMatch(row -> row.size() == cells.columns()));
            }
            assertTrue(PastedCells.of("\"".repeat(200_000)).rows().size() <= 1);
        });
    }
}
