package cradlewright.ui.command;

import cradlewright.model.io.ShopFile;
import cradlewright.ui.Messages;
import cradlewright.ui.shop.ShopNotOpened;
import cradlewright.ui.shop.WorkingShop;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** Opens, exchanges and closes the shop of the window, never without asking about unsaved edits. */
public final class ShopOpening {

    private ShopOpening() {
    }

    /** Opens a shop in place of the one that is open; returns whether it is open now. Tells the person when it cannot be opened. */
    public static boolean open(IWorkbenchWindow window, Path folder) {
        if (!close(window)) {
            return false;
        }
        try {
            WorkingShop opened = WorkingShop.open(folder, Clock.systemDefaultZone());
            RecentShops.add(opened.folder().directory());
            return true;
        } catch (ShopNotOpened e) {
            RecentShops.remove(folder);
            MessageDialog.openError(window.getShell(), Messages.Open_title, e.getMessage());
            return false;
        }
    }

    /**
     * Opens a shop before there is a window: the one that is named, else the one that was open last.
     *
     * @return why the one that was named cannot be opened
     */
    public static Optional<String> openAtStart(Optional<Path> named) {
        Optional<Path> folder = named.or(() -> RecentShops.all().stream().findFirst());
        try {
            if (folder.isPresent()) {
                RecentShops.add(WorkingShop.open(folder.get(), Clock.systemDefaultZone()).folder().directory());
            }
            return Optional.empty();
        } catch (ShopNotOpened e) {
            RecentShops.remove(folder.get());
            return named.map(any -> e.getMessage());
        }
    }

    /** Reads the open shop again from disk; edits since it was saved are lost when the person agrees. */
    public static void readAgain(IWorkbenchWindow window) {
        WorkingShop.current().ifPresent(shop -> {
            List<ShopFile> dirty = shop.stack().dirtyFiles();
            if (dirty.isEmpty() || MessageDialog.openConfirm(window.getShell(), Messages.Revert_title,
                    NLS.bind(Messages.Revert_question, names(dirty)))) {
                put(window);
                open(window, shop.folder().directory());
            }
        });
    }

    /** Closes the open shop with its editors; returns false when the person wants to keep it open. */
    public static boolean close(IWorkbenchWindow window) {
        if (!PlatformUI.getWorkbench().saveAllEditors(true)) {
            return false;
        }
        put(window);
        return true;
    }

    private static void put(IWorkbenchWindow window) {
        window.getActivePage().closeAllEditors(false);
        WorkingShop.close();
    }

    private static String names(List<ShopFile> files) {
        return files.stream().map(ShopFile::path).collect(Collectors.joining("\n"));
    }
}
