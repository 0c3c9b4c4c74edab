package cradlewright.model.edit;

import cradlewright.model.base.Identified;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * Which object of a file answers to which one of a copy of it: those with ids by id and class, those without by where they stand. Objects
 * of the copy without a partner are matched with new ones, which have their ids and nothing else.
 */
final class Matching {

    private final Map<EObject, EObject> ownOf = new LinkedHashMap<>();
    private final Map<EObject, EObject> copyOf = new IdentityHashMap<>();
    private final Map<String, EObject> ownById;

    /**
     * @param ownTop the top of the file
     * @param copyTop the top of the copy
     * @param ownById the objects among which partners are looked for, by id
     */
    Matching(EObject ownTop, EObject copyTop, Map<String, EObject> ownById) {
        this.ownById = ownById;
        pair(ownTop, copyTop);
    }

    /** Returns the objects below some tops that have an id. */
    static Map<String, EObject> byId(Collection<? extends EObject> tops) {
        Map<String, EObject> found = new HashMap<>();
        EcoreUtil.<EObject>getAllContents(tops, false).forEachRemaining(object -> id(object).ifPresent(id -> found.put(id, object)));
        return found;
    }

    private void pair(EObject own, EObject copy) {
        ownOf.put(copy, own);
        copyOf.put(own, copy);
        for (EReference feature : copy.eClass().getEAllContainments()) {
            List<Object> parts = values(copy, feature);
            for (int i = 0; i < parts.size(); i++) {
                EObject part = (EObject) parts.get(i);
                pair(partner(own, feature, i, part), part);
            }
        }
    }

    private EObject partner(EObject owner, EReference feature, int place, EObject copy) {
        Optional<String> id = id(copy);
        if (id.isPresent()) {
            EObject known = ownById.get(id.get());
            return known != null && known.eClass() == copy.eClass() && !copyOf.containsKey(known) ? known : fresh(copy);
        }
        List<Object> there = values(owner, feature);
        return place < there.size() && there.get(place) instanceof EObject object && object.eClass() == copy.eClass()
                && id(object).isEmpty() ? object : fresh(copy);
    }

    private static EObject fresh(EObject copy) {
        EObject made = EcoreUtil.create(copy.eClass());
        if (copy instanceof Identified identified) {
            ((Identified) made).setId(identified.getId());
        }
        return made;
    }

    /** Returns the pairs, what lies outside before what lies in it: the copy and what answers to it. */
    Map<EObject, EObject> pairs() {
        return ownOf;
    }

    /** Returns the object of the copy that answers to one of the file; null when there is none. */
    EObject copyOf(EObject own) {
        return copyOf.get(own);
    }

    /** Returns what answers to an object of the copy; null when the object is not of the copy. */
    EObject ownOf(EObject copy) {
        return ownOf.get(copy);
    }

    /** Returns the values of a feature as they stand, references not followed; a single one that is missing is left out. */
    static List<Object> values(EObject object, EStructuralFeature feature) {
        Object value = object.eGet(feature, false);
        if (!feature.isMany()) {
            return value == null ? List.of() : List.of(value);
        }
        return value instanceof InternalEList<?> list ? List.copyOf(list.basicList()) : List.copyOf((List<?>) value);
    }

    /** Returns the id of an object, or the one that a reference names which was not followed yet. */
    static Optional<String> id(Object object) {
        if (object instanceof InternalEObject target && target.eIsProxy()) {
            return Optional.ofNullable(target.eProxyURI().fragment());
        }
        return object instanceof Identified identified ? Optional.ofNullable(identified.getId()).filter(id -> !id.isEmpty())
                : Optional.empty();
    }
}
