package cradlewright.model.edit;

import cradlewright.model.io.ShopFile;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A change that was done and can be taken back and done again. */
public final class HistoryEntry {

    /**
     * The two states of a file between which the entry leads.
     *
     * @param before number of the state before the change
     * @param after number of the state after it
     */
    record Span(long before, long after) {
    }

    private final String label;
    private final List<Step> steps;
    private final Map<ShopFile, Span> spans;

    HistoryEntry(String label, List<Step> steps, Map<ShopFile, Span> spans) {
        this.label = label;
        this.steps = steps;
        this.spans = spans;
    }

    /** Returns what it does, as it stands after the words Undo and Redo. */
    public String label() {
        return label;
    }

    /** Returns the files that it changed, which may be fewer than the change asked for. */
    public Set<ShopFile> files() {
        return Collections.unmodifiableSet(spans.keySet());
    }

    Map<ShopFile, Span> spans() {
        return spans;
    }

    void undo() {
        undo(steps);
    }

    /** Takes steps back, the last one first. */
    static void undo(List<Step> steps) {
        for (int i = steps.size() - 1; i >= 0; i--) {
            steps.get(i).undo();
        }
    }

    void redo() {
        steps.forEach(Step::redo);
    }
}
