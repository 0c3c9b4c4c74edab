package cradlewright.report.text;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.overview.CarOverview;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.report.Alike;
import cradlewright.report.FindingWords;
import cradlewright.report.Silent;
import cradlewright.report.UnitSystem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * First one line a car, then the answer to everything that was asked about, one line each; then what each support carries and the reasons,
 * gravest first; the cautions once at the end.
 */
public final class TextReport {

    private final UnitSystem units;
    private final boolean all;

    /**
     * Makes a writer.
     *
     * @param units in which numbers are shown
     * @param all whether findings that hold are written out too
     */
    public TextReport(UnitSystem units, boolean all) {
        this.units = units;
        this.all = all;
    }

    /**
     * Writes the answers of a run.
     *
     * @param reader over the snapshot that the answers are for
     */
    public String write(ShopAnswers answers, LocalDate day, Reader reader) {
        LoadTable table = new LoadTable(reader, units);
        StringBuilder out = new StringBuilder();
        out.append(Lines.wrap("", answers.shop() + ", " + day)).append('\n');
        writeCars(out, CarOverview.of(answers, reader));
        for (Subject subject : answers.subjects()) {
            if (!answers.about(subject).isEmpty()) {
                out.append(Lines.wrap(String.format("  %-10s ", answers.worst(subject).word()), subject.label()));
            }
        }
        String silent = Silent.words(answers);
        if (!silent.isEmpty()) {
            out.append(Lines.wrap(String.format("  %-10s ", "-"), silent));
        }
        for (Subject subject : answers.subjects()) {
            writeSubject(out, subject, answers.about(subject), table.write(subject));
        }
        writeTotals(out, answers);
        writeCautions(out, answers.findings());
        return out.toString();
    }

    private static void writeCars(StringBuilder out, List<CarOverview> cars) {
        out.append(cars.isEmpty() ? "" : "Cars\n");
        for (CarOverview car : cars) {
            out.append(Lines.wrap(String.format("  %-10s ", car.verdict().map(Verdict::word).orElse("-")),
                    car.line().name() + ": " + car.line().standing() + "; " + car.line().waiting()));
        }
        out.append(cars.isEmpty() ? "" : "\nEverything that was asked about\n");
    }

    private void writeSubject(StringBuilder out, Subject subject, List<Finding> findings, String loads) {
        List<Finding> shown = findings.stream().filter(f -> all || f.verdict() != Verdict.HOLDS).toList();
        if (findings.isEmpty() || shown.isEmpty() && loads.isEmpty()) {
            return;
        }
        out.append('\n').append(Lines.wrap("", subject.label())).append(loads);
        Alike.gather(shown).forEach(alike -> writeAlike(out, alike));
        long held = findings.size() - shown.size();
        if (held > 0) {
            out.append("  ").append(held).append(held == 1 ? " further answer holds" : " further answers hold").append('\n');
        }
    }

    private void writeAlike(StringBuilder out, Alike alike) {
        Finding finding = alike.first();
        out.append(Lines.wrap(String.format("  %-9s ", finding.verdict().word()), alike.reason()));
        lines(out, "numbers", alike.numbers(units));
        if (!finding.situation().isEmpty()) {
            out.append(Lines.wrap(pad("when"), finding.situation()));
        }
        lines(out, "missing", alike.missing());
        alike.remedies().forEach(remedy -> out.append(Lines.wrap(pad(FindingWords.head(remedy)), FindingWords.remedy(alike.first(),
                remedy))));
        out.append(Lines.wrap(pad("rests on"), FindingWords.basis(finding) + " [" + finding.check() + "]"));
    }

    private static void lines(StringBuilder out, String head, List<String> texts) {
        texts.forEach(text -> out.append(Lines.wrap(pad(head), text)));
    }

    private static void writeTotals(StringBuilder out, ShopAnswers answers) {
        Map<Verdict, Long> counts = answers.counts();
        List<String> parts = new ArrayList<>();
        for (Verdict verdict : List.of(Verdict.STOP, Verdict.CANT_SAY, Verdict.TIGHT, Verdict.HOLDS)) {
            parts.add(counts.getOrDefault(verdict, 0L) + " " + verdict.word());
        }
        if (answers.findings().isEmpty()) {
            out.append('\n').append(Lines.wrap("", Verdict.CANT_SAY.word() + ": none of the checks asked has an answer here."));
            return;
        }
        out.append('\n').append(answers.worst().word()).append(" over all: ").append(String.join(", ", parts)).append('\n');
    }

    private static void writeCautions(StringBuilder out, List<Finding> findings) {
        out.append("\nCautions\n");
        FindingWords.cautions(findings).forEach(caution -> out.append(Lines.wrap("  - ", caution)));
    }

    private static String pad(String word) {
        return String.format("            %-9s ", word);
    }
}
