package cradlewright.report.dolly;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.report.FindingWords;
import cradlewright.report.UnitSystem;
import cradlewright.report.Words;
import cradlewright.report.scene.LoadBar;
import cradlewright.report.scene.Role;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How far something is used: the gravest answer about it, and among equally grave ones that with the largest use.
 *
 * @param gravest nothing when no check says anything about it
 */
record Use(Optional<Finding> gravest) {

    private static final double LOW = 0.25;
    private static final double SOME = 0.5;
    private static final double HALF = 0.75;

    static Use of(List<Finding> findings) {
        return new Use(findings.stream().max(Comparator.comparing(Finding::verdict).thenComparing(finding -> finding.use().orElse(-1.0))));
    }

    /** Returns the answer; CAN'T SAY when no check says anything. */
    Verdict verdict() {
        return gravest.map(Finding::verdict).orElse(Verdict.CANT_SAY);
    }

    /** Returns demand over capacity, if there is a number. */
    Optional<Double> ratio() {
        return gravest.flatMap(Finding::use);
    }

    /** Returns how something used so is painted. */
    Role role() {
        if (verdict() != Verdict.HOLDS) {
            return LoadBar.role(verdict());
        }
        double ratio = ratio().orElse(0.0);
        return ratio < LOW ? Role.USE_LOW : ratio < SOME ? Role.USE_SOME : ratio < HALF ? Role.USE_HALF : Role.USE_MUCH;
    }

    /** Returns the number that is printed, with the answer unless it holds. */
    String words() {
        String number = ratio().map(ratio -> "use " + FindingWords.use(ratio)).orElse("");
        return verdict() == Verdict.HOLDS && !number.isEmpty() ? number : (number + " " + verdict().word()).strip();
    }

    /** Returns everything in one line. */
    String sentence(UnitSystem units) {
        return gravest.map(finding -> Words.join(words(), finding.words(), FindingWords.numbers(finding, units), finding.situation()))
                .orElse("use not known");
    }
}
