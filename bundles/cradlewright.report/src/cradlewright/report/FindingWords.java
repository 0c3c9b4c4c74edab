package cradlewright.report;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Harm;
import cradlewright.analysis.check.Input;
import cradlewright.analysis.check.Remedy;
import cradlewright.quantity.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The sentences around the numbers of a finding, the same in text and HTML. */
public final class FindingWords {

    private static final String GENERAL = "Estimates from the numbers shown, no certificate. Plates, manuals and local rules come first; "
            + "a licensed structural engineer confirms structures, floors and lifting.";

    /** What nothing gives or takes, so that it is found and allowed. */
    private static final Set<Dimension> FOUND = EnumSet.of(Dimension.LENGTH, Dimension.RATIO, Dimension.TEMPERATURE, Dimension.SPEED);
    /** Harms that are named; those that follow are counted. */
    private static final int HARMS_SHOWN = 3;

    private FindingWords() {
    }

    /** Returns what is asked against what can be given, then every other number that has to stand beside the answer; may be empty. */
    public static String numbers(Finding finding, UnitSystem units) {
        return Stream.of(against(finding, units), shown(finding, units)).filter(text -> !text.isEmpty()).collect(Collectors.joining("; "));
    }

    /** Returns the numbers beside those asked and given that an answer cannot be read without; may be empty. */
    public static String shown(Finding finding, UnitSystem units) {
        return finding.inputs().stream().filter(Input::shown).map(input -> input.name() + " " + units.text(input.amount()))
                .collect(Collectors.joining("; "));
    }

    /**
     * Returns "asked 1200 N, can give 2500 N (48 %)", for what nobody gives "found 6.0 mm, at most 3.0 mm allowed (200 %)", where the
     * demand is a least one "found 40 N, at least 60 N wanted", or nothing when the finding has no numbers.
     */
    public static String against(Finding finding, UnitSystem units) {
        if (finding.demand().isEmpty() || finding.capacity().isEmpty()) {
            return "";
        }
        String demand = units.text(finding.demand().get());
        String capacity = units.text(finding.capacity().get());
        if (finding.atLeast()) {
            return "found " + capacity + ", at least " + demand + " wanted";
        }
        boolean scaleWithoutZero = finding.demand().get().dimension() == Dimension.TEMPERATURE;
        String use = scaleWithoutZero ? "" : finding.use().filter(u -> u < 100).map(FindingWords::percent).orElse("");
        return FOUND.contains(finding.demand().get().dimension()) ? "found " + demand + ", at most " + capacity + " allowed" + use
                : "asked " + demand + ", can give " + capacity + use;
    }

    /** Returns what stands before a remedy: whether to do it, what it would lead to, or how trying ended. */
    public static String head(Remedy remedy) {
        return switch (remedy.proof()) {
            case HARMS -> "but then";
            case NONE -> "tried";
            default -> "to do";
        };
    }

    /** Returns the words of a remedy of a finding with how far it is known to help and what it harms. */
    public static String remedy(Finding finding, Remedy remedy) {
        String then = remedy.after().map(verdict -> "then " + verdict.word()).orElse("");
        return remedy.words() + switch (remedy.proof()) {
            case ADVICE, NONE -> "";
            case ALONE -> " (" + then + " by this check alone; the others were not asked again)";
            case UNTRIED -> " (not worked out)";
            case MENDS -> " (" + then + ", and nothing else gets worse)";
            case HARMS -> " Would mend this (" + then + "), but then: " + harms(finding, remedy.harms());
        };
    }

    /** Returns what to do first about a finding: find out what is missing, else what is known to help, else advice; may be empty. */
    public static String first(Finding finding) {
        if (!finding.missing().isEmpty()) {
            return "find out: " + finding.missing().get(0);
        }
        return Stream.of(Remedy.Proof.MENDS, Remedy.Proof.ALONE, Remedy.Proof.ADVICE, Remedy.Proof.UNTRIED, Remedy.Proof.NONE)
                .flatMap(proof -> finding.remedies().stream().filter(remedy -> remedy.proof() == proof)).findFirst()
                .map(remedy -> remedy(finding, remedy)).orElse("");
    }

    private static String harms(Finding finding, List<Harm> harms) {
        List<String> gravest = harms.stream().sorted(Comparator.comparing(Harm::verdict).reversed()).map(harm -> harm(finding,
                harm)).distinct()
                .toList();
        String more = gravest.size() > HARMS_SHOWN ? "; and " + (gravest.size() - HARMS_SHOWN) + " more" : "";
        return gravest.stream().limit(HARMS_SHOWN).collect(Collectors.joining("; ")) + more + ".";
    }

    private static String harm(Finding finding, Harm harm) {
        String where = harm.subject().equals(finding.subject()) ? "" : harm.subject().label() + ", ";
        boolean named = harm.words().startsWith(harm.objectName());
        return where + harm.verdict().word() + " " + (named ? "" : harm.objectName() + ": ") + harm.words().replaceAll("\\.$", "");
    }

    /** Returns the reason with the object in front, unless the object is what was asked about or the reason begins with it. */
    public static String reason(Finding finding) {
        String object = finding.objectName();
        boolean clear = object.equals(finding.subject().label()) || finding.words().startsWith(object);
        return clear ? finding.words() : object + ": " + finding.words();
    }

    /** Returns what a finding rests on: by what the capacity is rated, and the clause; nothing is said twice. */
    public static String basis(Finding finding) {
        return Stream.of(finding.ratedBy(), finding.clause()).flatMap(text -> Stream.of(text.split("; "))).filter(text -> !text.isEmpty())
                .distinct().collect(Collectors.joining("; "));
    }

    /** Returns the cautions of some findings sentence by sentence, each sentence once, with the general one last. */
    public static List<String> cautions(List<Finding> findings) {
        Set<String> said = new HashSet<>();
        List<String> kept = new ArrayList<>();
        for (String caution : findings.stream().map(Finding::caution).distinct().toList()) {
            String rest = Stream.of(caution.split("(?<=\\.) ")).filter(said::add).collect(Collectors.joining(" "));
            if (!rest.isEmpty()) {
                kept.add(rest);
            }
        }
        kept.add(GENERAL);
        return kept;
    }

    private static String percent(double use) {
        return " (" + use(use) + ")";
    }

    /** Returns demand over capacity in words: "48 %"; with one more digit where whole ones would hide on which side of 100 it is. */
    public static String use(double use) {
        boolean close = use > 0.99 && use < 1.01;
        return String.format(Locale.ROOT, close ? "%.1f" : "%.0f", 100 * use) + " %";
    }
}
