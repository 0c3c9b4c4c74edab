package cradlewright.diagrams.shared;

import cradlewright.diagrams.Messages;
import org.eclipse.draw2d.LightweightSystem;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.parts.ScrollableThumbnail;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.ScalableFreeformRootEditPart;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.part.Page;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;

/** The whole sheet in miniature for the outline view; the frame in it is what the editor shows, and can be pulled. */
final class Miniature extends Page implements IContentOutlinePage {

    private final ScalableFreeformRootEditPart root;
    private final Paints paints;
    private Canvas canvas;
    private ScrollableThumbnail thumbnail;

    Miniature(ScalableFreeformRootEditPart root, Paints paints) {
        this.root = root;
        this.paints = paints;
    }

    @Override
    public void createControl(Composite parent) {
        canvas = new Canvas(parent, SWT.NONE);
        canvas.setBackground(paints.ground());
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = Messages.Outline_name;
            }
        });
        thumbnail = new ScrollableThumbnail((Viewport) root.getFigure());
        thumbnail.setSource(root.getLayer(LayerConstants.PRINTABLE_LAYERS));
        new LightweightSystem(canvas).setContents(thumbnail);
        canvas.addListener(SWT.Dispose, event -> thumbnail.deactivate());
    }

    @Override
    public Control getControl() {
        return canvas;
    }

    @Override
    public void setFocus() {
        canvas.setFocus();
    }

    /** Nothing is selected in the miniature: the selection is that of the editor. */
    @Override
    public ISelection getSelection() {
        return StructuredSelection.EMPTY;
    }

    @Override
    public void setSelection(ISelection selection) {
        // Nothing can be selected here.
    }

    @Override
    public void addSelectionChangedListener(ISelectionChangedListener listener) {
        // The selection never changes.
    }

    @Override
    public void removeSelectionChangedListener(ISelectionChangedListener listener) {
        // The selection never changes.
    }
}
