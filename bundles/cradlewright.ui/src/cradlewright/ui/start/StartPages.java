package cradlewright.ui.start;

import cradlewright.ui.shop.OpenShopListener;
import cradlewright.ui.shop.WorkingShop;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Brings the start page to the front: when the window comes up, when another shop is opened, and when somebody asks for it. */
public final class StartPages extends AbstractHandler {

    /** Shows the page now and whenever another shop is opened or the shop is closed, which closes all editors. */
    public static void install(IWorkbench workbench) {
        show(workbench.getActiveWorkbenchWindow());
        WorkingShop.addOpenListener(new OpenShopListener() {
            @Override
            public void opened(WorkingShop shop) {
                show(workbench.getActiveWorkbenchWindow());
            }

            @Override
            public void closing(WorkingShop shop) {
                workbench.getDisplay().asyncExec(() -> show(workbench.getActiveWorkbenchWindow()));
            }
        });
    }

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        show(HandlerUtil.getActiveWorkbenchWindowChecked(event));
        return null;
    }

    private static void show(IWorkbenchWindow window) {
        IWorkbenchPage page = window == null ? null : window.getActivePage();
        if (page != null) {
            try {
                page.openEditor(StartInput.ONLY, StartEditor.ID);
            } catch (PartInitException e) {
                ILog.of(StartPages.class).log(e.getStatus());
            }
        }
    }
}
