package cradlewright.ui.recovery;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.handlers.HandlerUtil;

/** Asks again about the copies that were put off. */
public final class AskAgain extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        Recovery recovery = Recovery.installed();
        if (recovery.left().isEmpty()) {
            MessageDialog.openInformation(HandlerUtil.getActiveShell(event), Messages.Left_title, Messages.Left_nothing);
        } else {
            LeftDialog.ask(recovery);
        }
        return null;
    }
}
