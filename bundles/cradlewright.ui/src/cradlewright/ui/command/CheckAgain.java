package cradlewright.ui.command;

import cradlewright.ui.shop.WorkingShop;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Works the answers out again, for today. */
public final class CheckAgain extends AbstractHandler {

    /** Its command. */
    public static final String COMMAND = "cradlewright.ui.checkAgain";

    @Override
    public Object execute(ExecutionEvent event) {
        WorkingShop.current().ifPresent(WorkingShop::checkNow);
        return null;
    }
}
