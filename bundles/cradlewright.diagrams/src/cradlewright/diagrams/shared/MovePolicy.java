package cradlewright.diagrams.shared;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.scene.Item;
import cradlewright.report.scene.Kind;
import java.util.List;
import java.util.Optional;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.LineBorder;
import org.eclipse.draw2d.RectangleFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.NonResizableEditPolicy;
import org.eclipse.gef.handles.MoveHandle;
import org.eclipse.gef.handles.MoveHandleLocator;
import org.eclipse.gef.requests.ChangeBoundsRequest;

/** Moves an item in the plane of its view, and asks what would be while it is being moved. */
final class MovePolicy extends NonResizableEditPolicy {

    private final ItemPart part;
    private Rectangle start;

    MovePolicy(ItemPart part) {
        this.part = part;
        setDragAllowed(movable());
    }

    private boolean movable() {
        return part.model().item().view().isPresent() && part.thing().filter(edits()::movable).isPresent();
    }

    @Override
    protected List<?> createSelectionHandles() {
        MoveHandle handle = new MoveHandle((GraphicalEditPart) getHost(), new MoveHandleLocator(getHostFigure()) {
            @Override
            public void relocate(IFigure target) {
                Rectangle room = part.drawn();
                getHostFigure().translateToAbsolute(room);
                target.translateToRelative(room);
                target.setBounds(room);
            }
        });
        handle.setBorder(new LineBorder(part.surface().paints().text(), 1));
        return List.of(handle);
    }

    @Override
    protected Command getMoveCommand(ChangeBoundsRequest request) {
        return command(way(request.getMoveDelta()), part.surface().grid());
    }

    /** Returns the command that moves the thing by a way in the axes of the carrier, m; null when it cannot be moved. */
    Command command(Vec3 way, double grid) {
        return wanted().flatMap(thing -> edits().move(thing, way, grid)).map(ShopEdit::new).orElse(null);
    }

    /** A support and the bar of its load are one thing: when both are selected only one of them moves it. */
    private Optional<EObject> wanted() {
        Item item = part.model().item();
        boolean other = item.kind() == Kind.LOAD && Picked.parts(part.getViewer(), ItemPart.class).stream().map(p -> p.model().item())
                .anyMatch(picked -> picked.kind() != Kind.LOAD && picked.id().equals(item.id()));
        return other ? Optional.empty() : part.thing().filter(edits()::movable);
    }

    private SceneEdits edits() {
        return part.surface().page().edits();
    }

    private Vec3 way(Point delta) {
        double zoom = part.surface().zoom();
        return part.model().item().view().map(view -> view.way(delta.x / zoom, delta.y / zoom)).orElse(Vec3.ZERO);
    }

    @Override
    protected IFigure createDragSourceFeedbackFigure() {
        RectangleFigure ghost = new RectangleFigure();
        ghost.setFill(false);
        ghost.setLineStyle(Graphics.LINE_DOT);
        ghost.setForegroundColor(part.surface().paints().text());
        ghost.setBounds(getInitialFeedbackBounds());
        addFeedback(ghost);
        return ghost;
    }

    /** Where the item was when the move began: what is shown meanwhile has moved already. */
    @Override
    protected Rectangle getInitialFeedbackBounds() {
        if (start == null) {
            start = part.drawn();
        }
        return start.getCopy();
    }

    @Override
    protected void showChangeBoundsFeedback(ChangeBoundsRequest request) {
        super.showChangeBoundsFeedback(request);
        wanted().flatMap(thing -> edits().moved(thing, way(request.getMoveDelta()), part.surface().grid()))
                .ifPresent(to -> part.surface().page()
                .foresee(part.model().item().id(), to));
    }

    @Override
    protected void eraseChangeBoundsFeedback(ChangeBoundsRequest request) {
        super.eraseChangeBoundsFeedback(request);
        start = null;
        part.surface().page().endPreview();
    }
}
