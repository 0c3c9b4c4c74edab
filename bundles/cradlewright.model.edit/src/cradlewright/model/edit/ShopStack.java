package cradlewright.model.edit;

import cradlewright.model.base.FileRoot;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.SaveOutcome;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.model.io.Words;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;

/**
 * The only way to change a shop, one for each shop in memory: runs changes, takes them back and does them again, knows which
 * files want saving, and tells who listens.
 *
 * <p>The thread that makes the stack owns the shop; every method refuses other threads. A change of an object that does not go
 * through the stack throws at once where it happens. It cannot be taken back, because EMF may be half way through it, so the
 * history ends there. That other threads read objects is not noticed.
 *
 * <p>Each file has the number of its state; undo leads back to the earlier number, a new change to one never used before. A
 * file wants saving when its number is not the one it was saved with, also when undo went back behind the moment of saving.
 *
 * <p>Costs grow with what a change does, not with the size of the shop; only a change that takes an object out searches the
 * whole shop for what still refers to it.
 */
public final class ShopStack {

    private enum Phase {
        REST, RECORDING, REPLAYING, TENDING_FILES, TELLING
    }

    private final Thread owner = Thread.currentThread();
    private final ShopFolder shop;
    private final ShopWriter writer;
    private final List<HistoryEntry> history = new ArrayList<>();
    private final Map<ShopFile, Long> states = new HashMap<>();
    private final Map<ShopFile, Long> saved = new HashMap<>();
    private final List<ShopListener> listeners = new CopyOnWriteArrayList<>();
    private Phase phase = Phase.REST;
    private Recording recording;
    private int cursor;
    private long lastState;

    /**
     * Puts the shop under watch.
     *
     * @param shop read or begun on this thread
     * @param writer saves the files of this shop
     */
    public ShopStack(ShopFolder shop, ShopWriter writer) {
        this.shop = shop;
        this.writer = writer;
        shop.resourceSet().eAdapters().add(new ShopWatch(new ShopWatch.Report() {
            @Override
            public void changed(Notification told) {
                noteChange(told);
            }

            @Override
            public void filesChanged() {
                noteFiles();
            }
        }));
    }

    /** Returns the shop. */
    public ShopFolder shop() {
        return shop;
    }

    /** Adds somebody who wants to hear what happens; the same one is told once. */
    public void addListener(ShopListener listener) {
        requireOwner();
        if (!listeners.contains(listener)) {
            listeners.add(listener);
        }
    }

    /** Removes a listener. */
    public void removeListener(ShopListener listener) {
        requireOwner();
        listeners.remove(listener);
    }

    /**
     * Runs a change. What was undone before can then no longer be done again. A change that changes nothing leaves no entry.
     *
     * @throws ChangeRefused when it names a file that cannot be written, changes a file that it did not name, changes an id,
     *     takes away the top of a file, or leaves an object without an id of its own or a reference that leads nowhere;
     *     nothing of it is left then
     * @throws RuntimeException what the body threw; nothing of it is left then
     */
    public void execute(ShopChange change) {
        begin(Phase.RECORDING, change.label());
        recording = new Recording(shop, change);
        try {
            requireWritable(change);
            change.body().run();
            Optional<String> objection = recording.objection();
            if (objection.isPresent()) {
                throw new ChangeRefused(change.label(), objection.get());
            }
        } catch (RuntimeException | Error e) {
            phase = Phase.REPLAYING;
            takeBack(recording.steps(), e);
            throw e;
        } finally {
            phase = Phase.REST;
        }
        if (!recording.steps().isEmpty()) {
            enter(change.label());
        }
    }

    /** Returns whether there is something to take back. */
    public boolean canUndo() {
        requireOwner();
        return cursor > 0;
    }

    /** Returns whether there is something to do again. */
    public boolean canRedo() {
        requireOwner();
        return cursor < history.size();
    }

    /** Returns what {@link #undo()} takes back. */
    public Optional<HistoryEntry> nextUndo() {
        return canUndo() ? Optional.of(history.get(cursor - 1)) : Optional.empty();
    }

    /** Returns what {@link #redo()} does again. */
    public Optional<HistoryEntry> nextRedo() {
        return canRedo() ? Optional.of(history.get(cursor)) : Optional.empty();
    }

    /** Returns all entries, the oldest first; those from {@link #cursor()} on are undone. */
    public List<HistoryEntry> history() {
        requireOwner();
        return Collections.unmodifiableList(history);
    }

    /** Returns how many entries are done. */
    public int cursor() {
        requireOwner();
        return cursor;
    }

    /**
     * Takes the last change back.
     *
     * @throws IllegalStateException when there is none
     */
    public void undo() {
        HistoryEntry entry = nextUndo().orElseThrow(() -> new IllegalStateException("there is nothing to undo"));
        replay(entry, entry::undo);
        cursor--;
        entry.spans().forEach((file, span) -> states.put(file, span.before()));
        tell(new ShopEvent(ShopEvent.Kind.UNDONE, entry.label(), entry.files()));
    }

    /**
     * Does the change again that was taken back last.
     *
     * @throws IllegalStateException when there is none
     */
    public void redo() {
        HistoryEntry entry = nextRedo().orElseThrow(() -> new IllegalStateException("there is nothing to redo"));
        replay(entry, entry::redo);
        cursor++;
        entry.spans().forEach((file, span) -> states.put(file, span.after()));
        tell(new ShopEvent(ShopEvent.Kind.REDONE, entry.label(), entry.files()));
    }

    /** Returns the number of the state of a file: the same number means the same contents. */
    public long state(ShopFile file) {
        requireOwner();
        return states.getOrDefault(file, 0L);
    }

    /** Returns whether a file differs from what was last read or saved, or was never saved. */
    public boolean isDirty(ShopFile file) {
        return state(file) != saved.getOrDefault(file, 0L) || !file.onDisk();
    }

    /** Returns the files that want saving, in the order of the shop; those that could not be read are never among them. */
    public List<ShopFile> dirtyFiles() {
        return shop.files().stream().filter(file -> file.state() == ShopFile.State.WRITABLE && isDirty(file)).toList();
    }

    /**
     * Saves one file. It wants saving still when the outcome is not {@link SaveOutcome.Kind#SAVED}.
     *
     * @throws IOException when the disk does not take it
     */
    public SaveOutcome save(ShopFile file) throws IOException {
        begin(Phase.TENDING_FILES, "save");
        SaveOutcome outcome;
        try {
            outcome = writer.save(file);
        } finally {
            phase = Phase.REST;
        }
        if (outcome.kind() == SaveOutcome.Kind.SAVED) {
            saved.put(file, state(file));
            tell(new ShopEvent(ShopEvent.Kind.SAVED, file.path(), Set.of(file)));
        }
        return outcome;
    }

    /** Returns the bytes of a file as they would be saved now; empty when its contents cannot be written. */
    public Optional<byte[]> bytes(ShopFile file) {
        begin(Phase.TENDING_FILES, "write");
        try {
            return writer.bytes(file);
        } finally {
            phase = Phase.REST;
        }
    }

    /**
     * Puts a new file into the shop, as {@link ShopFolder#add} does. This is not part of the history: a file comes and goes
     * with the folder.
     */
    public ShopFile add(FileKind kind, String name, FileRoot root) {
        begin(Phase.TENDING_FILES, "add a file");
        ShopFile file;
        try {
            file = shop.add(kind, name, root);
        } finally {
            phase = Phase.REST;
        }
        tell(new ShopEvent(ShopEvent.Kind.ADDED, file.path(), Set.of(file)));
        return file;
    }

    private void requireOwner() {
        if (Thread.currentThread() != owner) {
            throw new IllegalStateException("the shop belongs to thread " + owner.getName() + ", not to "
                    + Thread.currentThread().getName() + "; hand over records instead of objects");
        }
    }

    private void begin(Phase next, String label) {
        requireOwner();
        if (phase != Phase.REST) {
            throw new IllegalStateException("\"" + label + "\" cannot begin while another change, a save or a listener is under way");
        }
        phase = next;
    }

    private void requireWritable(ShopChange change) {
        for (ShopFile file : change.files()) {
            if (!shop.files().contains(file)) {
                throw new ChangeRefused(change.label(), file.path() + " is not a file of this shop");
            }
            if (file.state() != ShopFile.State.WRITABLE) {
                throw new ChangeRefused(change.label(), file.path() + " " + file.state().words());
            }
        }
    }

    private void enter(String label) {
        history.subList(cursor, history.size()).clear();
        long next = ++lastState;
        Map<ShopFile, HistoryEntry.Span> spans = new LinkedHashMap<>();
        recording.files().forEach(file -> spans.put(file, new HistoryEntry.Span(state(file), next)));
        spans.keySet().forEach(file -> states.put(file, next));
        HistoryEntry entry = new HistoryEntry(label, recording.steps(), spans);
        history.add(entry);
        cursor++;
        tell(new ShopEvent(ShopEvent.Kind.DONE, label, entry.files()));
    }

    private void replay(HistoryEntry entry, Runnable steps) {
        begin(Phase.REPLAYING, entry.label());
        try {
            steps.run();
        } catch (RuntimeException e) {
            endHistory(entry.files());
            throw e;
        } finally {
            phase = Phase.REST;
        }
    }

    private void takeBack(List<Step> steps, Throwable why) {
        try {
            HistoryEntry.undo(steps);
        } catch (RuntimeException e) {
            why.addSuppressed(e);
            endHistory(recording.files());
        }
    }

    /** What lies in the files is no longer what the history knows: it must not be replayed, and the files want saving. */
    private void endHistory(Set<ShopFile> changed) {
        history.clear();
        cursor = 0;
        changed.forEach(file -> states.put(file, ++lastState));
    }

    private void noteChange(Notification told) {
        requireOwner();
        switch (phase) {
            case RECORDING:
                recording.add(told);
                break;
            case REPLAYING:
            case TENDING_FILES:
                break;
            default:
                String what = "the top of a file";
                if (told.getNotifier() instanceof EObject object) {
                    shop.fileOf(object).ifPresent(file -> endHistory(Set.of(file)));
                    what = Words.name(object);
                }
                throw new IllegalStateException(what + " was changed outside a change; run it through the stack");
        }
    }

    private void noteFiles() {
        requireOwner();
        if (phase == Phase.RECORDING) {
            recording.filesChanged();
        }
        if (phase != Phase.TENDING_FILES) {
            throw new IllegalStateException("a file was added or removed outside the stack; add it through the stack");
        }
    }

    private void tell(ShopEvent event) {
        phase = Phase.TELLING;
        try {
            for (ShopListener listener : listeners) {
                tell(listener, event);
            }
        } finally {
            phase = Phase.REST;
        }
    }

    /** The event has happened whatever a listener makes of it, so its fault goes to the thread, not to who made the change. */
    private void tell(ShopListener listener, ShopEvent event) {
        try {
            listener.happened(event);
        } catch (RuntimeException e) {
            owner.getUncaughtExceptionHandler().uncaughtException(owner, e);
        }
    }
}
