package cradlewright.model.edit;

import cradlewright.model.base.FileRoot;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.common.util.ECollections;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * A copy of a file that was read by itself: tells how it differs from the file in the shop, and makes the file like it by one change that
 * can be taken back. Objects keep their identity: what has the same id in both is the same object afterwards.
 */
public final class KeptCopy {

    private final ShopFile file;
    private final FileRoot copy;

    /**
     * @param file the file in the shop
     * @param copy the object at the top of the copy
     * @throws IllegalArgumentException when the file has no object at its top, or one of another kind or with another id
     */
    public KeptCopy(ShopFile file, FileRoot copy) {
        FileRoot own = file.root().orElseThrow(() -> new IllegalArgumentException(file.path() + " has no object at its top"));
        if (own.eClass() != copy.eClass() || !Matching.id(own).equals(Matching.id(copy))) {
            throw new IllegalArgumentException("the copy of " + file.path() + " is one of another thing");
        }
        this.file = file;
        this.copy = copy;
    }

    /** Returns the file. */
    public ShopFile file() {
        return file;
    }

    /** Returns the objects that differ, those of the copy in its order, then those that only the file has. */
    public List<Difference> differences() {
        FileRoot own = file.root().orElseThrow();
        Matching matching = new Matching(own, copy, Matching.byId(List.of(own)));
        List<Difference> found = new ArrayList<>();
        matching.pairs().forEach((there, here) -> {
            if (isNew(here, own)) {
                if (there == copy || !isNew(matching.ownOf(there.eContainer()), own)) {
                    found.add(new Difference(Difference.Kind.ADDED, there, List.of()));
                }
            } else {
                List<EStructuralFeature> changed = changed(here, there, matching);
                if (!changed.isEmpty()) {
                    found.add(new Difference(Difference.Kind.CHANGED, here, changed));
                }
            }
        });
        EcoreUtil.<EObject>getAllContents(own, false).forEachRemaining(here -> {
            if (matching.copyOf(here) == null && matching.copyOf(here.eContainer()) != null) {
                found.add(new Difference(Difference.Kind.REMOVED, here, List.of()));
            }
        });
        return found;
    }

    private static boolean isNew(EObject own, EObject top) {
        return !EcoreUtil.isAncestor(top, own);
    }

    /** Compares all features of one object, but of what lies in it only which objects these are. */
    private static List<EStructuralFeature> changed(EObject own, EObject there, Matching matching) {
        return there.eClass().getEAllStructuralFeatures().stream().filter(KeptCopy::stored)
                .filter(feature -> !wanted(there, feature, matching).equals(known(own, feature, matching))).toList();
    }

    /** Values of the copy: ids for what has one, else what answers to it. */
    private static List<Object> wanted(EObject there, EStructuralFeature feature, Matching matching) {
        return Matching.values(there, feature).stream().filter(value -> !comesOrGoes(value, feature, matching))
                .map(value -> Matching.id(value).<Object>map(id -> id)
                        .orElse(value instanceof EObject object ? matching.ownOf(object) : value))
                .toList();
    }

    private static List<Object> known(EObject own, EStructuralFeature feature, Matching matching) {
        return Matching.values(own, feature).stream()
                .filter(value -> !(contains(feature) && Matching.id(value).isPresent() && matching.copyOf((EObject) value) == null))
                .map(value -> Matching.id(value).<Object>map(id -> id).orElse(value)).toList();
    }

    /** An object with an id that is new is told of by itself; that its list got longer is not. */
    private static boolean comesOrGoes(Object value, EStructuralFeature feature, Matching matching) {
        return contains(feature) && Matching.id(value).isPresent() && matching.ownOf((EObject) value).eContainer() == null;
    }

    private static boolean contains(EStructuralFeature feature) {
        return feature instanceof EReference reference && reference.isContainment();
    }

    private static boolean stored(EStructuralFeature feature) {
        return feature.isChangeable() && !feature.isDerived() && !feature.isTransient();
    }

    /** Makes one change after which the files are like their copies. References from one of the copies to another are found. */
    public static ShopChange takeUp(String label, ShopFolder shop, List<KeptCopy> copies) {
        return new ShopChange(label, new LinkedHashSet<>(copies.stream().map(KeptCopy::file).toList()), () -> {
            Map<KeptCopy, Matching> matchings = new LinkedHashMap<>();
            Map<String, EObject> known = Matching.byId(copies.stream().map(kept -> kept.file.root().orElseThrow()).toList());
            copies.forEach(kept -> matchings.put(kept, new Matching(kept.file.root().orElseThrow(), kept.copy, known)));
            matchings.values().forEach(KeptCopy::build);
            matchings.values().forEach(matching -> fill(matching, shop));
        });
    }

    /** Puts each object where it belongs, the outer ones first. */
    private static void build(Matching matching) {
        matching.pairs().forEach((there, own) -> {
            for (EReference feature : there.eClass().getEAllContainments()) {
                put(own, feature, Matching.values(there, feature).stream().<Object>map(part -> matching.ownOf((EObject) part)).toList());
            }
        });
    }

    /** Gives each object its values, now that all objects are there that these may refer to. */
    private static void fill(Matching matching, ShopFolder shop) {
        matching.pairs().forEach((there, own) -> {
            for (EStructuralFeature feature : there.eClass().getEAllStructuralFeatures()) {
                if (stored(feature) && !contains(feature)) {
                    put(own, feature, Matching.values(there, feature).stream().map(value -> target(value, matching, shop)).toList());
                }
            }
        });
    }

    private static Object target(Object value, Matching matching, ShopFolder shop) {
        if (!(value instanceof EObject object)) {
            return value;
        }
        EObject own = matching.ownOf(object);
        return own != null ? own : Matching.id(object).<Object>flatMap(shop::find).orElse(object);
    }

    @SuppressWarnings("unchecked")
    private static void put(EObject own, EStructuralFeature feature, List<Object> wanted) {
        if (feature.isMany()) {
            EList<Object> list = (EList<Object>) own.eGet(feature);
            if (!list.equals(wanted)) {
                ECollections.setEList(list, wanted);
            }
        } else if (!wanted.equals(Matching.values(own, feature))) {
            own.eSet(feature, wanted.isEmpty() ? null : wanted.get(0));
        }
    }
}
