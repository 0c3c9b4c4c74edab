package cradlewright.model.edit;

import org.eclipse.emf.ecore.EObject;

/**
 * One object in which a copy of a file differs from the file.
 *
 * @param kind how
 * @param object the object in the file; for one that is only in the copy, that
 */
public record Difference(Kind kind, EObject object) {

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
