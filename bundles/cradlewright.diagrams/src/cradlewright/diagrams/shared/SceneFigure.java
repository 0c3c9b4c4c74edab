package cradlewright.diagrams.shared;

import cradlewright.report.scene.Box;
import cradlewright.report.scene.Item;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/** Paints one item of a scene. One unit of the diagram is one mm of the sheet. */
public final class SceneFigure extends Figure {

    /** Room for the width of lines, mm. */
    private static final double RIM = 20;
    /** So near is a hit, px. */
    private static final double NEAR = 4;

    private final ScenePainter painter;
    private final DoubleSupplier zoom;
    private Item item;
    private List<Shape> before = List.of();
    private boolean linked;

    /** Makes a figure. */
    public SceneFigure(Item item, ScenePainter painter, DoubleSupplier zoom) {
        this.painter = painter;
        this.zoom = zoom;
        show(item);
    }

    /** Shows the item as it is now; asks to be painted only when it looks different. */
    public void show(Item next) {
        item = next;
        if (!next.shapes().equals(before)) {
            before = next.shapes();
            setBounds(bounds(next.box()));
            repaint();
        }
    }

    private static Rectangle bounds(Box box) {
        if (box.isEmpty()) {
            return new Rectangle();
        }
        Box room = box.grown(RIM);
        int x = (int) Math.floor(room.left());
        int y = (int) Math.floor(room.top());
        return new Rectangle(x, y, (int) Math.ceil(room.right()) - x, (int) Math.ceil(room.bottom()) - y);
    }

    /** Returns where the drawn things of the item lie, without its texts. */
    public Rectangle drawn() {
        return bounds(things());
    }

    /** Marks the item as another view of one that is selected. */
    public void link(boolean on) {
        if (linked != on) {
            linked = on;
            repaint();
        }
    }

    private Box things() {
        return item.shapes().stream().filter(shape -> !(shape instanceof Shape.Label)).map(Shape::box).reduce(Box.EMPTY, Box::union);
    }

    private List<Shape> frame() {
        Box box = things();
        return box.isEmpty() ? List.of() : List.of(Shape.Polygon.of(Role.ABSENT, box.grown(RIM / 2)));
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        double scale = graphics.getAbsoluteScale();
        graphics.pushState();
        if (scale != 1) {
            graphics.scale(1 / scale);
        }
        painter.paint(graphics, item.shapes(), scale);
        if (linked) {
            painter.paint(graphics, frame(), scale);
        }
        graphics.popState();
    }

    @Override
    public boolean containsPoint(int x, int y) {
        double near = NEAR / zoom.getAsDouble();
        return getBounds().contains(x, y) && item.shapes().stream().anyMatch(shape -> hit(shape, x, y, near));
    }

    /** Tells whether a drawn thing of the item, not only its text, is there. */
    boolean meets(int x, int y) {
        double near = NEAR / zoom.getAsDouble();
        return getBounds().contains(x, y) && item.shapes().stream().filter(shape -> !(shape instanceof Shape.Label))
                .anyMatch(shape -> hit(shape, x, y, near));
    }

    private static boolean hit(Shape shape, double x, double y, double near) {
        if (shape instanceof Shape.Line line) {
            return distance(line, x, y) <= near;
        }
        if (shape instanceof Shape.Circle circle) {
            return Math.hypot(x - circle.x(), y - circle.y()) <= circle.radius() + near;
        }
        if (shape instanceof Shape.Polygon polygon && shape.role() == Role.OUTLINE) {
            return edges(polygon).stream().anyMatch(edge -> distance(edge, x, y) <= near);
        }
        Box box = shape.box().grown(near);
        return x >= box.left() && x <= box.right() && y >= box.top() && y <= box.bottom();
    }

    private static List<Shape.Line> edges(Shape.Polygon polygon) {
        List<Shape.Point> points = polygon.points();
        List<Shape.Line> edges = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            edges.add(new Shape.Line(polygon.role(), points.get(i), points.get((i + 1) % points.size())));
        }
        return edges;
    }

    private static double distance(Shape.Line line, double x, double y) {
        double dx = line.x2() - line.x1();
        double dy = line.y2() - line.y1();
        double length = dx * dx + dy * dy;
        double along = length == 0 ? 0 : Math.max(0, Math.min(1, ((x - line.x1()) * dx + (y - line.y1()) * dy) / length));
        return Math.hypot(x - line.x1() - along * dx, y - line.y1() - along * dy);
    }
}
