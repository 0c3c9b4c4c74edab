package cradlewright.diagrams.shared;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;

/** An edit part whose model and children have types, which those of GEF do not. */
public abstract class TypedPart<M> extends AbstractGraphicalEditPart {

    private final M model;

    /** Makes a part of a model that stays its model. */
    protected TypedPart(M model) {
        this.model = model;
        setModel(model);
    }

    /** Returns what it shows. */
    public final M model() {
        return model;
    }

    /** Returns the models of its children, in the order of drawing; each stays the same object as long as it is there. */
    protected List<?> childModels() {
        return List.of();
    }

    /** Returns the parts of its children. */
    public final List<EditPart> childParts() {
        List<EditPart> parts = new ArrayList<>();
        for (Object child : getChildren()) {
            parts.add((EditPart) child);
        }
        return parts;
    }

    /** Returns what the part is to others, or null. */
    protected <T> T adapted(Class<T> type) {
        return null;
    }

    @Override
    @SuppressWarnings("rawtypes")
    protected final List getModelChildren() {
        return childModels();
    }

    @Override
    @SuppressWarnings({"rawtypes", "unchecked"})
    public final Object getAdapter(Class type) {
        Object known = adapted(type);
        return known == null ? super.getAdapter(type) : known;
    }
}
