package cradlewright.ui.start;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.overview.CarrierLine;
import cradlewright.analysis.overview.ShopDay;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.report.Alike;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;

/**
 * A dolly or a piece of lifting gear as the start page shows it.
 *
 * @param line who uses it, when it is due
 * @param verdict the gravest answer about it by itself; nothing while there is none
 * @param reason the gravest reason that does not hold, in words
 * @param due when its next examination is due, in words
 */
record CarrierRow(CarrierLine line, Optional<Verdict> verdict, String reason, String due) implements StartRow {

    static List<CarrierRow> of(ShopDay day, Optional<ShopAnswers> answers) {
        return day.carriers().stream().map(line -> of(line, day.day(), answers)).toList();
    }

    private static CarrierRow of(CarrierLine line, LocalDate today, Optional<ShopAnswers> answers) {
        List<Finding> about = answers.map(all -> all.about(subject(line))).orElse(List.of());
        List<Finding> open = about.stream().filter(finding -> finding.verdict() != Verdict.HOLDS).toList();
        Optional<Verdict> verdict = about.isEmpty() ? Optional.empty() : Optional.of(about.get(0).verdict());
        return new CarrierRow(line, verdict, open.isEmpty() ? "" : Alike.gather(open).get(0).reason(), line.due()
                .map(due -> due.isBefore(today) ? NLS.bind(Messages.Start_overdue, due) : due.toString()).orElse(""));
    }

    private static Subject subject(CarrierLine line) {
        return new Subject(line.dolly() ? Scope.DOLLY : Scope.GEAR, line.id(), Optional.empty(), line.name());
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
