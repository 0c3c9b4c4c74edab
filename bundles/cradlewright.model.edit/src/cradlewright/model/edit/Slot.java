package cradlewright.model.edit;

import java.util.List;
import org.eclipse.emf.common.notify.Notifier;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;

/**
 * Where a value stands: one feature of one object, or the top of a file.
 *
 * @param holder the object; a {@link Resource} for the top of a file
 * @param feature the feature; null for the top of a file
 */
record Slot(Notifier holder, EStructuralFeature feature) {

    /** Refuses features that EMF changes along with another one: taking back one of the two would take back both. */
    Slot {
        if (feature instanceof EReference reference && reference.getEOpposite() != null) {
            throw new IllegalArgumentException(reference.getName() + " has an opposite, which cannot be recorded");
        }
    }

    /** Returns whether this is the top of a file. */
    boolean atTop() {
        return feature == null;
    }

    /** Returns whether values here are objects that lie inside the holder. */
    boolean holdsContents() {
        return feature == null || feature instanceof EReference reference && reference.isContainment();
    }

    /** Returns the object whose feature this is. */
    EObject object() {
        return (EObject) holder;
    }

    /** Returns the values that stand here; a single one that is missing is left out. */
    List<Object> values() {
        if (atTop() || feature.isMany()) {
            return list();
        }
        Object value = object().eGet(feature);
        return value == null ? List.of() : List.of(value);
    }

    /** Returns the live list. */
    @SuppressWarnings("unchecked")
    EList<Object> list() {
        return (EList<Object>) (EList<?>) (atTop() ? ((Resource) holder).getContents() : object().eGet(feature));
    }
}
