package cradlewright.model.io;

import java.nio.file.Path;
import java.util.Objects;

/**
 * What became of a wish to save.
 *
 * @param kind what happened
 * @param path the file that was written; for {@link Kind#REFUSED} the one that was not touched
 * @param message one sentence for the person who saved
 */
public record SaveOutcome(Kind kind, Path path, String message) {

    /** What happened. */
    public enum Kind {
        /** The file is on disk. */
        SAVED,
        /** Somebody else changed the file meanwhile: theirs stands, mine was written beside it. */
        KEPT_AS_MINE,
        /** Nothing was written. */
        REFUSED
    }

    /** Refuses null. */
    public SaveOutcome {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(message, "message");
    }
}
