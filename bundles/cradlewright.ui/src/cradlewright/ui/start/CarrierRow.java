package cradlewright.ui.start;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.overview.CarStand;
import cradlewright.analysis.overview.CarrierLine;
import cradlewright.analysis.overview.ShopDay;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.report.Alike;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.osgi.util.NLS;

/**
 * A dolly or a piece of lifting gear as the start page shows it.
 *
 * @param line who uses it, when it is due
 * @param verdict the gravest answer about it, by itself and in the visits that are on; nothing while there is none
 * @param reason the gravest reason that does not hold, in words
 * @param due when its next examination is due, in words
 */
record CarrierRow(CarrierLine line, Optional<Verdict> verdict, String reason, String due) implements StartRow {

    static List<CarrierRow> of(ShopDay day, Optional<ShopAnswers> answers) {
        Set<String> on = day.cars().stream().flatMap(car -> car.stands().stream()).map(CarStand::visitId).collect(Collectors.toSet());
        return day.carriers().stream().map(line -> of(line, day.day(), on, answers)).toList();
    }

    private static CarrierRow of(CarrierLine line, LocalDate today, Set<String> on, Optional<ShopAnswers> answers) {
        List<Finding> about = answers.map(ShopAnswers::findings).orElse(List.of()).stream().filter(finding -> about(line, on, finding))
                .sorted(Comparator.comparing(Finding::verdict).reversed()).toList();
        List<Finding> open = about.stream().filter(finding -> finding.verdict() != Verdict.HOLDS).toList();
        Optional<Verdict> verdict = about.isEmpty() ? Optional.empty() : Optional.of(about.get(0).verdict());
        return new CarrierRow(line, verdict, open.isEmpty() ? "" : Alike.gather(open).get(0).reason(), line.due()
                .map(due -> due.isBefore(today) ? NLS.bind(Messages.Start_overdue, due) : due.toString()).orElse(""));
    }

    /** What is asked about it by itself, and what points at it in a visit that is on: a dolly that tips with today's car on it. */
    private static boolean about(CarrierLine line, Set<String> on, Finding finding) {
        return finding.subject().visitId().map(visit -> on.contains(visit) && finding.objectId().equals(line.id()))
                .orElse(finding.subject().ownerId().equals(line.id()));
    }

    @Override
    public String id() {
        return line.id();
    }

    @Override
    public String name() {
        return line.name();
    }
}
