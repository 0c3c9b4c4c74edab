package cradlewright.report;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.quantity.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The sentences around the numbers of a finding, the same in text and HTML. */
public final class FindingWords {

    private FindingWords() {
    }

    /** Returns "asked 1200 N, can give 2500 N (48 %)", or nothing when the finding has no numbers. */
    public static String numbers(Finding finding, UnitSystem units) {
        if (finding.demand().isEmpty() || finding.capacity().isEmpty()) {
            return "";
        }
        boolean scaleWithoutZero = finding.demand().get().dimension() == Dimension.TEMPERATURE;
        String use = scaleWithoutZero ? "" : finding.use().filter(u -> u < 100).map(u -> " (" + Math.round(100 * u) + " %)").orElse("");
        return "asked " + units.text(finding.demand().get()) + ", can give " + units.text(finding.capacity().get()) + use;
    }

    /** Returns the words of a remedy with how well it is known to help. */
    public static String remedy(Remedy remedy) {
        return remedy.words() + remedy.after().map(verdict -> " (worked out: then " + verdict.word() + ")").orElse("");
    }

    /** Returns the cautions of some findings, each once; one that only begins another is left to the longer. */
    public static List<String> cautions(List<Finding> findings) {
        Set<String> all = new LinkedHashSet<>();
        findings.forEach(finding -> all.add(finding.caution()));
        List<String> kept = new ArrayList<>();
        for (String caution : all) {
            if (all.stream().noneMatch(other -> other.length() > caution.length() && other.startsWith(caution))) {
                kept.add(caution);
            }
        }
        kept.add("Estimates from the numbers shown, no certificate. Plates, manuals and local rules come first; a licensed structural engineer "
                + "confirms structures, floors and lifting.");
        return kept;
    }
}
