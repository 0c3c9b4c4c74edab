package cradlewright.ui.ask;

import cradlewright.model.base.Identified;
import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Brings a question up, about the one thing that is selected if it is of the right sort. */
abstract class AskHandler extends AbstractHandler {

    @Override
    public final Object execute(ExecutionEvent event) throws ExecutionException {
        Optional<Object> selected = HandlerUtil.getCurrentSelection(event) instanceof IStructuredSelection several && several.size() == 1
                ? Optional.ofNullable(several.getFirstElement()) : Optional.empty();
        ask(view(HandlerUtil.getActiveWorkbenchWindowChecked(event)), selected);
        return null;
    }

    /** Brings the view of the questions up. */
    static AskView view(IWorkbenchWindow window) throws ExecutionException {
        try {
            return (AskView) window.getActivePage().showView(AskView.ID);
        } catch (PartInitException e) {
            throw new ExecutionException(AskView.ID, e);
        }
    }

    /** Asks about what is selected, or only brings the question up. */
    abstract void ask(AskView view, Optional<Object> selected);

    /** Returns the id of something of a type; empty when it is of another. */
    static String id(Optional<Object> selected, Class<? extends Identified> type) {
        return selected.filter(type::isInstance).map(type::cast).map(Identified::getId).orElse("");
    }
}
