package cradlewright.model.edit;

import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * One object in which a copy of a file differs from the file.
 *
 * @param kind how
 * @param object the object in the file; for one that is only in the copy, that
 * @param features which of its details differ; empty unless it is changed
 */
public record Difference(Kind kind, EObject object, List<EStructuralFeature> features) {

    /** Copies the list. */
    public Difference {
        features = List.copyOf(features);
    }

    /** How they differ. */
    public enum Kind {
        /** Only the copy has it, with all that lies in it. */
        ADDED,
        /** Only the file has it, with all that lies in it. */
        REMOVED,
        /** Both have it, with other values or in another order. */
        CHANGED
    }
}
