package cradlewright.ui.help;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows help: the page that is named behind this class in the plugin, else the one of the part in which somebody works. */
public final class ShowHelp extends AbstractHandler implements IExecutableExtension {

    private String wanted = "";

    @Override
    public void setInitializationData(IConfigurationElement element, String property, Object page) {
        wanted = page == null ? "" : page.toString();
    }

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
        IWorkbenchPart part = page.getActivePart();
        try {
            HelpView view = (HelpView) page.showView(HelpView.ID);
            if (wanted.isEmpty()) {
                view.showPageOf(part);
            } else {
                view.choose(wanted);
            }
        } catch (PartInitException e) {
            throw new ExecutionException(e.getMessage(), e);
        }
        return null;
    }
}
