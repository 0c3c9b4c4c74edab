package cradlewright.ui.parts;

import cradlewright.model.edit.ShopChange;
import java.util.List;
import java.util.Optional;

/**
 * What becomes of pasted rows, row by row, and the one change that does it.
 *
 * @param rows what becomes of each row
 * @param change enters what is not refused; nothing when there is nothing to enter
 */
record PastePlan(List<Row> rows, Optional<ShopChange> change) {

    /** What becomes of a row. */
    enum Kind {
        /** Something new is entered. */
        NEW,
        /** Something that is there is changed. */
        CHANGED,
        /** All is so already. */
        SAME,
        /** It is not entered. */
        REFUSED
    }

    /**
     * A row.
     *
     * @param number which row of the pasted ones, from 1
     * @param name what it is about
     * @param kind what becomes of it
     * @param words what exactly, or why not
     */
    record Row(int number, String name, Kind kind, String words) {
    }

    long count(Kind kind) {
        return rows.stream().filter(row -> row.kind == kind).count();
    }
}
