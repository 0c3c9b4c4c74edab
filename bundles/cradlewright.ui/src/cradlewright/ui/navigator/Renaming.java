package cradlewright.ui.navigator;

import cradlewright.model.base.Named;
import cradlewright.ui.Messages;
import cradlewright.ui.edit.Edits;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ColumnViewerEditor;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationStrategy;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerEditor;

/** Lets names be written over in the tree, when asked for and not by a second click. */
final class Renaming extends EditingSupport {

    private final TextCellEditor field;

    Renaming(TreeViewer tree) {
        super(tree);
        field = new TextCellEditor(tree.getTree());
        TreeViewerEditor.create(tree, new ColumnViewerEditorActivationStrategy(tree) {
            @Override
            protected boolean isEditorActivationEvent(ColumnViewerEditorActivationEvent event) {
                return event.eventType == ColumnViewerEditorActivationEvent.PROGRAMMATIC;
            }
        }, ColumnViewerEditor.DEFAULT);
    }

    /** Tells whether a row has a name that can be written over. */
    static boolean possible(Object row) {
        return row instanceof Named named && Edits.possible(named);
    }

    @Override
    protected CellEditor getCellEditor(Object row) {
        return field;
    }

    @Override
    protected boolean canEdit(Object row) {
        return possible(row);
    }

    @Override
    protected Object getValue(Object row) {
        String name = ((Named) row).getName();
        return name == null ? "" : name;
    }

    @Override
    protected void setValue(Object row, Object value) {
        String name = ((String) value).strip();
        Named named = (Named) row;
        if (!name.equals(getValue(row))) {
            Edits.run(Messages.Edit_rename, named, () -> named.setName(name.isEmpty() ? null : name));
        }
    }
}
