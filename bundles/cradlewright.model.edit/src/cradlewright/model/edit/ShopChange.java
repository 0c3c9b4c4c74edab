package cradlewright.model.edit;

import cradlewright.model.io.ShopFile;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * An edit to be run by {@link ShopStack}: one step of undo, whatever it does.
 *
 * @param label what it does, as it stands after the words Undo and Redo
 * @param files the files whose objects it may change
 * @param body does it; when it throws, nothing of it is left
 */
public record ShopChange(String label, Set<ShopFile> files, Runnable body) {

    /**
     * Copies the files.
     *
     * @throws IllegalArgumentException when the label is blank or there are no files
     */
    public ShopChange {
        files = Set.copyOf(files);
        if (label.isBlank() || files.isEmpty()) {
            throw new IllegalArgumentException("a change needs a label and at least one file");
        }
    }

    /** Makes a change of one file. */
    public ShopChange(String label, ShopFile file, Runnable body) {
        this(label, Set.of(file), body);
    }

    /** Makes one change of several, run in their order; each sees what those before it did. */
    public static ShopChange chain(String label, List<ShopChange> links) {
        List<ShopChange> all = List.copyOf(links);
        Set<ShopFile> files = new LinkedHashSet<>();
        all.forEach(link -> files.addAll(link.files()));
        return new ShopChange(label, files, () -> all.forEach(link -> link.body().run()));
    }
}
