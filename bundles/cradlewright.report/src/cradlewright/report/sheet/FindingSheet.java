package cradlewright.report.sheet;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.mechanics.formula.Formula;
import cradlewright.report.FindingWords;
import cradlewright.report.UnitSystem;
import java.util.List;

/** Everything behind one answer: the reason, the numbers, what to do, what went in, the formulas with their sources, the cautions. */
public final class FindingSheet {

    private final CheckCatalogue catalogue;
    private final UnitSystem units;

    /**
     * Makes a writer.
     *
     * @param catalogue the checks in force, which know what they ask
     * @param units in which numbers are shown
     */
    public FindingSheet(CheckCatalogue catalogue, UnitSystem units) {
        this.catalogue = catalogue;
        this.units = units;
    }

    /** Writes what is behind an answer. */
    public Sheet write(Finding finding) {
        SheetBuilder out = new SheetBuilder().title(finding.subject().label())
                .sentence(finding.verdict().word() + ". " + FindingWords.reason(finding));
        catalogue.find(finding.check()).ifPresent(check -> out.row("asks", check.info().title()));
        out.row("numbers", FindingWords.numbers(finding, units)).row("when", finding.situation());
        finding.missing().forEach(missing -> out.row("missing", missing));
        finding.remedies().forEach(remedy -> out.row(FindingWords.head(remedy), FindingWords.remedy(finding, remedy)));
        out.row("rests on", FindingWords.basis(finding) + " [" + finding.check() + "]");
        if (!finding.inputs().isEmpty()) {
            out.title("Numbers put in");
            finding.inputs().forEach(input -> out.row(input.name(), units.text(input.amount()) + ", " + input.origin()));
        }
        finding.formulas().forEach(formula -> write(out, formula));
        CautionLines.add(out, List.of(), List.of(finding));
        return out.build();
    }

    private static void write(SheetBuilder out, Formula formula) {
        out.title(formula.title()).sentence(formula.expression()).row("source", formula.source()).row("limits", formula.limits())
                .row("left out", formula.neglected());
    }
}
