package cradlewright.ui;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

/** What stands on the display until the window comes: our own drawing, name and version. Drawn from vectors, so crisp at any scale. */
final class Splash {

    private static final int MARGIN = 20;
    private static final int TITLE_HEIGHT = 22;
    private static final int TEXT_RGB = 0x2b;

    private static Splash open;

    private final Shell shell;
    private final Image picture;
    private final Font large;

    private Splash(Display display) {
        Bundle bundle = FrameworkUtil.getBundle(Splash.class);
        picture = ImageDescriptor.createFromURL(bundle.getEntry("icons/splash.svg")).createImage(display);
        FontData font = display.getSystemFont().getFontData()[0];
        large = new Font(display, font.getName(), TITLE_HEIGHT, SWT.BOLD);
        shell = new Shell(display, SWT.NO_TRIM | SWT.ON_TOP | SWT.NO_FOCUS);
        shell.setText(Messages.Start_title);
        Rectangle size = picture.getBounds();
        Rectangle screen = display.getPrimaryMonitor().getBounds();
        shell.setBounds(screen.x + (screen.width - size.width) / 2, screen.y + (screen.height - size.height) / 2, size.width, size.height);
        String version = NLS.bind(Messages.Splash_version, bundle.getVersion().getMajor() + "." + bundle.getVersion().getMinor());
        shell.addListener(SWT.Paint, event -> draw(event.gc, version));
        shell.addListener(SWT.Dispose, event -> {
            picture.dispose();
            large.dispose();
        });
    }

    private void draw(GC gc, String version) {
        gc.drawImage(picture, 0, 0);
        gc.setForeground(new Color(TEXT_RGB, TEXT_RGB, TEXT_RGB));
        gc.drawText(version, MARGIN, MARGIN + 2 * TITLE_HEIGHT, true);
        gc.setFont(large);
        gc.drawText(Messages.Start_title, MARGIN, MARGIN, true);
    }

    /** Shows it, unless somebody asked for none with the option of the platform. */
    static void show(Display display, Iterable<String> words) {
        for (String word : words) {
            if (word.equals("-nosplash")) {
                return;
            }
        }
        open = new Splash(display);
        open.shell.open();
        open.shell.update();
        while (display.readAndDispatch()) {
            continue;
        }
    }

    /** Takes it away. */
    static void close() {
        if (open != null && !open.shell.isDisposed()) {
            open.shell.dispose();
        }
        open = null;
    }
}
