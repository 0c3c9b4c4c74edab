package cradlewright.ui;

import java.io.IOException;
import java.net.URL;
import java.util.List;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;

/** The application with a window. One at a time uses the folder in which the window keeps what is its own. */
public final class ShopApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        String[] words = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        Display display = PlatformUI.createDisplay();
        try {
            if (!claimOwnFolder()) {
                return EXIT_OK;
            }
            Splash.show(display, List.of(Platform.getCommandLineArgs()));
            int code = PlatformUI.createAndRunWorkbench(display, new ShopWorkbenchAdvisor(words));
            return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
        } finally {
            Platform.getInstanceLocation().release();
            display.dispose();
        }
    }

    /** Tells the person when another window already uses the folder, or it cannot be written. */
    private static boolean claimOwnFolder() {
        Location own = Platform.getInstanceLocation();
        URL place = own.getURL() == null ? own.getDefault() : own.getURL();
        try {
            if (own.isSet() ? own.lock() : own.set(place, true)) {
                return true;
            }
            MessageDialog.openInformation(null, Messages.Start_title, NLS.bind(Messages.Start_second, place.getPath()));
        } catch (IOException e) {
            ILog.of(ShopApplication.class).error("The folder of the window cannot be used.", e);
            MessageDialog.openError(null, Messages.Start_title, NLS.bind(Messages.Start_noFolder, place.getPath(), e.getMessage()));
        }
        return false;
    }

    @Override
    public void stop() {
        IWorkbench workbench = PlatformUI.isWorkbenchRunning() ? PlatformUI.getWorkbench() : null;
        if (workbench != null) {
            workbench.getDisplay().syncExec(() -> workbench.close());
        }
    }
}
