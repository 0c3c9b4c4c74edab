package cradlewright.verification;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

import cradlewright.mechanics.formula.Formula;

/** What is verified by what: every comparison with its source, every formula with its limits, and what is still open. */
record VerificationReport(List<CheckRow> expected, Map<String, Map<String, CheckRow.Comparison>> compared,
        List<Formula> formulas, List<String[]> secondRoutes, List<String[]> openRows) {

    private static final String NOT_COMPARED = "not compared";

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
        writeCounts(page);
        writeOpen(page);
        page.heading(2, "Comparisons");
        Map<String, List<List<String>>> families = new TreeMap<>();
        for (CheckRow row : expected) {
            families.computeIfAbsent(row.family(), name -> new ArrayList<>()).add(cells(row));
        }
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
                (row.expected() + " " + row.unit()).strip(), c == null ? NOT_COMPARED : number("%.9g", c.ours()),
                c == null ? NOT_COMPARED : number("%.2g", c.error()), number("%.2g", row.allowed()),
                c == null ? NOT_COMPARED : c.holds() ? "yes" : "NO");
    }

    private static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
