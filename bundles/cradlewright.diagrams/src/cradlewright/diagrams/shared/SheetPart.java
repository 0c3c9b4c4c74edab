package cradlewright.diagrams.shared;

import java.util.List;
import org.eclipse.draw2d.IFigure;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.editpolicies.RootComponentEditPolicy;

/** The sheet that the items lie on. */
final class SheetPart extends TypedPart<ScenePage<?>> {

    private final SceneSurface surface;

    SheetPart(ScenePage<?> page, SceneSurface surface) {
        super(page);
        this.surface = surface;
    }

    @Override
    protected IFigure createFigure() {
        return new SceneLayer();
    }

    @Override
    protected List<SceneNode> childModels() {
        return model().nodes();
    }

    /** Shows the scene as it is now. */
    void showAgain() {
        refresh();
        childParts().forEach(EditPart::refresh);
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.COMPONENT_ROLE, new RootComponentEditPolicy());
        installEditPolicy(EditPolicy.LAYOUT_ROLE, new SheetPolicy(surface));
    }

    @Override
    protected <T> T adapted(Class<T> type) {
        return type == EObject.class ? type.cast(model().root()) : null;
    }
}
