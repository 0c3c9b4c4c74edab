package cradlewright.report.sheet;

import cradlewright.analysis.check.Finding;
import cradlewright.report.FindingWords;
import java.util.List;

/** What stands at the foot of every answer. */
final class CautionLines {

    private CautionLines() {
    }

    /** Adds own cautions of the sheet, then those of the findings that it rests on, each once. */
    static void add(SheetBuilder sheet, List<String> own, List<Finding> findings) {
        sheet.title("Cautions");
        own.forEach(sheet::point);
        FindingWords.cautions(findings).forEach(sheet::point);
    }
}
