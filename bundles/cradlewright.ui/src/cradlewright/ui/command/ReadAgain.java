package cradlewright.ui.command;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Reads the shop again from disk, without the edits since it was saved. */
public final class ReadAgain extends AbstractHandler {

    /** Its command. */
    public static final String COMMAND = "cradlewright.ui.readAgain";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        ShopOpening.readAgain(HandlerUtil.getActiveWorkbenchWindowChecked(event));
        return null;
    }
}
