package cradlewright.mechanics.verify;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The expected values of one formula family, read from {@code check-values/FAMILY.tsv}. Each row names its formula and
 * its source; each comparison is written to {@code target/verification/FAMILY.tsv}, from which the verification report
 * is made.
 *
 * <p>Columns, separated by tabs: row (unique), formula (id), case (inputs in words), quantity, expected, unit, tolerance
 * ({@code rel 1e-6} or {@code abs 0.01}), kind ({@code published}, {@code closed-form}, {@code independent},
 * {@code common-practice}), source. Lines that begin with {@code #} are comments.
 */
public final class CheckValues {

    private static final List<String> KINDS = List.of("published", "closed-form", "independent", "common-practice");

    private record Row(String id, String formula, String setting, String quantity, double expected, String unit,
            String tolerance, String kind, String source) {

        double allowed() {
            String[] parts = tolerance.split(" ");
            double value = Double.parseDouble(parts[1]);
            return switch (parts[0]) {
                case "rel" -> value * Math.abs(expected);
                case "abs" -> value;
                default -> throw new IllegalArgumentException("tolerance must read 'rel X' or 'abs X': " + tolerance);
            };
        }
    }

    private final String family;
    private final Map<String, Row> rows;

    private CheckValues(String family, Map<String, Row> rows) {
        this.family = family;
        this.rows = rows;
    }

    /** Reads the rows of a family; fails on a missing file, a doubled row, a missing column or an unknown kind. */
    public static CheckValues load(String family) {
        String resource = "/check-values/" + family + ".tsv";
        Map<String, Row> rows = new LinkedHashMap<>();
        try (InputStream in = CheckValues.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalArgumentException("no check values at " + resource);
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            text.lines().filter(line -> !line.isBlank() && !line.startsWith("#") && !line.startsWith("row\t"))
                    .forEach(line -> add(rows, line, resource));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new CheckValues(family, rows);
    }

    private static void add(Map<String, Row> rows, String line, String resource) {
        String[] c = line.split("\t", -1);
        if (c.length != 9 || c[8].isBlank() || !KINDS.contains(c[7])) {
            throw new IllegalArgumentException(resource + ": nine columns with a known kind and a source wanted: " + line);
        }
        Row row = new Row(c[0], c[1], c[2], c[3], Double.parseDouble(c[4]), c[5], c[6], c[7], c[8]);
        if (rows.put(row.id, row) != null) {
            throw new IllegalArgumentException(resource + ": row " + row.id + " stands twice");
        }
    }

    /** Returns the expected value of a row, for tests that need it as an input of a further step. */
    public double expected(String id) {
        return row(id).expected;
    }

    /** Compares {@code actual} with the row, within the row's tolerance, and records the comparison. */
    public void check(String id, double actual) {
        Row row = row(id);
        double error = Math.abs(actual - row.expected);
        boolean holds = error <= row.allowed();
        record(row, actual, holds);
        if (!holds) {
            fail(String.format(Locale.ROOT, "%s %s (%s): expected %.9g %s, ours %.9g, off by %.3g, allowed %s [%s]", family, id,
                    row.quantity, row.expected, row.unit, actual, error, row.tolerance, row.source));
        }
    }

    private Row row(String id) {
        Row row = rows.get(id);
        if (row == null) {
            throw new IllegalArgumentException("no row " + id + " in the check values of " + family);
        }
        return row;
    }

    private void record(Row row, double actual, boolean holds) {
        String line = String.join("\t", row.id, row.formula, row.setting, row.quantity, Double.toString(row.expected), row.unit,
                row.tolerance, row.kind, row.source, Double.toString(actual), holds ? "holds" : "RED") + "\n";
        Path file = Path.of("target", "verification", family + ".tsv");
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, line, StandardCharsets.UTF_8, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
