package cradlewright.report.sheet;

import cradlewright.report.text.Lines;

/** Writes a sheet as plain text, for the command line and for the clipboard. */
public final class PlainSheet {

    private PlainSheet() {
    }

    /** Returns the text; titles have an empty line above, except at the very beginning. */
    public static String write(Sheet sheet) {
        StringBuilder out = new StringBuilder();
        for (Sheet.Line line : sheet.lines()) {
            if (line instanceof Sheet.Title && !out.isEmpty()) {
                out.append('\n');
            }
            out.append(Lines.wrap(head(line), line.text()));
        }
        return out.toString();
    }

    private static String head(Sheet.Line line) {
        if (line instanceof Sheet.Row row) {
            return String.format(row.inner() ? "             %-9s " : "  %-10s ", row.head());
        }
        return line instanceof Sheet.Point ? "  - " : "";
    }
}
