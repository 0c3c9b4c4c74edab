package cradlewright.ui.command;

import cradlewright.ui.Messages;
import cradlewright.ui.shop.WorkingShop;
import java.nio.file.Path;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

/** Asks for the folder of a shop and opens it. A folder given as a parameter is opened without asking. */
public final class OpenShop extends AbstractHandler {

    /** Its command. */
    public static final String COMMAND = "cradlewright.ui.openShop";

    /** The parameter with the folder. */
    public static final String FOLDER = "cradlewright.ui.openShop.folder";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        String folder = event.getParameter(FOLDER);
        if (folder == null) {
            DirectoryDialog dialog = new DirectoryDialog(window.getShell());
            dialog.setText(Messages.Open_title);
            dialog.setMessage(Messages.Open_which);
            WorkingShop.current().ifPresent(shop -> dialog.setFilterPath(shop.folder().directory().toString()));
            folder = dialog.open();
        }
        if (folder != null) {
            ShopOpening.open(window, Path.of(folder));
        }
        return null;
    }
}
