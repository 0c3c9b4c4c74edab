package cradlewright.diagrams.shared;

import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Unit;
import cradlewright.report.scene.Scene;
import cradlewright.ui.words.ReaderUnits;
import java.util.List;
import java.util.function.Supplier;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.Viewport;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/**
 * A ruler beside a diagram with the millimetres or inches of the real thing, from the zero of what carries it: along the top those along
 * the car; along the left those to the right in the view from above and those up in the view from the left.
 */
public final class Ruler extends Canvas {

    /** Least distance of two numbers, px. */
    private static final int APART = 60;
    private static final int BREADTH = 20;
    private static final int TICK = 5;

    private final boolean along;
    private final Supplier<Scene> scene;
    private final ZoomManager zoom;
    private final Paints paints;

    /**
     * Makes a ruler.
     *
     * @param along whether it lies along the top
     */
    public Ruler(Composite parent, boolean along, Supplier<Scene> scene, ZoomManager zoom, Paints paints) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.along = along;
        this.scene = scene;
        this.zoom = zoom;
        this.paints = paints;
        addListener(SWT.Paint, this::paint);
    }

    /** Follows a canvas that is scrolled and zoomed. */
    public void follow(FigureCanvas canvas) {
        canvas.getViewport().addPropertyChangeListener(Viewport.PROPERTY_VIEW_LOCATION, event -> again());
        zoom.addZoomListener(now -> again());
    }

    /** Paints it again. */
    public void again() {
        if (!isDisposed()) {
            redraw();
        }
    }

    @Override
    public Point computeSize(int width, int height, boolean changed) {
        return along ? new Point(Math.max(BREADTH, width), BREADTH) : new Point(BREADTH, Math.max(BREADTH, height));
    }

    private void paint(Event event) {
        GC gc = event.gc;
        gc.setBackground(paints.ground());
        gc.setForeground(paints.text());
        gc.fillRectangle(getClientArea());
        List<Scene.View> views = scene.get().views();
        if (along) {
            views.stream().findFirst().ifPresent(view -> ticks(gc, 0, 1, getClientArea().width, 0));
            return;
        }
        for (Scene.View view : views) {
            int from = px(view.area().top());
            ticks(gc, view.down(), -1, Math.min(getClientArea().height, px(view.area().bottom())), Math.max(0, from));
        }
    }

    /** Draws ticks at whole steps between two pixels; the number at a point of the sheet is its distance from zero times the sign. */
    private void ticks(GC gc, double zero, int sign, int last, int first) {
        Unit unit = ReaderUnits.current().unit(Dimension.LENGTH);
        double whole = Measured.of(1, unit).in(Unit.MILLIMETRE);
        double step = whole * step(whole);
        long from = (long) Math.ceil((mm(first) - zero) / step);
        for (long i = from; px(zero + i * step) <= last; i++) {
            mark(gc, px(zero + i * step), TypedPlace.number(sign * i * step, ReaderUnits.current()));
        }
    }

    private void mark(GC gc, int at, String number) {
        if (along) {
            gc.drawLine(at, BREADTH - TICK, at, BREADTH);
            gc.drawText(number, at - gc.textExtent(number).x / 2, 0, true);
            return;
        }
        gc.drawLine(BREADTH - TICK, at, BREADTH, at);
        Transform turned = new Transform(getDisplay());
        turned.translate(0, at);
        turned.rotate(-90);
        gc.setTransform(turned);
        gc.drawText(number, -gc.textExtent(number).x / 2, 0, true);
        gc.setTransform(null);
        turned.dispose();
    }

    /** Returns a step of 1, 2 or 5 times a power of ten, in units of so many mm, so that numbers keep apart. */
    private double step(double whole) {
        double least = APART / zoom.getZoom() / whole;
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double times : new double[] {1, 2, 5}) {
            if (times * power >= least) {
                return times * power;
            }
        }
        return 10 * power;
    }

    private int offset() {
        org.eclipse.draw2d.geometry.Point at = zoom.getViewport().getViewLocation();
        return along ? at.x : at.y;
    }

    private int px(double mm) {
        return (int) Math.round(mm * zoom.getZoom()) - offset();
    }

    private double mm(int px) {
        return (px + offset()) / zoom.getZoom();
    }
}
