package cradlewright.diagrams.car;

import cradlewright.diagrams.shared.SceneNode;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartFactory;

/** Makes the parts of the diagram. */
record CarParts(CarSurface surface) implements EditPartFactory {

    @Override
    public EditPart createEditPart(EditPart context, Object model) {
        return model instanceof CarPage page ? new CarPart(page, surface) : new ItemPart((SceneNode) model, surface);
    }
}
