package cradlewright.ui.edit;

import cradlewright.model.edit.ChangeRefused;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.io.ShopFile;
import cradlewright.ui.Messages;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.words.Nouns;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;

/** Runs changes of the open shop and tells the person when one is refused. */
public final class Edits {

    private Edits() {
    }

    /** Tells whether an object lies in a file of the open shop that may be written. */
    public static boolean possible(EObject object) {
        return file(object).filter(file -> file.state() == ShopFile.State.WRITABLE).isPresent();
    }

    /**
     * Runs a change of the file in which an object lies.
     *
     * @param label with a place for the object, such as {@code rename {0}}
     * @param object names the file and stands in the label
     * @param body does it
     */
    public static void run(String label, EObject object, Runnable body) {
        file(object).ifPresent(file -> run(new ShopChange(NLS.bind(label, Nouns.kindAndName(object)), file, body)));
    }

    /** Runs a change; returns whether it was done. */
    public static boolean run(ShopChange change) {
        try {
            WorkingShop.current().orElseThrow().stack().execute(change);
            return true;
        } catch (ChangeRefused e) {
            MessageDialog.openError(Display.getCurrent().getActiveShell(), Messages.Edit_refused, e.getMessage());
            return false;
        }
    }

    private static Optional<ShopFile> file(EObject object) {
        return WorkingShop.current().flatMap(shop -> shop.folder().fileOf(object));
    }
}
