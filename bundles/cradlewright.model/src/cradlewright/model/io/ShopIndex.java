package cradlewright.model.io;

import cradlewright.model.base.Identified;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;

/** Finds the objects of a shop by id; kept up to date while objects come and go. Of two with one id the first is found. */
final class ShopIndex {

    private final Map<String, EObject> byId = new HashMap<>();

    void attached(EObject object) {
        if (object instanceof Identified identified && identified.getId() != null) {
            byId.putIfAbsent(identified.getId(), object);
        }
    }

    void detached(EObject object) {
        if (object instanceof Identified identified && identified.getId() != null) {
            byId.remove(identified.getId(), object);
        }
    }

    Optional<EObject> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }
}
