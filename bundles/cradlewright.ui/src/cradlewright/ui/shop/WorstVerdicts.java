package cradlewright.ui.shop;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.run.ShopAnswers;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The gravest verdict about each thing, by its id, so that a tree or a diagram need not search the answers for every row. */
public final class WorstVerdicts {

    /** What is known before there are answers: nothing. */
    public static final WorstVerdicts NONE = new WorstVerdicts(Map.of());

    private final Map<String, Verdict> worst;

    private WorstVerdicts(Map<String, Verdict> worst) {
        this.worst = worst;
    }

    /**
     * Gathers them: for a car with its visits, a visit, a dolly or gear that of everything that was asked about it, for any other thing that
     * of the findings that point at it.
     */
    public static WorstVerdicts of(ShopAnswers answers) {
        Map<String, Verdict> worst = new HashMap<>();
        for (Subject subject : answers.subjects()) {
            worst.putIfAbsent(subject.ownerId(), Verdict.HOLDS);
            subject.visitId().ifPresent(visit -> worst.putIfAbsent(visit, Verdict.HOLDS));
        }
        for (Finding finding : answers.findings()) {
            worst.merge(finding.subject().ownerId(), finding.verdict(), Verdict::worse);
            finding.subject().visitId().ifPresent(visit -> worst.merge(visit, finding.verdict(), Verdict::worse));
            worst.merge(finding.objectId(), finding.verdict(), Verdict::worse);
        }
        return new WorstVerdicts(worst);
    }

    /** Returns the gravest verdict about a thing; nothing when no check says anything about it. */
    public Optional<Verdict> of(String id) {
        return Optional.ofNullable(worst.get(id));
    }
}
