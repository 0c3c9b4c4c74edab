package cradlewright.report.text;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.report.FindingWords;
import cradlewright.report.UnitSystem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** First the answer, one line each; then the reasons, gravest first; the cautions once at the end. */
public final class TextReport {

    private static final int WIDTH = 100;

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

    /** Writes the answers of a run. */
    public String write(ShopAnswers answers, LocalDate day) {
        StringBuilder out = new StringBuilder();
        out.append(answers.shop()).append(", ").append(day).append("\n\n");
        for (Subject subject : answers.subjects()) {
            String answer = answers.about(subject).isEmpty() ? "-" : answers.worst(subject).word();
            out.append(String.format("  %-10s %s%n", answer, subject.label()));
        }
        for (Subject subject : answers.subjects()) {
            writeSubject(out, subject, answers.about(subject));
        }
        writeTotals(out, answers);
        writeCautions(out, answers.findings());
        return out.toString().replace("\r\n", "\n");
    }

    private void writeSubject(StringBuilder out, Subject subject, List<Finding> findings) {
        List<Finding> shown = findings.stream().filter(f -> all || f.verdict() != Verdict.HOLDS).toList();
        if (shown.isEmpty()) {
            return;
        }
        out.append('\n').append(subject.label()).append('\n');
        for (Finding finding : shown) {
            writeFinding(out, finding);
        }
        long held = findings.size() - shown.size();
        if (held > 0) {
            out.append("  ").append(held).append(held == 1 ? " further answer holds" : " further answers hold").append('\n');
        }
    }

    private void writeFinding(StringBuilder out, Finding finding) {
        String numbers = FindingWords.numbers(finding, units);
        String head = finding.objectName().equals(finding.subject().label()) ? "" : finding.objectName() + ": ";
        out.append(wrap(String.format("  %-9s ", finding.verdict().word()), head + finding.words()));
        if (!numbers.isEmpty()) {
            out.append(wrap(pad("numbers"), numbers));
        }
        if (!finding.situation().isEmpty()) {
            out.append(wrap(pad("when"), finding.situation()));
        }
        for (String missing : finding.missing()) {
            out.append(wrap(pad("missing"), missing));
        }
        finding.remedies().forEach(remedy -> out.append(wrap(pad("to do"), FindingWords.remedy(remedy))));
        String basis = finding.ratedBy().isEmpty() ? finding.clause() : finding.ratedBy() + "; " + finding.clause();
        out.append(wrap(pad("rests on"), basis + " [" + finding.check() + "]"));
    }

    private static void writeTotals(StringBuilder out, ShopAnswers answers) {
        Map<Verdict, Long> counts = answers.counts();
        List<String> parts = new ArrayList<>();
        for (Verdict verdict : List.of(Verdict.STOP, Verdict.CANT_SAY, Verdict.TIGHT, Verdict.HOLDS)) {
            parts.add(counts.getOrDefault(verdict, 0L) + " " + verdict.word());
        }
        out.append('\n').append(answers.worst().word()).append(" over all: ").append(String.join(", ", parts)).append('\n');
    }

    private static void writeCautions(StringBuilder out, List<Finding> findings) {
        out.append("\nCautions\n");
        FindingWords.cautions(findings).forEach(caution -> out.append(wrap("  - ", caution)));
    }

    private static String pad(String word) {
        return String.format("            %-9s ", word);
    }

    /** Breaks a text at blanks so that it stands beside its head. */
    static String wrap(String head, String text) {
        StringBuilder out = new StringBuilder(head);
        int column = head.length();
        boolean first = true;
        for (String word : text.split(" ")) {
            if (!first && column + 1 + word.length() > WIDTH) {
                out.append('\n').append(" ".repeat(head.length()));
                column = head.length();
                first = true;
            }
            if (!first) {
                out.append(' ');
                column++;
            }
            out.append(word);
            column += word.length();
            first = false;
        }
        return out.append('\n').toString();
    }
}
