package cradlewright.verification;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

import cradlewright.mechanics.formula.Formula;

/** What is verified by what: every comparison with its source, every formula with its limits, and what is still open. */
record VerificationReport(List<CheckRow> expected, Map<String, Map<String, CheckRow.Comparison>> compared,
        List<Formula> formulas, List<String[]> secondRoutes, List<String[]> openRows) {

    private static final String NOT_COMPARED = "not compared";
    private static final MathContext DIGITS = new MathContext(9);
    private static final int MOST_ZEROS = 3;
    private static final int MOST_PLACES = 12;

    private CheckRow.Comparison comparison(CheckRow row) {
        return compared.getOrDefault(row.family(), Map.of()).get(row.id());
    }

    /** Rows that this run has not compared as they stand in the data now. */
    List<String> notCompared() {
        return expected.stream().filter(row -> comparison(row) == null || !comparison(row).row().equals(row))
                .map(row -> row.family() + " " + row.id()).toList();
    }

    /** Rows whose comparison failed. */
    List<String> red() {
        return expected.stream().filter(row -> comparison(row) != null && !comparison(row).holds())
                .map(row -> row.family() + " " + row.id()).toList();
    }

    /** Writes the report onto a page. */
    void writeTo(Page page) {
        page.heading(1, "Verification of the mechanics");
        page.paragraph("Each line below is one comparison that the tests of this build have made. Expected is the value from outside,"
                + " ours the value of the program, error the difference of the two and allowed the largest difference that passes,"
                + " all three in the unit of the expected value.");
        page.paragraph("Kinds. Published: printed in a standard, a textbook or a worked example. Closed form: a formula of the"
                + " textbooks, or balance of forces, worked by hand. Independent: a second printed source, or another way of"
                + " calculating that shares no formula with the program. Common practice: a rule of the trade without a source."
                + " Sources marked 'from memory' were quoted without the page at hand.");
        writeCounts(page);
        writeOpen(page);
        page.heading(2, "Comparisons");
        Map<String, List<List<String>>> families = new TreeMap<>();
        expected.stream().sorted(Comparator.comparing(CheckRow::formula))
                .forEach(row -> families.computeIfAbsent(row.family(), name -> new ArrayList<>()).add(cells(row)));
        families.forEach((family, rows) -> {
            page.heading(3, family);
            page.table(List.of("formula", "row", "case", "quantity", "kind", "source", "expected", "ours", "error", "allowed",
                    "holds"), rows);
        });
        page.heading(2, "Formulas");
        page.table(List.of("formula", "what it gives", "expression", "source", "limits", "neglected"), formulas.stream()
                .map(f -> List.of(f.id(), f.title(), f.expression(), f.source(), f.limits(), f.neglected())).toList());
        page.heading(2, "Second routes that are tests");
        page.table(List.of("formula", "test", "route"),
                secondRoutes.stream().map(c -> List.of(c[0], c[1] + "." + c[2], c[3])).toList());
    }

    private void writeCounts(Page page) {
        page.table(List.of("what", "count"), List.of(
                List.of("formulas", Integer.toString(formulas.size())),
                List.of("expected values", Integer.toString(expected.size())),
                List.of("of these published", count("published")),
                List.of("of these closed forms", count("closed-form")),
                List.of("of these by an independent route", count("independent")),
                List.of("of these common practice without a source", count("common-practice")),
                List.of("of all these quoted from memory",
                        Long.toString(expected.stream().filter(row -> row.source().contains("from memory")).count())),
                List.of(NOT_COMPARED, Integer.toString(notCompared().size())),
                List.of("not met", Integer.toString(red().size())),
                List.of("open: a first or second route that is missing", Integer.toString(openRows.size()))));
    }

    private String count(String kind) {
        return Long.toString(expected.stream().filter(row -> row.kind().equals(kind)).count());
    }

    private void writeOpen(Page page) {
        page.heading(2, "Open");
        page.paragraph("First: a published value, a closed form or common practice. Second: another route to the number.");
        page.table(List.of("formula", "missing", "what would close it"), openRows.stream().map(List::of).toList());
    }

    private List<String> cells(CheckRow row) {
        CheckRow.Comparison c = comparison(row);
        return List.of(row.formula(), row.id(), row.setting(), row.quantity(), row.kind(), row.source(),
                value(Double.parseDouble(row.expected())) + (row.unit().equals("-") ? "" : " " + row.unit()),
                c == null ? NOT_COMPARED : value(c.ours()), c == null ? NOT_COMPARED : rough(c.error()), rough(row.allowed()),
                c == null ? NOT_COMPARED : c.holds() ? "yes" : "NO");
    }

    /** Nine digits, without the zeros at the end and without a power of ten where few zeros do. */
    private static String value(double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        boolean plain = rounded.scale() > -DIGITS.getPrecision() && rounded.scale() <= MOST_PLACES
                && rounded.scale() - rounded.precision() < MOST_ZEROS;
        return rounded.signum() == 0 ? "0" : plain ? rounded.toPlainString() : rounded.toString();
    }

    private static String rough(double value) {
        return String.format(Locale.ROOT, "%.2g", value);
    }
}
