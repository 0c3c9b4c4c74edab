package cradlewright.model.edit;

import cradlewright.model.base.FileRoot;
import cradlewright.model.base.Identified;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopCopier;
import cradlewright.model.io.ShopFolder;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** A few operations of every kind that EMF knows, on objects and features picked by a seed: same shop, same seed, same result. */
final class RandomEdit {

    private final ShopFolder shop;
    private final boolean kinds;
    private final Random random;
    private final IdSource ids;

    private RandomEdit(ShopFolder shop, long seed, boolean kinds) {
        this.shop = shop;
        this.kinds = kinds;
        this.random = new Random(seed);
        this.ids = new IdSource(random);
    }

    /** Returns a change that names all files. */
    static ShopChange of(ShopFolder shop, long seed) {
        return of(shop, seed, true);
    }

    /** Returns a change that names all files and leaves values alone that are one of a few words. */
    static ShopChange withoutKinds(ShopFolder shop, long seed) {
        return of(shop, seed, false);
    }

    private static ShopChange of(ShopFolder shop, long seed, boolean kinds) {
        return new ShopChange("edit " + seed, new LinkedHashSet<>(shop.files()), () -> new RandomEdit(shop, seed, kinds).run());
    }

    private void run() {
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            one();
        }
    }

    private void one() {
        switch (random.nextInt(9)) {
            case 0, 1 -> setValue();
            case 2 -> changeList();
            case 3 -> setReference();
            case 4, 5 -> create();
            case 6 -> remove();
            case 7 -> move();
            default -> reachIntoWhatIsOut();
        }
    }

    private List<EObject> all() {
        List<EObject> all = new ArrayList<>();
        shop.files().forEach(file -> file.root().ifPresent(top -> {
            all.add(top);
            EcoreUtil.<EObject>getAllContents(top, false).forEachRemaining(all::add);
        }));
        return all;
    }

    private <T> T pick(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    private EObject pickInner() {
        return pick(all().stream().filter(object -> !(object instanceof FileRoot)).toList());
    }

    private List<EObject> fitting(EReference reference, EObject not) {
        return all().stream().filter(each -> each != not && reference.getEReferenceType().isInstance(each)).toList();
    }

    private boolean stays(EStructuralFeature feature) {
        return !kinds && feature.getEType().getInstanceClass().isEnum() || feature.getName().equals("id")
                || feature.getName().equals("schema");
    }

    /** A value of the same kind from somewhere in the shop. */
    private Object value(EAttribute attribute) {
        List<EObject> all = all();
        for (int i = 0; i < 30; i++) {
            EObject object = pick(all);
            for (EAttribute each : object.eClass().getEAllAttributes()) {
                if (each.getEAttributeType() == attribute.getEAttributeType() && !stays(each) && !each.isMany() && object.eIsSet(each)) {
                    return object.eGet(each);
                }
            }
        }
        return attribute.getDefaultValue();
    }

    private void setValue() {
        EObject object = pick(all());
        List<EAttribute> attributes = object.eClass().getEAllAttributes().stream().filter(each -> !stays(each)).toList();
        if (attributes.isEmpty()) {
            return;
        }
        EAttribute attribute = pick(attributes);
        if (random.nextInt(4) == 0) {
            object.eUnset(attribute);
        } else if (attribute.isMany()) {
            object.eSet(attribute, IntStream.range(0, random.nextInt(4)).mapToObj(i -> value(attribute)).filter(v -> v != null).toList());
        } else {
            object.eSet(attribute, value(attribute));
        }
    }

    /** Everything that a list can do, also with values that are in it twice. */
    @SuppressWarnings("unchecked")
    private void changeList() {
        List<EObject> owners = all().stream().filter(each -> !lists(each).isEmpty()).toList();
        if (owners.isEmpty()) {
            return;
        }
        EObject owner = pick(owners);
        EList<Object> list = (EList<Object>) owner.eGet(pick(lists(owner)));
        int size = list.size();
        List<Object> some = list.stream().filter(each -> random.nextBoolean()).toList();
        switch (random.nextInt(8)) {
            case 0 -> list.move(random.nextInt(size), random.nextInt(size));
            case 1 -> list.remove(random.nextInt(size));
            case 2 -> list.clear();
            case 3 -> list.removeAll(some);
            case 4 -> list.retainAll(some);
            case 5 -> {
                Object first = list.remove(0);
                list.add(random.nextInt(size), first);
            }
            case 6 -> {
                list.removeAll(some);
                list.addAll(random.nextInt(list.size() + 1), some);
            }
            default -> {
                Object last = list.remove(size - 1);
                if (size > 1) {
                    list.set(random.nextInt(size - 1), last);
                }
            }
        }
    }

    /** Lists of values and of references; what lies inside an object may be referred to and is not dropped here. */
    private static List<EStructuralFeature> lists(EObject object) {
        return object.eClass().getEAllStructuralFeatures().stream()
                .filter(feature -> feature.isMany() && !((List<?>) object.eGet(feature)).isEmpty()
                        && !(feature instanceof EReference reference && reference.isContainment()))
                .toList();
    }

    @SuppressWarnings("unchecked")
    private void setReference() {
        EObject object = pick(all());
        List<EReference> references = object.eClass().getEAllReferences().stream().filter(each -> !each.isContainment()).toList();
        if (references.isEmpty()) {
            return;
        }
        EReference reference = pick(references);
        List<EObject> choices = fitting(reference, null);
        if (!reference.isMany()) {
            object.eSet(reference, choices.isEmpty() || random.nextInt(4) == 0 ? null : pick(choices));
        } else if (!choices.isEmpty()) {
            EList<EObject> list = (EList<EObject>) object.eGet(reference);
            list.addAll(random.nextInt(list.size() + 1), List.of(pick(choices), pick(choices)).stream().distinct().toList());
        }
    }

    private void create() {
        EObject parent = pick(all());
        if (parent.eClass().getEAllContainments().isEmpty()) {
            return;
        }
        EReference place = pick(parent.eClass().getEAllContainments());
        List<EObject> alike = fitting(place, null);
        if (random.nextBoolean() && !alike.isEmpty()) {
            EObject original = pick(alike);
            if (!EcoreUtil.isAncestor(original, parent)) {
                put(parent, place, new ShopCopier(ids).copy(original));
            }
            return;
        }
        List<EClass> kinds = place.getEReferenceType().getEPackage().getEClassifiers().stream()
                .filter(EClass.class::isInstance).map(EClass.class::cast)
                .filter(kind -> !kind.isAbstract() && place.getEReferenceType().isSuperTypeOf(kind)).toList();
        EObject made = EcoreUtil.create(pick(kinds));
        if (made instanceof Identified identified) {
            ids.give(identified);
        }
        put(parent, place, made);
    }

    @SuppressWarnings("unchecked")
    private void put(EObject parent, EReference place, EObject object) {
        if (!place.isMany()) {
            if (parent.eGet(place) instanceof EObject old) {
                new Removal(shop, List.of(old)).change("make room").body().run();
            }
            parent.eSet(place, object);
            return;
        }
        EList<EObject> list = (EList<EObject>) parent.eGet(place);
        if (!list.isEmpty() && random.nextInt(4) == 0) {
            EObject old = pick(list);
            if (old.eContents().isEmpty()) {
                new Removal(shop, List.of(old)).change("make room").body().run();
            }
        }
        list.add(random.nextInt(list.size() + 1), object);
    }

    /** Small things only, so that the shop does not run empty. */
    private void remove() {
        EObject object = pickInner();
        if (object.eContents().isEmpty()) {
            new Removal(shop, List.of(object)).change("remove").body().run();
        }
    }

    /** Also to another file, and within one list. */
    private void move() {
        EObject object = pickInner();
        EReference place = object.eContainmentFeature();
        List<EObject> parents = all().stream()
                .filter(each -> place.getEContainingClass().isInstance(each) && !EcoreUtil.isAncestor(object, each)).toList();
        EObject parent = pick(parents);
        if (parent != object.eContainer() && (place.isMany() || !parent.eIsSet(place))) {
            put(parent, place, object);
        }
    }

    /** An object is taken out, changed while it lies nowhere, and put back somewhere else. */
    private void reachIntoWhatIsOut() {
        EObject object = pickInner();
        EObject parent = object.eContainer();
        EReference place = object.eContainmentFeature();
        EcoreUtil.remove(object);
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            if (!stays(attribute) && !attribute.isMany()) {
                object.eSet(attribute, value(attribute));
            }
        }
        put(parent, place, object);
    }
}
