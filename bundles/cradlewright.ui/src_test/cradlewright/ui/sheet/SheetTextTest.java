package cradlewright.ui.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.report.sheet.Sheet;
import cradlewright.report.sheet.SheetBuilder;
import cradlewright.ui.sheet.SheetText.Kind;
import cradlewright.ui.sheet.SheetText.Mark;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One mark for each line, whatever a text from a file holds. */
class SheetTextTest {

    @Test
    void everyLineHasItsMark() {
        Sheet sheet = new SheetBuilder().title("Red coupe").sentence("It holds.").row("now", "HOLDS").inner("when", "at rest")
                .title("Cautions").point("Keep off.").build();
        SheetText text = SheetText.of(sheet);
        assertEquals("Red coupe\nIt holds.\nnow\tHOLDS\nwhen\tat rest\n\nCautions\n\u2022\tKeep off.", text.text());
        assertEquals(List.of(new Mark(Kind.TITLE, 0), new Mark(Kind.SENTENCE, 0), new Mark(Kind.ROW, 3), new Mark(Kind.INNER, 4),
                new Mark(Kind.GAP, 0), new Mark(Kind.TITLE, 0), new Mark(Kind.POINT, 0)), text.lines());
    }

    @Test
    void lineEndsWithinATextMakeNoLine() {
        SheetText text = SheetText.of(new SheetBuilder().title("a\nb").row("c", "d\r\ne\tf").build());
        assertEquals("a b\nc\td e f", text.text());
        assertEquals(2, text.lines().size());
    }

    @Test
    void anEmptySheetIsAnEmptyText() {
        assertEquals(new SheetText("", List.of()), SheetText.of(new Sheet(List.of())));
    }
}
