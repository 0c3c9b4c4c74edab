package cradlewright.ui.navigator;

import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/**
 * What stands in one list of an object, as a row of the tree.
 *
 * @param owner the object
 * @param list the list
 */
record Group(EObject owner, EReference list) {

    List<?> members() {
        return (List<?>) owner.eGet(list);
    }
}
