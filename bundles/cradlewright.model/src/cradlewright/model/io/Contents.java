package cradlewright.model.io;

import java.util.function.Consumer;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Walks the objects of a file without resolving references. */
final class Contents {

    private Contents() {
    }

    /** Calls the visitor with the object and all it contains, outer before inner. */
    static void walk(EObject top, Consumer<EObject> visitor) {
        visitor.accept(top);
        EcoreUtil.<EObject>getAllContents(top, false).forEachRemaining(visitor);
    }
}
