package cradlewright.model.edit;

import cradlewright.model.io.ShopFile;
import java.util.Set;

/**
 * What just happened to a shop.
 *
 * @param kind what
 * @param label label of the change; path of the file when one was saved or added
 * @param files the files it happened to
 */
public record ShopEvent(Kind kind, String label, Set<ShopFile> files) {

    /** What may happen. */
    public enum Kind {
        /** A change was done for the first time. */
        DONE,
        /** A change was taken back. */
        UNDONE,
        /** A change was done again. */
        REDONE,
        /** A file was saved; its objects are as they were. */
        SAVED,
        /** A new file was put into the shop. */
        ADDED;

        /** Returns whether objects changed. */
        public boolean changesObjects() {
            return this != SAVED;
        }
    }

    /** Copies the files. */
    public ShopEvent {
        files = Set.copyOf(files);
    }
}
