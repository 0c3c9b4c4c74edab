package cradlewright.diagrams.shared;

import cradlewright.model.edit.ChangeRefused;
import cradlewright.model.edit.HistoryEntry;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.edit.ShopEvent;
import cradlewright.model.edit.ShopListener;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.io.ShopFile;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.commands.CompoundCommand;

/**
 * The command stack that a diagram shows to GEF. It has no state of its own: everything is in the stack of the shop, which all editors
 * share. Several commands run together become one change. Disposing it leaves the history alone.
 */
public final class SharedGefStack extends CommandStack {

    /** Stands for an entry of the shop's history; only its label is asked for. */
    private static final class Label extends Command {
        Label(String label) {
            super(label);
        }
    }

    private final ShopStack stack;
    private final ShopFile file;
    private final Consumer<ChangeRefused> refused;
    private final ShopListener listener = this::happened;

    /**
     * Makes a stack for one editor.
     *
     * @param file the file of the editor, for {@link #isDirty()}
     * @param refused hears about changes that the shop refuses, in words for people
     */
    public SharedGefStack(ShopStack stack, ShopFile file, Consumer<ChangeRefused> refused) {
        this.stack = stack;
        this.file = file;
        this.refused = refused;
        stack.addListener(listener);
    }

    @Override
    public void execute(Command command) {
        if (command == null || !command.canExecute()) {
            return;
        }
        List<ShopChange> changes = new ArrayList<>();
        gather(command, changes);
        if (changes.isEmpty()) {
            return;
        }
        try {
            stack.execute(changes.size() == 1 ? changes.get(0) : ShopChange.chain(label(command, changes), changes));
        } catch (ChangeRefused e) {
            refused.accept(e);
        }
    }

    private static void gather(Command command, List<ShopChange> changes) {
        if (command instanceof CompoundCommand several) {
            for (Object each : several.getCommands()) {
                gather((Command) each, changes);
            }
        } else if (command instanceof ShopEdit edit) {
            changes.add(edit.change());
        } else {
            throw new IllegalStateException("a diagram must change the shop by a ShopEdit, not by " + command.getClass().getName());
        }
    }

    private static String label(Command command, List<ShopChange> changes) {
        return command.getLabel() == null || command.getLabel().isBlank() ? changes.get(0).label() : command.getLabel();
    }

    /** GEF's own actions still listen in the old way. */
    @SuppressWarnings("deprecation")
    private void tellListeners() {
        notifyListeners();
    }

    private void happened(ShopEvent event) {
        tellListeners();
        switch (event.kind()) {
            case DONE -> notifyListeners(new Label(event.label()), POST_EXECUTE);
            case UNDONE -> notifyListeners(new Label(event.label()), POST_UNDO);
            case REDONE -> notifyListeners(new Label(event.label()), POST_REDO);
            default -> {
                // The history is as it was.
            }
        }
    }

    @Override
    public boolean canUndo() {
        return stack.canUndo();
    }

    @Override
    public boolean canRedo() {
        return stack.canRedo();
    }

    @Override
    public void undo() {
        stack.undo();
    }

    @Override
    public void redo() {
        stack.redo();
    }

    @Override
    public Command getUndoCommand() {
        return stack.nextUndo().map(HistoryEntry::label).map(Label::new).orElse(null);
    }

    @Override
    public Command getRedoCommand() {
        return stack.nextRedo().map(HistoryEntry::label).map(Label::new).orElse(null);
    }

    @Override
    public Object[] getCommands() {
        return stack.history().stream().map(entry -> new Label(entry.label())).toArray();
    }

    @Override
    public boolean isDirty() {
        return stack.isDirty(file);
    }

    /** Does nothing: the shop's stack knows what was saved. */
    @Override
    public void markSaveLocation() {
        tellListeners();
    }

    /** Does nothing: the history belongs to the shop, not to an editor. */
    @Override
    public void flush() {
        tellListeners();
    }

    /** Stops listening; the history stays. */
    @Override
    public void dispose() {
        stack.removeListener(listener);
    }
}
