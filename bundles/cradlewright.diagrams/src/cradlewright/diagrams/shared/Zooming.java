package cradlewright.diagrams.shared;

import cradlewright.diagrams.Messages;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.List;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.jface.action.IAction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;

/** How much of a sheet is shown, and how large. The whole is shown, whatever the size of the window, until somebody zooms. */
final class Zooming {

    /** Pixels of a screen for a mm at full size: 96 to the inch. */
    private static final double FULL_SIZE = 96 / 25.4;
    private static final double[] ZOOMS = {0.02, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.75, 1, 1.5, 2, FULL_SIZE, 6, 10, 20};
    private static final double CLOSER = 1.25;
    /** Of the zoom at which the drawn things fill the window, the least that texts may leave of it. */
    private static final double LEAST = 0.6;
    /** Height of texts on the screen, px. */
    private static final double TEXT = 12;
    /** Texts keep their height on the sheet while the zoom changes by less than this share. */
    private static final double TEXT_STEP = 1.1;

    private final ZoomManager manager;
    private final FigureCanvas canvas;
    private final ScenePage<?> page;
    private boolean fitting = true;
    private boolean zooming;
    private boolean awaiting = true;

    Zooming(ZoomManager manager, FigureCanvas canvas, ScenePage<?> page) {
        this.manager = manager;
        this.canvas = canvas;
        this.page = page;
        manager.setZoomLevels(ZOOMS);
        manager.setUIMultiplier(1 / FULL_SIZE);
    }

    /** Begins to follow the window and the person. */
    void follow() {
        manager.addZoomListener(now -> {
            fitting &= zooming;
            page.setText(text(now));
        });
        canvas.addListener(SWT.Resize, event -> fitAgain());
    }

    /** Returns what a person can do about it. */
    List<IAction> actions() {
        return List.of(new DiagramAction(Messages.Action_fit, Pictures.FIT.descriptor(), this::fit),
                new DiagramAction(Messages.Action_zoomIn, Pictures.CLOSER.descriptor(), () -> zoomTo(CLOSER * manager.getZoom())),
                new DiagramAction(Messages.Action_zoomOut, Pictures.FARTHER.descriptor(), () -> zoomTo(manager.getZoom() / CLOSER)));
    }

    /** Returns the height of texts for a zoom, mm: in steps, so that they do not jump with each turn of the wheel. */
    private static double text(double zoom) {
        return TEXT / Math.pow(TEXT_STEP, Math.rint(Math.log(zoom) / Math.log(TEXT_STEP)));
    }

    /** Hears that the scene has changed: the first numbers make the sheet larger, what comes later moves nothing. */
    void sceneChanged() {
        boolean first = awaiting && !page.awaiting();
        awaiting = page.awaiting();
        if (first) {
            fitAgain();
        }
    }

    private void fitAgain() {
        if (fitting && !page.nodes().isEmpty() && canvas.getSize().x > 1) {
            fit();
        }
    }

    /**
     * Shows the whole. Texts keep their height on the screen, so of the room first comes off what they take beside the drawn things;
     * where that leaves too little, texts stand beyond the edge.
     */
    private void fit() {
        Rectangle room = canvas.getClientArea();
        Dimension things = things();
        if (things.isEmpty()) {
            return;
        }
        zooming = true;
        fitting = true;
        double filled = Math.min((double) room.width / things.width, (double) room.height / things.height);
        zoomTo(filled);
        Box sheet = page.scene().sheet();
        double beside = (sheet.width() - things.width) * manager.getZoom();
        double above = (sheet.height() - things.height) * manager.getZoom();
        zoomTo(Math.max(LEAST * filled, Math.min((room.width - beside) / things.width, (room.height - above) / things.height)));
        zooming = false;
        Box shown = page.scene().sheet();
        canvas.getViewport().getUpdateManager().performUpdate();
        int spare = (int) Math.max(0, room.width - shown.width() * manager.getZoom());
        manager.setViewLocation(new Point((int) (shown.left() * manager.getZoom()) - spare / 2,
                (int) (shown.top() * manager.getZoom())));
    }

    private void zoomTo(double zoom) {
        manager.setZoom(Math.max(ZOOMS[0], Math.min(ZOOMS[ZOOMS.length - 1], zoom)));
    }

    /** Returns the room that the drawn things take without texts and what leads to them: both views one above the other, mm. */
    private Dimension things() {
        double width = 0;
        double height = 0;
        for (Projection projection : Projection.values()) {
            Box box = page.scene().items().stream()
                    .filter(item -> item.view().filter(projection::equals).isPresent() && item.kind() != Kind.SECTION)
                    .flatMap(item -> item.shapes().stream()).filter(shape -> shape.role() != Role.DIMENSION)
                    .filter(shape -> !(shape instanceof Shape.Label)).map(Shape::box).reduce(Box.EMPTY, Box::union);
            if (!box.isEmpty()) {
                width = Math.max(width, box.width());
                height += box.height();
            }
        }
        return new Dimension((int) Math.ceil(width), (int) Math.ceil(height));
    }
}
