package cradlewright.benchmarks.window;

import cradlewright.diagrams.shared.SceneNode;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.model.vehicle.WorkKind;
import cradlewright.model.vehicle.WorkPoint;
import cradlewright.quantity.Direction;
import cradlewright.quantity.Position;
import cradlewright.ui.shop.ShopEditors;
import cradlewright.ui.shop.WorkingShop;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;

/**
 * Drags one figure of the drawing of a car to and fro, with few and with many other figures on the drawing, and measures from the event of
 * the mouse to the end of the painting that it causes. The rounds with few and many take turns.
 */
final class Dragging {

    private static final int FEW = 5;
    private static final int MANY = 500;
    private static final int ROUNDS = 3;
    private static final int MOVES = 50;
    private static final int WARM_UP = 20;
    private static final double PERCENTILE = 0.95;
    private static final int NANOS_IN_MICRO = 1000;

    private final Display display;
    private final IWorkbenchPage page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    private final WorkingShop shop = WorkingShop.current().orElseThrow();
    private final IdSource ids = IdSource.secure();

    Dragging(Display display) {
        this.display = display;
    }

    void run() {
        Car car = shop.folder().cars().stream().filter(each -> each.getName().contains("white")).findFirst().orElseThrow();
        ShopFile file = shop.folder().fileOf(car).orElseThrow();
        int[] figures = new int[2];
        long[][] times = new long[2][ROUNDS * MOVES];
        for (int round = -1; round < ROUNDS; round++) {
            for (int many = 0; many < 2; many++) {
                System.err.println("round " + round + (many == 1 ? ", many" : ", few"));
                int wanted = many == 1 ? MANY : FEW;
                shop.stack().execute(new ShopChange("points", file, () -> fill(car, wanted)));
                IEditorPart editor = ShopEditors.open(page, file);
                GraphicalViewer viewer = editor.getAdapter(GraphicalViewer.class);
                settle();
                figures[many] = viewer.getContents().getChildren().size();
                String last = car.getWorkPoints().get(car.getWorkPoints().size() - 1).getId();
                long[] measured = drag(viewer, last, round < 0 ? WARM_UP : MOVES);
                if (round >= 0) {
                    System.arraycopy(measured, 0, times[many], round * MOVES, MOVES);
                }
                page.closeAllEditors(false);
                shop.stack().undo();
                settle();
            }
        }
        long few = percentile(times[0]);
        long much = percentile(times[1]);
        Measuring.print(String.format(Locale.ROOT, "drag, from the event of the mouse to the end of painting, %d moves: p95 %d us with %d "
                + "figures, %d us with %d figures", ROUNDS * MOVES, few, figures[0], much, figures[1]));
        Measuring.print(String.format(Locale.ROOT, "p95 ratio %.3f", (double) much / few));
    }

    /** Puts points where somebody leans all over the car; a drawing shows each from above and from the side. */
    private void fill(Car car, int figures) {
        car.getWorkPoints().clear();
        for (int i = 0; i < Math.max(1, figures / 2); i++) {
            WorkPoint point = ids.give(VehicleFactory.eINSTANCE.createWorkPoint());
            point.setName("p" + i);
            point.setKind(WorkKind.LEAN);
            point.setDirection(Direction.parse("0 0 -1"));
            point.setPosition(Position.of(100 + 37 * i % 3700, -600 + 53 * i % 1200, 500 + 29 * i % 600));
            car.getWorkPoints().add(point);
        }
    }

    private long[] drag(GraphicalViewer viewer, String id, int moves) {
        Control canvas = viewer.getControl();
        Point from = middle(viewer, id);
        long[] taken = new long[moves];
        mouse(canvas, SWT.MouseDown, from.x, from.y, 1, 0);
        for (int i = 0; i < moves; i++) {
            int offset = 8 + i % 40;
            long begun = System.nanoTime();
            mouse(canvas, SWT.MouseMove, from.x - offset, from.y, 0, SWT.BUTTON1);
            viewer.flush();
            canvas.update();
            taken[i] = (System.nanoTime() - begun) / NANOS_IN_MICRO;
            while (display.readAndDispatch()) {
                continue;
            }
        }
        Event escape = new Event();
        escape.keyCode = SWT.ESC;
        escape.character = SWT.ESC;
        canvas.notifyListeners(SWT.KeyDown, escape);
        mouse(canvas, SWT.MouseUp, from.x, from.y, 1, SWT.BUTTON1);
        return taken;
    }

    private static Point middle(GraphicalViewer viewer, String id) {
        List<?> children = viewer.getContents().getChildren();
        Optional<GraphicalEditPart> part = children.stream().map(GraphicalEditPart.class::cast)
                .filter(each -> each.getModel() instanceof SceneNode node && node.item().id().equals(id)).findFirst();
        Point at = part.orElseThrow(() -> new IllegalStateException("the drawing does not show " + id)).getFigure().getBounds().getCenter();
        part.get().getFigure().translateToAbsolute(at);
        return at;
    }

    private static void mouse(Control canvas, int type, int x, int y, int button, int state) {
        Event event = new Event();
        event.x = x;
        event.y = y;
        event.button = button;
        event.count = 1;
        event.stateMask = state;
        canvas.notifyListeners(type, event);
    }

    private void settle() {
        long end = System.currentTimeMillis() + 1500;
        while (System.currentTimeMillis() < end) {
            if (!display.readAndDispatch()) {
                display.timerExec(20, () -> { });
                display.sleep();
            }
        }
    }

    private static long percentile(long[] times) {
        long[] sorted = times.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.ceil(PERCENTILE * sorted.length) - 1];
    }
}
