package cradlewright.analysis.facts;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What the tag of lifting gear says.
 *
 * @param tag number on the tag
 * @param last day of the last examination
 * @param due day on which the next one is due
 */
public record Examination(Optional<String> tag, Optional<LocalDate> last, Optional<LocalDate> due) {

    /** Tells whether the next examination was due before a day. */
    public boolean overdue(LocalDate day) {
        return due.isPresent() && due.get().isBefore(day);
    }
}
