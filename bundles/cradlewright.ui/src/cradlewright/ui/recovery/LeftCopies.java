package cradlewright.ui.recovery;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/**
 * What one run of the program left behind.
 *
 * @param run the folder
 * @param copies the copies that are whole
 * @param broken what is wrong with the others, each with its path
 */
record LeftCopies(Path run, List<UnsavedCopy> copies, List<String> broken) {

    LeftCopies {
        copies = List.copyOf(copies);
        broken = List.copyOf(broken);
    }

    /** Returns when the last copy was made. */
    Instant last() {
        return copies.stream().map(UnsavedCopy::made).max(Comparator.naturalOrder()).orElse(Instant.EPOCH);
    }
}
