package cradlewright.benchmarks.window;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.WorkbenchAdvisor;

/** The least that the platform can be started with: one window with an empty page. */
public final class BareApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        Display display = PlatformUI.createDisplay();
        PlatformUI.createAndRunWorkbench(display, new WorkbenchAdvisor() {
            @Override
            public String getInitialWindowPerspectiveId() {
                return "cradlewright.benchmarks.window.empty";
            }
        });
        display.dispose();
        return EXIT_OK;
    }

    @Override
    public void stop() {
        // The measurement closes the window.
    }
}
