package cradlewright.report.sheet;

import cradlewright.analysis.check.Finding;
import cradlewright.report.UnitSystem;
import java.util.List;

/** Several answers under one heading, gravest first, those that say the same once. */
public final class GroupSheet {

    private final UnitSystem units;

    /** Makes a writer that shows numbers in these units. */
    public GroupSheet(UnitSystem units) {
        this.units = units;
    }

    /** Writes the answers. */
    public Sheet write(String title, List<Finding> findings) {
        SheetBuilder out = new SheetBuilder().title(title);
        ReasonRows.addAll(out, findings, units);
        CautionLines.add(out, List.of(), findings);
        return out.build();
    }
}
