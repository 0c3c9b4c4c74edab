package cradlewright.ui.start;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.overview.CarDate;
import cradlewright.analysis.overview.CarLine;
import cradlewright.analysis.overview.CarOverview;
import cradlewright.analysis.overview.ShopDay;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.report.Alike;
import cradlewright.report.FindingWords;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;

/**
 * A car as the start page shows it.
 *
 * @param line where it stands, on what, what it waits for
 * @param verdict the gravest answer about it; nothing while there is none
 * @param date the next day that is written down for it, in words
 * @param stops the gravest reason that does not hold, in words
 * @param first what to do first about it, in words
 */
record CarRow(CarLine line, Optional<Verdict> verdict, String date, String stops, String first) implements StartRow {

    static List<CarRow> of(ShopDay day, Optional<ShopAnswers> answers) {
        return day.cars().stream().map(line -> of(line, Optional.ofNullable(day.dates().get(line.carId())), day.day(), answers)).toList();
    }

    private static CarRow of(CarLine line, Optional<CarDate> next, LocalDate today, Optional<ShopAnswers> answers) {
        List<Finding> open = answers.map(all -> CarOverview.findings(line, all)).orElse(List.of()).stream()
                .filter(finding -> finding.verdict() != Verdict.HOLDS).toList();
        Optional<Verdict> verdict = answers.flatMap(all -> CarOverview.of(line, all).verdict());
        if (open.isEmpty()) {
            boolean nowhere = answers.isPresent() && line.stands().isEmpty();
            return new CarRow(line, verdict, date(next, today), nowhere ? line.standing() : "", nowhere ? Messages.Start_enterVisit : "");
        }
        return new CarRow(line, verdict, date(next, today), Alike.gather(open).get(0).reason(), FindingWords.first(open.get(0)));
    }

    private static String date(Optional<CarDate> next, LocalDate today) {
        return next.map(date -> NLS.bind(date.day().isBefore(today) ? Messages.Start_lateDate : Messages.Start_date, date.day(),
                date.what())).orElse("");
    }

    @Override
    public String id() {
        return line.carId();
    }

    @Override
    public String name() {
        return line.name();
    }
}
