package cradlewright.ui.sheet;

import cradlewright.report.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;

/**
 * A sheet as one text with marks on its lines, so that a text field can show it. Rows have their head before a tab.
 *
 * @param text the whole text, lines ended by {@code \n}
 * @param lines one mark for each line of the text
 */
record SheetText(String text, List<Mark> lines) {

    /** What a line of the text is. */
    enum Kind {
        TITLE, SENTENCE, ROW, INNER, POINT, GAP
    }

    /**
     * A line of the text.
     *
     * @param kind what it is
     * @param head length of the word in front, 0 for none
     */
    record Mark(Kind kind, int head) {
    }

    static SheetText of(Sheet sheet) {
        StringBuilder text = new StringBuilder();
        List<Mark> marks = new ArrayList<>();
        for (Sheet.Line line : sheet.lines()) {
            if (line instanceof Sheet.Title && !marks.isEmpty()) {
                add(text, marks, "", new Mark(Kind.GAP, 0));
            }
            String plain = line.text().replaceAll("\\s+", " ");
            if (line instanceof Sheet.Row row) {
                add(text, marks, row.head() + '\t' + plain, new Mark(row.inner() ? Kind.INNER : Kind.ROW, row.head().length()));
            } else {
                add(text, marks, line instanceof Sheet.Point ? "\u2022\t" + plain : plain, new Mark(kind(line), 0));
            }
        }
        return new SheetText(text.toString(), List.copyOf(marks));
    }

    private static Kind kind(Sheet.Line line) {
        return line instanceof Sheet.Title ? Kind.TITLE : line instanceof Sheet.Point ? Kind.POINT : Kind.SENTENCE;
    }

    private static void add(StringBuilder text, List<Mark> marks, String line, Mark mark) {
        text.append(marks.isEmpty() ? "" : "\n").append(line);
        marks.add(mark);
    }
}
