package cradlewright.diagrams.shared;

import org.eclipse.gef.ui.actions.ActionBarContributor;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.actions.ActionFactory;

/** Hands the actions of the active diagram to the menus of the window; undo and redo are the window's own. */
public final class DiagramBars extends ActionBarContributor {

    /** An editor that only says what is wrong with its file has no actions. */
    @Override
    public void setActiveEditor(IEditorPart editor) {
        if (editor.getAdapter(ActionRegistry.class) != null) {
            super.setActiveEditor(editor);
        }
    }

    @Override
    protected void buildActions() {
        // The actions belong to each diagram.
    }

    @Override
    protected void declareGlobalActionKeys() {
        addGlobalActionKey(ActionFactory.DELETE.getId());
        addGlobalActionKey(ActionFactory.SELECT_ALL.getId());
        addGlobalActionKey(ActionFactory.PRINT.getId());
    }
}
