package cradlewright.diagrams.shared;

import cradlewright.report.scene.Box;
import cradlewright.report.scene.Palette;
import cradlewright.report.scene.Scene;
import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Shell;

/** Prints a drawing on one page, dark on white, as large as it fits. */
public final class ScenePrint {

    /** Width of the margins over that of the page. */
    private static final double MARGIN = 0.03;

    private ScenePrint() {
    }

    /** Asks for a printer and prints. */
    public static void ask(Shell shell, Scene scene, String family) {
        PrinterData wanted = new PrintDialog(shell).open();
        if (wanted == null) {
            return;
        }
        Printer printer = new Printer(wanted);
        try {
            if (printer.startJob(scene.title()) && printer.startPage()) {
                double device = (double) printer.getDPI().y / shell.getDisplay().getDPI().y;
                GC gc = new GC(printer);
                page(gc, printer, printer.getClientArea(), scene, family, device);
                gc.dispose();
                printer.endPage();
            }
            printer.endJob();
        } finally {
            printer.dispose();
        }
    }

    /**
     * Paints a drawing into a page.
     *
     * @param device how many pixels of the page take the room of one of the screen
     */
    public static void page(GC gc, Device on, Rectangle page, Scene scene, String family, double device) {
        Box sheet = scene.sheet();
        double margin = MARGIN * page.width;
        double scale = Math.min((page.width - 2 * margin) / sheet.width(), (page.height - 2 * margin) / sheet.height());
        Paints paints = new Paints(on, Palette.PAPER, family);
        SWTGraphics graphics = new SWTGraphics(gc);
        try {
            graphics.translate((int) (page.x + margin - scale * sheet.left()), (int) (page.y + margin - scale * sheet.top()));
            new ScenePainter(paints, device).paint(graphics, scene.shapes(), scale);
        } finally {
            graphics.dispose();
            paints.dispose();
        }
    }
}
