package cradlewright.report.sheet;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.report.Alike;
import cradlewright.report.FindingWords;
import cradlewright.report.UnitSystem;
import java.util.Comparator;
import java.util.List;

/** The rows below an answer within a longer sheet. */
final class ReasonRows {

    private ReasonRows() {
    }

    /** Adds answers, gravest first; those that hold are only counted. */
    static void addAll(SheetBuilder out, List<Finding> findings, UnitSystem units) {
        List<Finding> told = findings.stream().filter(finding -> finding.verdict() != Verdict.HOLDS)
                .sorted(Comparator.comparing(Finding::verdict).reversed()).toList();
        Alike.gather(told).forEach(alike -> add(out, alike, units));
        int held = findings.size() - told.size();
        out.row(Verdict.HOLDS.word(), held == 0 ? "" : held == 1 ? "one answer" : held + " answers");
    }

    /** Adds verdict and reason of alike answers with everything below. */
    private static void add(SheetBuilder out, Alike alike, UnitSystem units) {
        out.row(alike.first().verdict().word(), alike.reason());
        addBelow(out, alike, "numbers", units);
    }

    /** Adds what stands below the reason. */
    static void addBelow(SheetBuilder out, Alike alike, String numbersHead, UnitSystem units) {
        Finding finding = alike.first();
        alike.numbers(units).forEach(numbers -> out.inner(numbersHead, numbers));
        out.inner("when", finding.situation());
        alike.missing().forEach(missing -> out.inner("missing", missing));
        alike.remedies().forEach(remedy -> out.inner(FindingWords.head(remedy), FindingWords.remedy(finding, remedy)));
        out.inner("rests on", FindingWords.basis(finding) + " [" + finding.check() + "]");
    }
}
