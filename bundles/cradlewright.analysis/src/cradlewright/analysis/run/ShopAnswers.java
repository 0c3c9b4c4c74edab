package cradlewright.analysis.run;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** The answers of one run. */
public final class ShopAnswers {

    private final long snapshot;
    private final String shop;
    private final List<Subject> subjects;
    private final List<Finding> findings;
    private final Map<Subject, List<Finding>> about;

    /**
     * Makes answers; the lists are copied.
     *
     * @param snapshot number of the snapshot they are for
     * @param shop name of the shop
     * @param subjects what was asked about, in order
     * @param findings all answers, in order of subjects and checks
     */
    public ShopAnswers(long snapshot, String shop, List<Subject> subjects, List<Finding> findings) {
        this.snapshot = snapshot;
        this.shop = shop;
        this.subjects = List.copyOf(subjects);
        this.findings = List.copyOf(findings);
        // Once for all: a page over a large shop asks about each subject several times.
        about = this.findings.stream().sorted(Comparator.comparing(Finding::verdict).reversed())
                .collect(Collectors.groupingBy(Finding::subject));
    }

    /** Returns the number of the snapshot they are for. */
    public long snapshot() {
        return snapshot;
    }

    /** Returns the name of the shop. */
    public String shop() {
        return shop;
    }

    /** Returns what was asked about, in order. */
    public List<Subject> subjects() {
        return subjects;
    }

    /** Returns all answers, in order of subjects and checks. */
    public List<Finding> findings() {
        return findings;
    }

    /** Returns the gravest verdict of all; CAN'T SAY when no check had an answer. */
    public Verdict worst() {
        return findings.isEmpty() ? Verdict.CANT_SAY : Verdict.worst(findings.stream().map(Finding::verdict).toList());
    }

    /** Returns the findings about one subject, gravest first, else in the order of the checks. */
    public List<Finding> about(Subject subject) {
        return List.copyOf(about.getOrDefault(subject, List.of()));
    }

    /** Returns the gravest verdict about one subject; HOLDS when nothing was asked about it, see {@link #about}. */
    public Verdict worst(Subject subject) {
        return Verdict.worst(about(subject).stream().map(Finding::verdict).toList());
    }

    /** Returns how many findings have each verdict. */
    public Map<Verdict, Long> counts() {
        return findings.stream().collect(Collectors.groupingBy(Finding::verdict, Collectors.counting()));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ShopAnswers answers && snapshot == answers.snapshot && shop.equals(answers.shop)
                && subjects.equals(answers.subjects) && findings.equals(answers.findings);
    }

    @Override
    public int hashCode() {
        return Objects.hash(snapshot, shop, subjects, findings);
    }

    @Override
    public String toString() {
        return shop + ", snapshot " + snapshot + ", " + subjects + ": " + findings;
    }
}
