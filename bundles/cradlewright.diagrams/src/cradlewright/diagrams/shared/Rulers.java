package cradlewright.diagrams.shared;

import cradlewright.diagrams.Messages;
import cradlewright.report.scene.Scene;
import java.util.function.Supplier;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** A diagram with a ruler along its top and one along its left. */
final class Rulers {

    private final Composite frame;
    private final Ruler along;
    private final Ruler up;

    Rulers(Composite parent, Supplier<Scene> scene, ZoomManager zoom, Paints paints) {
        frame = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(0, 0).applyTo(frame);
        Label corner = new Label(frame, SWT.NONE);
        corner.setBackground(paints.ground());
        GridDataFactory.fillDefaults().applyTo(corner);
        along = new Ruler(frame, true, scene, zoom, paints);
        along.setToolTipText(Messages.Ruler_along);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(along);
        up = new Ruler(frame, false, scene, zoom, paints);
        up.setToolTipText(Messages.Ruler_up);
        GridDataFactory.fillDefaults().grab(false, true).applyTo(up);
    }

    /** Returns what holds the rulers and the diagram. */
    Composite frame() {
        return frame;
    }

    /** Follows the diagram, which has been made in the frame. */
    void follow(FigureCanvas canvas) {
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
        along.follow(canvas);
        up.follow(canvas);
    }

    /** Paints them again. */
    void again() {
        along.again();
        up.again();
    }

    boolean isDisposed() {
        return frame.isDisposed();
    }
}
