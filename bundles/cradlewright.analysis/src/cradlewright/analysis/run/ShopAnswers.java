package cradlewright.analysis.run;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The answers of one run.
 *
 * @param snapshot number of the snapshot they are for
 * @param shop name of the shop
 * @param subjects what was asked about, in order
 * @param findings all answers, in order of subjects and checks
 */
public record ShopAnswers(long snapshot, String shop, List<Subject> subjects, List<Finding> findings) {

    /** Copies the lists. */
    public ShopAnswers {
        subjects = List.copyOf(subjects);
        findings = List.copyOf(findings);
    }

    /** Returns the gravest verdict of all; CAN'T SAY when no check had an answer. */
    public Verdict worst() {
        return findings.isEmpty() ? Verdict.CANT_SAY : Verdict.worst(findings.stream().map(Finding::verdict).toList());
    }

    /** Returns the findings about one subject, gravest first, else in the order of the checks. */
    public List<Finding> about(Subject subject) {
        return findings.stream().filter(finding -> finding.subject().equals(subject))
                .sorted((a, b) -> b.verdict().compareTo(a.verdict())).toList();
    }

    /** Returns the gravest verdict about one subject; HOLDS when nothing was asked about it, see {@link #about}. */
    public Verdict worst(Subject subject) {
        return Verdict.worst(about(subject).stream().map(Finding::verdict).toList());
    }

    /** Returns how many findings have each verdict. */
    public Map<Verdict, Long> counts() {
        return findings.stream().collect(Collectors.groupingBy(Finding::verdict, Collectors.counting()));
    }
}
