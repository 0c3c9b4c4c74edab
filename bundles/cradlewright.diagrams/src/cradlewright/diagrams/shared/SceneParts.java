package cradlewright.diagrams.shared;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartFactory;

/** Makes the parts of the diagram. */
record SceneParts(SceneSurface surface) implements EditPartFactory {

    @Override
    public EditPart createEditPart(EditPart context, Object model) {
        return model instanceof ScenePage<?> page ? new SheetPart(page, surface) : new ItemPart((SceneNode) model, surface);
    }
}
