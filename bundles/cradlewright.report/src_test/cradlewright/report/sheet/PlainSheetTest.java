package cradlewright.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Columns counted by hand. */
class PlainSheetTest {

    @Test
    void titlesStandApartAndRowsStandBelowEachOther() {
        Sheet sheet = new SheetBuilder().title("Red coupe").sentence("It holds.").row("now", "HOLDS").inner("when", "at rest")
                .title("Cautions").point("Keep off.").build();
        assertEquals("""
                Red coupe
                It holds.
                  now        HOLDS
                             when      at rest

                Cautions
                  - Keep off.
                """, PlainSheet.write(sheet));
    }

    @Test
    void whatIsEmptyIsLeftOut() {
        assertEquals("", PlainSheet.write(new SheetBuilder().sentence("").row("now", "").inner("when", "").build()));
    }

    @Test
    void longTextIsBrokenBesideItsHead() {
        String text = PlainSheet.write(new SheetBuilder().row("now", "word ".repeat(30).strip()).build());
        // 100 columns less 13 for the head hold 17 words of four letters: 17 * 5 - 1 = 84.
        assertEquals("  now        " + "word ".repeat(17).strip() + "\n             " + "word ".repeat(13).strip() + "\n", text);
    }
}
