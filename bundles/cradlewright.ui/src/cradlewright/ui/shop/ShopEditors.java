package cradlewright.ui.shop;

import cradlewright.model.io.ShopFile;
import cradlewright.ui.Messages;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.part.FileEditorInput;

/** Opens the editors of files of the open shop. */
public final class ShopEditors {

    private ShopEditors() {
    }

    /** Opens the file in which an object lies and shows the object there. */
    public static void open(IWorkbenchPage page, String objectId) {
        WorkingShop.current().flatMap(shop -> shop.fileOf(objectId)).ifPresent(file -> {
            IEditorPart editor = open(page, file);
            ShowsObject shows = editor == null ? null : Adapters.adapt(editor, ShowsObject.class);
            if (shows != null) {
                shows.show(objectId);
            }
        });
    }

    /** Opens a file; returns null, after telling the person why, when that is not possible. */
    public static IEditorPart open(IWorkbenchPage page, ShopFile file) {
        WorkingShop shop = WorkingShop.current().orElseThrow();
        IFile resource = shop.resource(file);
        String why;
        try {
            if (resource.exists()) {
                return page.openEditor(new FileEditorInput(resource), IDE.getEditorDescriptor(resource, true, false).getId(), true,
                        IWorkbenchPage.MATCH_INPUT | IWorkbenchPage.MATCH_ID);
            }
            why = NLS.bind(Messages.Open_notOnDisk, file.path());
        } catch (PartInitException e) {
            why = e.getStatus().getMessage();
        }
        MessageDialog.openInformation(page.getWorkbenchWindow().getShell(), Messages.Start_title, why);
        return null;
    }
}
