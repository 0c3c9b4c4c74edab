package cradlewright.diagrams.shared;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Scene;
import cradlewright.report.scene.Shape;
import java.util.Optional;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.XYLayoutEditPolicy;
import org.eclipse.gef.requests.CreateRequest;

/** Takes new things onto the sheet. */
final class SheetPolicy extends XYLayoutEditPolicy {

    private final SceneSurface surface;

    SheetPolicy(SceneSurface surface) {
        this.surface = surface;
    }

    @Override
    protected EditPolicy createChildEditPolicy(EditPart child) {
        return new MovePolicy((ItemPart) child);
    }

    @Override
    protected Command getCreateCommand(CreateRequest request) {
        Point at = request.getLocation().getCopy();
        getHostFigure().translateToRelative(at);
        Optional<Vec3> far = corner(request).flatMap(this::place);
        return place(at).flatMap(place -> surface.page().edits().add(request.getNewObjectType(), place, far)).map(ShopEdit::new)
                .orElse(null);
    }

    private Optional<Point> corner(CreateRequest request) {
        Dimension size = request.getSize();
        if (size == null || size.width <= 0 && size.height <= 0) {
            return Optional.empty();
        }
        Point corner = request.getLocation().getCopy().translate(size);
        getHostFigure().translateToRelative(corner);
        return Optional.of(corner);
    }

    /** Returns the place that a point of the sheet stands for; what the view does not show is taken from the supports. */
    private Optional<Vec3> place(Point point) {
        Vec3 usual = surface.page().usualPlace();
        return surface.page().scene().views().stream().filter(view -> within(view.area(), point)).findFirst()
                .map(view -> place(view, point, usual));
    }

    private static Vec3 place(Scene.View view, Point point, Vec3 usual) {
        return view.projection().place(new Shape.Point(point.x, point.y - view.down()), usual);
    }

    private static boolean within(Box area, Point point) {
        return point.x >= area.left() && point.x <= area.right() && point.y >= area.top() && point.y <= area.bottom();
    }

    @Override
    protected Command createAddCommand(EditPart child, Object constraint) {
        return null;
    }

    @Override
    protected Command createChangeConstraintCommand(EditPart child, Object constraint) {
        return null;
    }

    @Override
    protected Command getDeleteDependantCommand(Request request) {
        return null;
    }
}
