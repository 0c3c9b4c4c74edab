package cradlewright.verification;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One expected value of a data file: the nine columns that the tests of the bundle define. */
record CheckRow(String family, String id, String formula, String setting, String quantity, String expected, String unit,
        String tolerance, String kind, String source) {

    /** What the tests wrote of a comparison with a row. */
    record Comparison(CheckRow row, double ours, boolean holds) {

        double error() {
            return Math.abs(ours - Double.parseDouble(row.expected));
        }
    }

    private static final int COLUMNS = 9;

    private static CheckRow of(String family, String[] c) {
        // through the number, since the tests write it in the form of the language
        return new CheckRow(family, c[0], c[1], c[2], c[3], Double.toString(Double.parseDouble(c[4])), c[5], c[6], c[7], c[8]);
    }

    /** Largest difference allowed. */
    double allowed() {
        String[] parts = tolerance.split(" ");
        double value = Double.parseDouble(parts[1]);
        return parts[0].equals("rel") ? value * Math.abs(Double.parseDouble(expected)) : value;
    }

    private static String family(Path file) {
        return file.getFileName().toString().replace(".tsv", "");
    }

    /** Reads a data file. */
    static List<CheckRow> expected(Path file) {
        return Project.rows(file).stream().filter(c -> !c[0].equals("row")).map(c -> of(family(file), c)).toList();
    }

    /**
     * Reads what the tests wrote. Of several lines for one row the last counts, so that a run without {@code clean} is
     * judged by its newest answer.
     */
    static Map<String, Comparison> compared(Path file) {
        Map<String, Comparison> last = new LinkedHashMap<>();
        for (String[] c : Project.rows(file)) {
            last.put(c[0], new Comparison(of(family(file), c), Double.parseDouble(c[COLUMNS]), c[COLUMNS + 1].equals("holds")));
        }
        return last;
    }
}
