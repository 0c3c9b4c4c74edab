package cradlewright.report.sheet;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.overview.CarLine;
import cradlewright.analysis.overview.CarOverview;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.report.UnitSystem;
import java.util.List;
import java.util.Optional;

/** A car on the day of the answers: where it stands, then what stops, is not known or is tight, gravest first, with what to do. */
public final class CarSheet {

    private final UnitSystem units;

    /** Makes a writer that shows numbers in these units. */
    public CarSheet(UnitSystem units) {
        this.units = units;
    }

    /** Writes the sheet; without answers only where the car stands. */
    public Sheet write(CarLine line, Optional<ShopAnswers> answers) {
        SheetBuilder out = new SheetBuilder().title(line.name()).row("stands", line.standing()).row("work", line.waiting());
        answers.map(all -> CarOverview.findings(line, all)).ifPresent(findings -> tell(line, findings, out));
        return out.build();
    }

    private void tell(CarLine line, List<Finding> findings, SheetBuilder out) {
        if (line.stands().isEmpty()) {
            out.row(Verdict.CANT_SAY.word(), "Nobody wrote down where it stands today.");
            out.inner("to do", "Enter a visit that covers this day, with its stage and setup.");
        }
        ReasonRows.addAll(out, findings, units);
        if (findings.isEmpty() && !line.stands().isEmpty()) {
            out.sentence("None of the questions asked arises here.");
        }
        CautionLines.add(out, List.of(), findings);
    }
}
