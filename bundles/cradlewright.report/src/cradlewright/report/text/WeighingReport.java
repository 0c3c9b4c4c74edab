package cradlewright.report.text;

import cradlewright.analysis.check.Amount;
import cradlewright.mechanics.mass.CellReading;
import cradlewright.mechanics.mass.MassFormulas;
import cradlewright.mechanics.mass.PoseWeighing;
import cradlewright.mechanics.mass.PoseWeighing.Level;
import cradlewright.report.BalanceWords;
import cradlewright.report.UnitSystem;
import java.util.List;

/** What scales under something level say: first mass and balance point, then each reading with its share. */
public final class WeighingReport {

    private static final double COVERAGE = 2;
    private static final List<String> CAUTIONS = List.of(
            "How high the balance point lies does not follow from readings taken level.",
            "How the scales share the mass depends on height and stiffness of what stands on them; only their sums count.",
            "The scales must carry upright: wheels free to turn, nothing leaning against it, nobody on it, each at zero before.",
            "Results are estimates from the numbers entered, no certificate.");

    private final UnitSystem units;

    /** Makes a writer that shows numbers in these units. */
    public WeighingReport(UnitSystem units) {
        this.units = units;
    }

    /**
     * Writes what the readings say.
     *
     * @param cells at least one, not all of them zero; positions in the axes of the marks
     */
    public String write(List<CellReading> cells) {
        Level level = PoseWeighing.level(cells.stream().filter(cell -> cell.mass() > 0).toList());
        StringBuilder out = new StringBuilder();
        out.append(Lines.wrap("", "Weighs " + giveOrTake(Amount.mass(level.mass()), Amount.mass(COVERAGE * level.massUncertainty()))
                + "."));
        out.append(Lines.wrap("", "Balance point " + BalanceWords.along(level.x(), units) + ", give or take "
                + units.text(Amount.length(COVERAGE * level.xUncertainty())) + "; " + BalanceWords.across(level.y(), units)
                + ", give or take "
                + units.text(Amount.length(COVERAGE * level.yUncertainty())) + ", 19 times in 20."));
        out.append(String.format("%n  %-10s %12s %12s %12s %8s%n", "reading", "back", "right", "shows", "share").replace("\r\n", "\n"));
        for (int i = 0; i < cells.size(); i++) {
            CellReading cell = cells.get(i);
            out.append(String.format("  %-10d %12s %12s %12s %7.1f%%\n", i + 1, units.text(Amount.length(cell.position().x())),
                    units.text(Amount.length(cell.position().y())), units.text(Amount.mass(cell.mass())),
                    100 * cell.mass() / level.mass()));
        }
        out.append('\n').append(Lines.wrap("rests on ", MassFormulas.POSE_LEVEL.source() + " [" + MassFormulas.POSE_LEVEL.id() + "]"));
        out.append("\nCautions\n");
        CAUTIONS.forEach(caution -> out.append(Lines.wrap("  - ", caution)));
        return out.toString();
    }

    private String giveOrTake(Amount amount, Amount by) {
        return units.text(amount) + ", give or take " + units.text(by);
    }
}
