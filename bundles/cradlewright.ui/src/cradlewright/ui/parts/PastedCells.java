package cradlewright.ui.parts;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.osgi.util.NLS;

/**
 * Takes text from a spreadsheet apart: cells with tabs between them, else with semicolons; cells in double quotes may hold either, line
 * ends and doubled quotes. A quote that is never closed is only a sign of its cell.
 *
 * @param rows the rows that are not empty, all of the same length
 * @param trouble why nothing is taken; empty when something is
 */
record PastedCells(List<List<String>> rows, String trouble) {

    private static final int MOST_LETTERS = 2_000_000;
    private static final int MOST_ROWS = 5000;
    private static final int MOST_COLUMNS = 100;
    private static final char QUOTE = '"';

    /** Takes text apart. */
    static PastedCells of(String text) {
        if (text.length() > MOST_LETTERS) {
            return refused(NLS.bind(Messages.Paste_long, MOST_LETTERS));
        }
        String plain = text.replace("\r\n", "\n").replace('\r', '\n').replace("\uFEFF", "");
        char between = plain.indexOf('\t') >= 0 ? '\t' : ';';
        List<List<String>> rows = new Reader(plain, between).rows();
        rows.removeIf(row -> row.stream().allMatch(String::isEmpty));
        if (rows.isEmpty()) {
            return refused(Messages.Paste_empty);
        }
        int columns = rows.stream().mapToInt(List::size).max().orElse(0);
        if (rows.size() > MOST_ROWS || columns > MOST_COLUMNS) {
            return refused(NLS.bind(Messages.Paste_large, MOST_ROWS, MOST_COLUMNS));
        }
        rows.forEach(row -> {
            while (row.size() < columns) {
                row.add("");
            }
        });
        return new PastedCells(rows.stream().map(List::copyOf).toList(), "");
    }

    private static PastedCells refused(String trouble) {
        return new PastedCells(List.of(), trouble);
    }

    int columns() {
        return rows.isEmpty() ? 0 : rows.get(0).size();
    }

    private static final class Reader {
        private final String text;
        private final char between;
        private int at;

        Reader(String text, char between) {
            this.text = text;
            this.between = between;
        }

        List<List<String>> rows() {
            List<List<String>> rows = new ArrayList<>();
            List<String> row = new ArrayList<>();
            while (at < text.length()) {
                row.add(cell());
                if (at >= text.length() || text.charAt(at) == '\n') {
                    rows.add(row);
                    row = new ArrayList<>();
                } else if (at == text.length() - 1) {
                    row.add("");
                    rows.add(row);
                }
                at++;
            }
            return rows;
        }

        private String cell() {
            int end = text.charAt(at) == QUOTE ? closing() : -1;
            if (end > 0) {
                String inner = text.substring(at + 1, end).replace("\"\"", "\"");
                at = end + 1;
                return clean(inner);
            }
            int from = at;
            while (at < text.length() && text.charAt(at) != between && text.charAt(at) != '\n') {
                at++;
            }
            return clean(text.substring(from, at));
        }

        /** Returns where the quoted cell that begins here is closed; less than zero when it is not, or when more than its end follows. */
        private int closing() {
            for (int i = at + 1; i < text.length(); i++) {
                if (text.charAt(i) == QUOTE) {
                    if (i + 1 < text.length() && text.charAt(i + 1) == QUOTE) {
                        i++;
                    } else {
                        boolean ends = i + 1 == text.length() || text.charAt(i + 1) == between || text.charAt(i + 1) == '\n';
                        return ends ? i : -1;
                    }
                }
            }
            return -1;
        }

        private static String clean(String cell) {
            return cell.replaceAll("[\\p{Cntrl}\\u00A0]+", " ").strip();
        }
    }
}
