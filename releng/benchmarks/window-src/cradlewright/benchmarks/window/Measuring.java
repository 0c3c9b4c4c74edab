package cradlewright.benchmarks.window;

import java.lang.management.ManagementFactory;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.PlatformUI;

/** Begins when the platform tells that the window is there; prints lines that begin with "measured" and closes the window. */
public final class Measuring implements IStartup {

    @Override
    public void earlyStartup() {
        String what = System.getProperty("cradlewright.measure", "");
        Display display = PlatformUI.getWorkbench().getDisplay();
        if (what.equals("start")) {
            // Served only when the window has drawn itself and waits for the mouse.
            display.syncExec(() -> {
                while (display.readAndDispatch()) {
                    continue;
                }
                print(Long.toString(System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime()));
                PlatformUI.getWorkbench().close();
            });
        } else if (what.equals("drag")) {
            display.asyncExec(() -> {
                try {
                    new Dragging(display).run();
                } catch (RuntimeException e) {
                    e.printStackTrace();
                } finally {
                    PlatformUI.getWorkbench().saveAllEditors(false);
                    PlatformUI.getWorkbench().close();
                }
            });
        }
    }

    static void print(String line) {
        System.out.println("measured " + line);
    }
}
