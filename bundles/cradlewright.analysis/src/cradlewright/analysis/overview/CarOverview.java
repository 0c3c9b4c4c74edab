package cradlewright.analysis.overview;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.run.ShopAnswers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A car on the day of the answers with the gravest answer about it.
 *
 * @param line where it stands, on what, what it waits for
 * @param verdict the gravest answer about the car itself and its visits that are on; CAN'T SAY when no visit is on; nothing when no check
 *     that was asked has an answer
 */
public record CarOverview(CarLine line, Optional<Verdict> verdict) {

    /** Returns the cars that were asked about, in the order of the files. */
    public static List<CarOverview> of(ShopAnswers answers, Reader reader) {
        return answers.subjects().stream().filter(subject -> subject.scope() == Scope.CAR || subject.scope() == Scope.VISIT)
                .map(Subject::ownerId).distinct().flatMap(id -> reader.read(new CarLineKey(id)).stream())
                .map(line -> of(line, answers)).toList();
    }

    /** Returns a car with the gravest answer about it. */
    public static CarOverview of(CarLine line, ShopAnswers answers) {
        return new CarOverview(line, verdict(line, answers));
    }

    /** Returns the answers about a car itself and its visits that are on, gravest first, else in the order of the checks. */
    public static List<Finding> findings(CarLine line, ShopAnswers answers) {
        return answers.findings().stream().filter(finding -> about(finding.subject(), line))
                .sorted(Comparator.comparing(Finding::verdict).reversed()).toList();
    }

    private static Optional<Verdict> verdict(CarLine line, ShopAnswers answers) {
        List<Verdict> found = findings(line, answers).stream().map(Finding::verdict)
                .collect(Collectors.toCollection(ArrayList::new));
        if (line.stands().isEmpty()) {
            found.add(Verdict.CANT_SAY);
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(Verdict.worst(found));
    }

    private static boolean about(Subject subject, CarLine line) {
        return subject.ownerId().equals(line.carId()) && subject.visitId()
                .map(visit -> line.stands().stream().anyMatch(stand -> stand.visitId().equals(visit))).orElse(true);
    }
}
