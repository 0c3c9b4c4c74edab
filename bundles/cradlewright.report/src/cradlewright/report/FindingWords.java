package cradlewright.report;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;

/** The sentences around the numbers of a finding, the same in text and HTML. */
public final class FindingWords {

    private FindingWords() {
    }

    /** Returns "asked 1200 N, can give 2500 N (48 %)", or nothing when the finding has no numbers. */
    public static String numbers(Finding finding, UnitSystem units) {
        if (finding.demand().isEmpty() || finding.capacity().isEmpty()) {
            return "";
        }
        String use = finding.use().filter(u -> u < 100).map(u -> " (" + Math.round(100 * u) + " %)").orElse("");
        return "asked " + units.text(finding.demand().get()) + ", can give " + units.text(finding.capacity().get()) + use;
    }

    /** Returns the words of a remedy with how well it is known to help. */
    public static String remedy(Remedy remedy) {
        return remedy.words() + remedy.after().map(verdict -> " (worked out: then " + verdict.word() + ")").orElse("");
    }
}
