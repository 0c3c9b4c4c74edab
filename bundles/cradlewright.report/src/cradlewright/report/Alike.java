package cradlewright.report;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Answers that say the same of several objects, so that people read it once: four lift points that nobody looked at are one thing to do.
 * Numbers stay with their objects.
 *
 * @param findings at least one, alike but for object and numbers
 */
public record Alike(List<Finding> findings) {

    private static final String EACH = "each of them";

    /** What has to be equal, the object left open in every sentence. */
    private record Sameness(String check, Verdict verdict, String words, String situation, boolean named, boolean numbers, String basis,
            List<String> missing, List<Remedy> remedies) {

        static Sameness of(Finding finding) {
            return new Sameness(finding.check(), finding.verdict(), Alike.open(finding, finding.words()), finding.situation(),
                    finding.objectName().equals(finding.subject().label()), finding.demand().isPresent(), FindingWords.basis(finding),
                    finding.missing().stream().map(text -> Alike.open(finding, text)).toList(),
                    finding.remedies().stream().map(remedy -> open(finding, remedy)).toList());
        }

        /** What was worked out for one object alone is not worked out for several at once, so it keeps its object. */
        private static Remedy open(Finding finding, Remedy remedy) {
            return remedy.after().isPresent() ? remedy : remedy.withWords(Alike.open(finding, remedy.words()));
        }
    }

    /** Copies the list. */
    public Alike {
        findings = List.copyOf(findings);
    }

    /** Gathers the findings that are alike, each group at the place of its first. */
    public static List<Alike> gather(List<Finding> findings) {
        Map<Sameness, List<Finding>> groups = new LinkedHashMap<>();
        findings.forEach(finding -> groups.computeIfAbsent(Sameness.of(finding), same -> new ArrayList<>()).add(finding));
        return groups.values().stream().map(Alike::new).toList();
    }

    /** Returns the first, which stands for all in what does not depend on the object. */
    public Finding first() {
        return findings.get(0);
    }

    /** Returns the reason with the objects in front. */
    public String reason() {
        if (findings.size() == 1) {
            return FindingWords.reason(first());
        }
        return String.join(", ", names()) + ": " + each(first().words());
    }

    /** Returns the numbers, one line for each object unless all are equal; what is equal for all stands once. None when there are none. */
    public List<String> numbers(UnitSystem units) {
        if (equal(finding -> FindingWords.numbers(finding, units))) {
            return Stream.of(FindingWords.numbers(first(), units)).filter(text -> !text.isEmpty()).toList();
        }
        boolean once = equal(finding -> FindingWords.shown(finding, units));
        List<String> lines = new ArrayList<>();
        for (Finding finding : findings) {
            lines.add(finding.objectName() + ": " + (once ? FindingWords.against(finding, units) : FindingWords.numbers(finding, units)));
        }
        String shown = FindingWords.shown(first(), units);
        if (once && !shown.isEmpty()) {
            lines.add(shown);
        }
        return lines;
    }

    private boolean equal(Function<Finding, String> text) {
        return findings.stream().map(text).distinct().count() == 1;
    }

    /** Returns what is missing. */
    public List<String> missing() {
        return first().missing().stream().map(this::each).toList();
    }

    /** Returns what to do. */
    public List<Remedy> remedies() {
        return first().remedies().stream().map(remedy -> remedy.withWords(each(remedy.words()))).toList();
    }

    private List<String> names() {
        return findings.stream().map(Finding::objectName).toList();
    }

    private String each(String text) {
        if (findings.size() == 1) {
            return text;
        }
        String open = open(first(), text);
        String said = open.startsWith("\0") ? "Each" + open.substring(1) : open;
        return said.replace("\0", EACH);
    }

    /** Puts a mark in place of the object's name, which stands by itself and not within another word. */
    private static String open(Finding finding, String text) {
        String name = finding.objectName();
        if (name.isEmpty() || name.equals(finding.subject().label())) {
            return text;
        }
        return Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(name) + "(?![\\p{L}\\p{N}])").matcher(text)
                .replaceAll(Matcher.quoteReplacement("\0"));
    }
}
