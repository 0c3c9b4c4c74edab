package cradlewright.ui.parts;

import java.util.List;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.EditorActionBarContributor;

/** Lets the entries of the Edit menu do their work in the parts list that is in front. */
public final class PartsBars extends EditorActionBarContributor {

    private static final List<ActionFactory> ENTRIES = List.of(ActionFactory.COPY, ActionFactory.PASTE, ActionFactory.CUT,
            ActionFactory.DELETE, ActionFactory.SELECT_ALL);

    @Override
    public void setActiveEditor(IEditorPart editor) {
        IActionBars bars = getActionBars();
        ENTRIES.forEach(entry -> bars.setGlobalActionHandler(entry.getId(), ((PartsEditor) editor).global(entry)));
        bars.updateActionBars();
    }
}
