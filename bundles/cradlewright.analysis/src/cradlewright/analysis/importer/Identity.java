package cradlewright.analysis.importer;

import cradlewright.model.base.Identified;
import cradlewright.model.base.Named;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Ids, names and references of model objects. */
final class Identity {

    private Identity() {
    }

    /**
     * Returns the id of an object. One that never got an id, which the reader of the files complains about, goes by the
     * place where it stands, so that it is neither lost nor mixed up with another.
     */
    static String id(Identified object) {
        if (object.getId() != null) {
            return object.getId();
        }
        EObject root = EcoreUtil.getRootContainer(object);
        String owner = root != object && root instanceof Identified identified ? id(identified) : kind(root);
        return "no id: " + owner + "/" + EcoreUtil.getRelativeURIFragmentPath(root, object);
    }

    /** Returns what people call an object: its name, else what it is and the how many-th of its kind, as "mount 3". */
    static String name(Named object) {
        return Values.text(object.getName()).orElseGet(() -> kind(object) + number(object));
    }

    private static String kind(EObject object) {
        return object.eClass().getName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    private static String number(EObject object) {
        EReference feature = object.eContainmentFeature();
        if (feature == null || !feature.isMany()) {
            return "";
        }
        int number = 0;
        for (Object sibling : (List<?>) object.eContainer().eGet(feature)) {
            number += sibling instanceof EObject other && other.eClass() == object.eClass() ? 1 : 0;
            if (sibling == object) {
                break;
            }
        }
        return " " + number;
    }

    /** Returns the id of a referred object; empty when there is none or the shop does not have it. */
    static Optional<String> reference(Identified target) {
        return Optional.ofNullable(target).filter(object -> !object.eIsProxy()).map(Identity::id);
    }

    /** Returns the id of a referred object; when the shop does not have it, the id under which the file looks for it. */
    static Optional<String> wantedReference(Identified target) {
        return Optional.ofNullable(target).map(Identity::wantedId);
    }

    /**
     * Returns the ids of a list of referred objects in its order. Ids that the shop does not have stay in it: left out, the
     * part would weigh nothing and the missing brace would be asked for by nobody.
     */
    static List<String> references(List<? extends Identified> targets) {
        return targets.stream().map(Identity::wantedId).toList();
    }

    /** Turns the objects of a list into records, keeping their order. */
    static <T, R> List<R> each(List<T> objects, Function<? super T, ? extends R> toRecord) {
        return objects.stream().<R>map(toRecord).toList();
    }

    private static String wantedId(Identified target) {
        if (!target.eIsProxy()) {
            return id(target);
        }
        String fragment = ((InternalEObject) target).eProxyURI().fragment();
        return fragment == null ? ((InternalEObject) target).eProxyURI().toString() : fragment;
    }
}
