package cradlewright.model.io;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * Follows every reference of a freshly read shop to its object. References that lead out of the shop or to an object of the
 * wrong class are cut, and their file is closed for writing; those to an object that is not there stay as they are.
 */
final class ReferenceRules {

    private static final Pattern IN_SHOP = Pattern.compile("(?:" + ShopResource.SCHEME + ":/)?#([^#/]+)");

    private final ShopFolder shop;
    private final NearObjects near;

    ReferenceRules(ShopFolder shop) {
        this.shop = shop;
        this.near = new NearObjects(shop.files());
    }

    void check() {
        for (ShopFile file : List.copyOf(shop.files())) {
            file.root().ifPresent(top -> Contents.walk(top, object -> resolveAll(file, object)));
        }
        Set<EObject> done = new HashSet<>();
        for (ShopFile file : shop.files()) {
            file.root().ifPresent(top -> Contents.walk(top, object -> refuseCycles(object, done)));
        }
    }

    private void resolveAll(ShopFile file, EObject object) {
        for (EReference reference : object.eClass().getEAllReferences()) {
            if (reference.isContainment() || !object.eIsSet(reference)) {
                continue;
            }
            if (reference.isMany()) {
                resolveList(file, object, reference);
            } else if (object.eGet(reference, false) instanceof InternalEObject proxy && proxy.eIsProxy()) {
                resolve(file, object, reference, proxy).ifPresent(found -> object.eSet(reference, found.orElse(null)));
            }
        }
    }

    private void resolveList(ShopFile file, EObject object, EReference reference) {
        InternalEList<?> values = (InternalEList<?>) object.eGet(reference, false);
        Set<EObject> resolved = new LinkedHashSet<>();
        boolean changed = false;
        for (Object value : values.basicList()) {
            Optional<Optional<EObject>> found = value instanceof InternalEObject proxy && proxy.eIsProxy()
                    ? resolve(file, object, reference, proxy) : Optional.empty();
            changed |= found.isPresent();
            found.orElse(Optional.of((EObject) value)).ifPresent(resolved::add);
        }
        if (changed) {
            object.eSet(reference, List.copyOf(resolved));
        }
    }

    /** Returns nothing when the reference stays as it is, else what it becomes: an object, or nothing when it is cut. */
    private Optional<Optional<EObject>> resolve(ShopFile file, EObject object, EReference reference, InternalEObject proxy) {
        URI uri = proxy.eProxyURI();
        Matcher inShop = IN_SHOP.matcher(uri.toString());
        String words = Words.of(reference);
        if (!inShop.matches()) {
            file.close(ShopFile.State.INCOMPLETE);
            shop.report(file.problem(object, reference.getName(),
                    words + " leads out of the shop, to " + Words.quote(uri.toString()) + ", which is never opened",
                    "write " + ShopResource.reference("...") + " with the id of an object of this shop, or delete it",
                    Severity.ERROR));
            return Optional.of(Optional.empty());
        }
        Optional<EObject> target = shop.find(inShop.group(1));
        if (target.isEmpty()) {
            shop.report(file.problem(object, reference.getName(),
                    words + " refers to " + Words.quote(inShop.group(1)) + ", which no object of the shop has as its id",
                    near.mend(object, reference, inShop.group(1)), Severity.ERROR).refersTo(inShop.group(1)));
            return Optional.empty();
        }
        if (!reference.getEReferenceType().isInstance(target.get())) {
            file.close(ShopFile.State.INCOMPLETE);
            shop.report(file.problem(object, reference.getName(),
                    words + " refers to the " + Words.name(target.get()) + ", " + Words.one(reference.getEType()) + " is wanted",
                    "refer to the right object, or delete the reference", Severity.ERROR));
            return Optional.of(Optional.empty());
        }
        return Optional.of(target);
    }

    private void refuseCycles(EObject start, Set<EObject> done) {
        for (EReference reference : start.eClass().getEAllReferences()) {
            if (Rules.refusesCycles(reference)) {
                refuseCycles(start, reference, done);
            }
        }
    }

    /** One step on the way along the reference: the object and those of its targets that are still to be gone to. */
    private record Step(EObject object, Iterator<?> next) {
    }

    private void refuseCycles(EObject start, EReference reference, Set<EObject> done) {
        Deque<Step> way = new ArrayDeque<>();
        Set<EObject> onTheWay = new HashSet<>();
        enter(start, reference, done, way, onTheWay);
        while (!way.isEmpty()) {
            Step step = way.peek();
            if (!step.next().hasNext()) {
                onTheWay.remove(way.pop().object());
                continue;
            }
            EObject target = (EObject) step.next().next();
            if (onTheWay.contains(target)) {
                shop.fileOf(step.object()).ifPresent(file -> shop.report(file.problem(step.object(), reference.getName(),
                        Words.of(reference) + " goes round in a circle: it leads to the " + Words.name(target)
                                + ", which itself comes after this one",
                        "take one of the references of the circle out", Severity.ERROR)));
            } else {
                enter(target, reference, done, way, onTheWay);
            }
        }
    }

    private static void enter(EObject object, EReference reference, Set<EObject> done, Deque<Step> way, Set<EObject> onTheWay) {
        if (!object.eIsProxy() && done.add(object)) {
            onTheWay.add(object);
            way.push(new Step(object, ((List<?>) object.eGet(reference)).iterator()));
        }
    }
}
