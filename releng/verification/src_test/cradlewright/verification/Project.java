package cradlewright.verification;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Where things lie, seen from the folder of this module. */
final class Project {

    private Project() {
    }

    /** Returns the root of the project. */
    static Path root() {
        return Path.of("").toAbsolutePath().getParent().getParent();
    }

    /** Returns the folder of the mechanics bundle. */
    static Path mechanics() {
        return root().resolve("bundles/cradlewright.mechanics");
    }

    /** Rows of a table with tabs, without comments. */
    static List<String[]> rows(Path file) {
        try {
            return Files.readAllLines(file).stream().filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> line.split("\t", -1)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
