package cradlewright.ui.tests;

import cradlewright.diagrams.shared.SceneNode;
import cradlewright.report.scene.Item;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Shape;
import java.util.List;
import java.util.Optional;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditDomain;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.palette.PaletteContainer;
import org.eclipse.gef.palette.PaletteEntry;
import org.eclipse.gef.palette.ToolEntry;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;

/** A diagram in its editor: finds its parts, moves the mouse over it, presses keys. */
final class Diagram {

    private final GraphicalViewer viewer;

    Diagram(IEditorPart editor) {
        viewer = editor.getAdapter(GraphicalViewer.class);
    }

    GraphicalViewer viewer() {
        return viewer;
    }

    Control canvas() {
        return viewer.getControl();
    }

    GraphicalEditPart part(String id, Kind kind, Projection projection) {
        for (Object child : viewer.getContents().getChildren()) {
            GraphicalEditPart part = (GraphicalEditPart) child;
            if (item(part).key().equals(new Item.Key(id, kind, Optional.of(projection)))) {
                return part;
            }
        }
        throw new AssertionError("no " + kind + " " + id);
    }

    static Item item(Object part) {
        return ((SceneNode) ((GraphicalEditPart) part).getModel()).item();
    }

    /** Returns the texts of an item seen from above, in order. */
    List<String> texts(String id, Kind kind) {
        return item(part(id, kind, Projection.PLAN)).shapes().stream().filter(Shape.Label.class::isInstance)
                .map(shape -> ((Shape.Label) shape).text()).toList();
    }

    void mouse(int type, int x, int y, int button, int state) {
        Event event = new Event();
        event.x = x;
        event.y = y;
        event.button = button;
        event.count = 1;
        event.stateMask = state;
        canvas().notifyListeners(type, event);
        Bot.settle();
    }

    /** Presses the button there and goes sideways with it, to where the button is still pressed. */
    void drag(Point from, int right) {
        mouse(SWT.MouseDown, from.x, from.y, 1, 0);
        int step = right / 4;
        for (int i = 1; i <= 4; i++) {
            mouse(SWT.MouseMove, from.x + i * step, from.y, 0, SWT.BUTTON1);
        }
    }

    void click(Point at) {
        mouse(SWT.MouseMove, at.x, at.y, 0, 0);
        mouse(SWT.MouseDown, at.x, at.y, 1, 0);
        mouse(SWT.MouseUp, at.x, at.y, 1, SWT.BUTTON1);
    }

    /** Returns where the middle of one of the shapes of a part is on the canvas. */
    Point middle(GraphicalEditPart part, int shape) {
        Shape seen = item(part).shapes().get(shape);
        Point at = new Point((int) Math.round((seen.box().left() + seen.box().right()) / 2),
                (int) Math.round((seen.box().top() + seen.box().bottom()) / 2));
        part.getFigure().translateToAbsolute(at);
        return at;
    }

    void key(int code, int state) {
        Event event = new Event();
        event.keyCode = code;
        event.stateMask = state;
        canvas().notifyListeners(SWT.KeyDown, event);
        Bot.settle();
    }

    /** Opens the field for numbers of a part. */
    Text field(GraphicalEditPart part) {
        part.performRequest(new Request(RequestConstants.REQ_DIRECT_EDIT));
        return Bot.find((Canvas) canvas(), Text.class, text -> true);
    }

    /** Takes up a tool of the palette. */
    void take(String label) {
        EditDomain domain = viewer.getEditDomain();
        domain.getPaletteViewer().setActiveTool(tool(domain.getPaletteViewer().getPaletteRoot(), label));
    }

    private static ToolEntry tool(PaletteContainer container, String label) {
        for (Object child : container.getChildren()) {
            if (child instanceof ToolEntry tool && label.equals(((PaletteEntry) child).getLabel())) {
                return tool;
            }
            ToolEntry deeper = child instanceof PaletteContainer inner ? tool(inner, label) : null;
            if (deeper != null) {
                return deeper;
            }
        }
        return null;
    }
}
