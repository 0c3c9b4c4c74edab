package cradlewright.model.io;

import cradlewright.model.base.Identified;
import java.util.Collection;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * The only place where objects of a shop are copied: each copy gets an id of its own. References among the copied objects
 * point to the copies, those that lead out still point to where they did.
 */
public final class ShopCopier {

    private final IdSource ids;

    /** Copies with ids from the given source. */
    public ShopCopier(IdSource ids) {
        this.ids = ids;
    }

    /** Returns a copy of the object and all it contains. */
    public <T extends EObject> T copy(T object) {
        T copy = EcoreUtil.copy(object);
        giveIds(copy);
        return copy;
    }

    /** Returns copies of the objects and all they contain, in the same order; references among them point to the copies. */
    public <T extends EObject> List<T> copyAll(Collection<? extends T> objects) {
        Collection<T> copies = EcoreUtil.copyAll(objects);
        copies.forEach(this::giveIds);
        return List.copyOf(copies);
    }

    private void giveIds(EObject copy) {
        if (copy instanceof Identified identified) {
            ids.give(identified);
        }
        copy.eAllContents().forEachRemaining(inner -> {
            if (inner instanceof Identified identified) {
                ids.give(identified);
            }
        });
    }
}
