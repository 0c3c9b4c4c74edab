package cradlewright.ui.command;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Closes the shop that is open. */
public final class CloseShop extends AbstractHandler {

    /** Its command. */
    public static final String COMMAND = "cradlewright.ui.closeShop";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        ShopOpening.close(HandlerUtil.getActiveWorkbenchWindowChecked(event));
        return null;
    }
}
