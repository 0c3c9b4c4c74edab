package cradlewright.report.sheet;

import java.util.ArrayList;
import java.util.List;

/** Puts a sheet together line by line; what is empty is left out. */
public final class SheetBuilder {

    private final List<Sheet.Line> lines = new ArrayList<>();

    /** Adds the name of what follows. */
    public SheetBuilder title(String text) {
        lines.add(new Sheet.Title(text));
        return this;
    }

    /** Adds a sentence, unless it is empty. */
    public SheetBuilder sentence(String text) {
        return text.isEmpty() ? this : add(new Sheet.Sentence(text));
    }

    /** Adds a row, unless there is nothing to say. */
    public SheetBuilder row(String head, String text) {
        return text.isEmpty() ? this : add(new Sheet.Row(head, text, false));
    }

    /** Adds a row that belongs to the one above, unless there is nothing to say. */
    public SheetBuilder inner(String head, String text) {
        return text.isEmpty() ? this : add(new Sheet.Row(head, text, true));
    }

    /** Adds a point of a list. */
    public SheetBuilder point(String text) {
        return add(new Sheet.Point(text));
    }

    private SheetBuilder add(Sheet.Line line) {
        lines.add(line);
        return this;
    }

    /** Returns the sheet as it is now. */
    public Sheet build() {
        return new Sheet(lines);
    }
}
