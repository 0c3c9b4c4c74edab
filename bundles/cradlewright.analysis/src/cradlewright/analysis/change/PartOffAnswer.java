package cradlewright.analysis.change;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingChange;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Weight;
import java.util.List;
import java.util.stream.Stream;

/**
 * What one visit answers with a part on and with it off.
 *
 * @param subject the visit
 * @param standing how the car stands or hangs with the part on
 * @param weightNow what is carried with the part on
 * @param weightThen what is carried with the part off
 * @param now answers with the part on
 * @param then answers with the part off
 * @param changes what differs; answers about the part itself end with it and are none
 */
public record PartOffAnswer(Subject subject, Standing standing, Weight weightNow, Weight weightThen, List<Finding> now, List<Finding> then,
        List<FindingChange> changes) {

    /** Copies the lists. */
    public PartOffAnswer {
        now = List.copyOf(now);
        then = List.copyOf(then);
        changes = List.copyOf(changes);
    }

    /** Returns the verdict with the part on. */
    public Verdict verdictNow() {
        return worst(now);
    }

    /** Returns the verdict with the part off; not milder than CAN'T SAY when something that held is not answered any more. */
    public Verdict verdictThen() {
        boolean open = changes.stream().anyMatch(change -> change.kind() == FindingChange.Kind.UNANSWERED);
        return open ? worst(then).worse(Verdict.CANT_SAY) : worst(then);
    }

    /** Returns the graver of both: whoever takes the part off works on the car as it stands now. */
    public Verdict verdict() {
        return verdictNow().worse(verdictThen());
    }

    /** Returns the changes of some kinds, gravest first. */
    public List<FindingChange> changes(FindingChange.Kind... kinds) {
        return changes.stream().filter(change -> Stream.of(kinds).anyMatch(change.kind()::equals))
                .sorted((a, b) -> weight(b).compareTo(weight(a))).toList();
    }

    private static Verdict weight(FindingChange change) {
        return change.after().or(change::before).orElseThrow().verdict();
    }

    private static Verdict worst(List<Finding> findings) {
        return findings.isEmpty() ? Verdict.CANT_SAY : Verdict.worst(findings.stream().map(Finding::verdict).toList());
    }
}
