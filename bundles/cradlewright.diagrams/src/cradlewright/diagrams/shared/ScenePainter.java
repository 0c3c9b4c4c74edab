package cradlewright.diagrams.shared;

import cradlewright.report.scene.Ink;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.Arrays;
import java.util.List;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontMetrics;

/** Paints shapes of a scene in pixels of the device, so that lines keep their width at every zoom. */
public final class ScenePainter {

    /** Text smaller than this cannot be read and is left out, px. */
    private static final double READABLE = 5;

    private final Paints paints;
    private final double device;

    /** Makes a painter for the screen. */
    public ScenePainter(Paints paints) {
        this(paints, 1);
    }

    /**
     * Makes a painter.
     *
     * @param device how many pixels of the device take the room of one of the screen
     */
    ScenePainter(Paints paints, double device) {
        this.paints = paints;
        this.device = device;
    }

    /**
     * Paints shapes.
     *
     * @param scale px for one mm of the sheet
     */
    public void paint(Graphics graphics, List<Shape> shapes, double scale) {
        graphics.setAntialias(SWT.ON);
        for (Shape shape : shapes) {
            Ink ink = paints.palette().ink(shape.role());
            if (shape instanceof Shape.Label label) {
                label(graphics, label, ink, scale);
            } else {
                figure(graphics, shape, ink, scale);
            }
        }
    }

    private void figure(Graphics graphics, Shape shape, Ink ink, double scale) {
        ink.fill().ifPresent(colour -> {
            graphics.setBackgroundColor(paints.colour(colour));
            if (shape instanceof Shape.Polygon polygon) {
                graphics.fillPolygon(points(polygon, scale));
            } else if (shape instanceof Shape.Circle c) {
                graphics.fillOval(px(c.x() - c.radius(), scale), px(c.y() - c.radius(), scale), px(2 * c.radius(), scale),
                        px(2 * c.radius(), scale));
            }
        });
        if (ink.line().isEmpty()) {
            return;
        }
        graphics.setForegroundColor(paints.colour(ink.line().get()));
        graphics.setLineWidth((int) Math.round(device * ink.width()));
        if (ink.dash() == Ink.Dash.NONE) {
            graphics.setLineStyle(Graphics.LINE_SOLID);
        } else {
            graphics.setLineDash(Arrays.stream(ink.dash().lengths()).map(length -> (int) Math.round(device * length)).toArray());
            graphics.setLineStyle(SWT.LINE_CUSTOM);
        }
        outline(graphics, shape, scale);
    }

    private static void outline(Graphics graphics, Shape shape, double scale) {
        if (shape instanceof Shape.Line s) {
            graphics.drawLine(px(s.x1(), scale), px(s.y1(), scale), px(s.x2(), scale), px(s.y2(), scale));
        } else if (shape instanceof Shape.Polygon polygon) {
            graphics.drawPolygon(points(polygon, scale));
        } else if (shape instanceof Shape.Circle c) {
            graphics.drawOval(px(c.x() - c.radius(), scale), px(c.y() - c.radius(), scale), px(2 * c.radius(), scale),
                    px(2 * c.radius(), scale));
        }
    }

    private void label(Graphics graphics, Shape.Label label, Ink ink, double scale) {
        double height = label.height() * scale;
        if (height < device * READABLE) {
            return;
        }
        Font font = paints.font(height, label.role() == Role.TEXT_STRONG);
        int width = (int) Math.round(device * FigureUtilities.getTextExtents(label.text(), font).width);
        FontMetrics metrics = FigureUtilities.getFontMetrics(font);
        int ascent = (int) Math.round(device * (metrics.getAscent() + metrics.getLeading()));
        int x = px(label.x(), scale) - switch (label.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        int y = px(label.y(), scale) - ascent;
        graphics.setFont(font);
        // A rim in the colour of the ground keeps letters readable where a line runs behind them.
        graphics.setForegroundColor(paints.ground());
        for (int[] off : new int[][] {{-1, 0}, {1, 0}, {0, -1}, {0, 1}}) {
            graphics.drawText(label.text(), x + off[0], y + off[1]);
        }
        graphics.setForegroundColor(paints.colour(ink.fill().orElseThrow()));
        graphics.drawText(label.text(), x, y);
    }

    private static PointList points(Shape.Polygon polygon, double scale) {
        PointList points = new PointList(polygon.points().size());
        polygon.points().forEach(point -> points.addPoint(px(point.x(), scale), px(point.y(), scale)));
        return points;
    }

    private static int px(double mm, double scale) {
        return (int) Math.round(mm * scale);
    }
}
