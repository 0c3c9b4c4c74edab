package cradlewright.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import cradlewright.mechanics.formula.Formula;

/** Writes the report of what the tests of the mechanics have just compared, and holds it to be whole. */
class VerificationReportTest {

    private static final Path DATA = Project.mechanics().resolve("src_test/check-values");
    private static final Path LISTS = Project.mechanics().resolve("src_test/cradlewright/mechanics/verify");
    private static final Path WRITTEN = Project.mechanics().resolve("target/verification");
    private static VerificationReport report;

    @BeforeAll
    static void read() throws ReflectiveOperationException {
        List<CheckRow> expected = new ArrayList<>();
        Map<String, Map<String, CheckRow.Comparison>> compared = new LinkedHashMap<>();
        for (Path file : Sources.below(DATA, ".tsv")) {
            expected.addAll(CheckRow.expected(file));
            Path written = WRITTEN.resolve(file.getFileName());
            if (Files.exists(written)) {
                compared.put(file.getFileName().toString().replace(".tsv", ""), CheckRow.compared(written));
            }
        }
        report = new VerificationReport(expected, compared, formulas(), list("second-route.tsv"), list("open-rows.tsv"));
    }

    private static List<String[]> list(String name) {
        List<String[]> rows = Project.rows(LISTS.resolve(name));
        return rows.subList(1, rows.size());
    }

    /** The bundle's own test holds that these classes are all there are. */
    private static List<Formula> formulas() throws ReflectiveOperationException {
        Path sources = Project.mechanics().resolve("src");
        List<Formula> all = new ArrayList<>();
        for (Path file : Sources.below(sources, "Formulas.java")) {
            String name = sources.relativize(file).toString().replace(".java", "").replaceAll("[/\\\\]", ".");
            for (Object formula : (List<?>) Class.forName(name).getMethod("all").invoke(null)) {
                all.add((Formula) formula);
            }
        }
        return all;
    }

    @Test
    void everyRowWasComparedAndHolds() {
        assertTrue(report.expected().size() > 900, "rows read: " + report.expected().size());
        assertEquals(List.of(), report.notCompared(), "rows that no test of the mechanics compared in this run");
        assertEquals(List.of(), report.red());
    }

    @Test
    void reportIsWritten() throws IOException {
        for (Map.Entry<String, Page> page : Map.of("md", new Page.Markdown(), "html", new Page.Html()).entrySet()) {
            report.writeTo(page.getValue());
            Path file = Path.of("target", "verification-report." + page.getKey());
            Files.writeString(file, page.getValue().text());
            String text = Files.readString(file);
            for (Formula formula : report.formulas()) {
                assertTrue(text.contains(formula.id()), formula.id());
            }
        }
    }

    @Test
    void rowsThatAreMissingChangedOrRedAreNamed(@TempDir Path folder) throws IOException {
        String row = "%s\tpad.stress\tcase\tstress\t%s\tMPa\trel 1e-6\tpublished\ta book";
        Path data = Files.writeString(folder.resolve("pad.tsv"), String.join("\n", "row\tformula\t...",
                row.formatted("good", "1.50"), row.formatted("missing", "1"), row.formatted("changed", "1"),
                row.formatted("red", "1")));
        Path written = Files.writeString(Files.createDirectory(folder.resolve("written")).resolve("pad.tsv"), String.join("\n",
                row.formatted("good", "1.5") + "\t1.6\tRED", row.formatted("good", "1.5") + "\t1.5\tholds",
                row.formatted("changed", "1.1") + "\t1.1\tholds", row.formatted("red", "1.0") + "\t1.2\tRED"));
        VerificationReport small = new VerificationReport(CheckRow.expected(data), Map.of("pad", CheckRow.compared(written)),
                List.of(), List.of(), List.of());
        assertEquals(List.of("pad missing", "pad changed"), small.notCompared());
        assertEquals(List.of("pad red"), small.red());
        Page page = new Page.Markdown();
        small.writeTo(page);
        assertTrue(page.text().contains("| pad.stress | red | case | stress | published | a book | 1 MPa | 1.2 | 0.20 | "
                + "1.0e-06 | NO |"), page.text());
        assertFalse(page.text().contains("1.6"), "the last line of a row counts");
    }
}
