package cradlewright.model.io;

import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Setup;
import cradlewright.model.job.Job;
import cradlewright.model.job.Operation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Finds what a reference may sensibly lead to. A kind of thing that can stand in the same file is looked for there alone: a rail ends at
 * corners of its own dolly. A support stands on the dolly, lift or hoist of its setup, a step of a job is about the car of the job.
 */
public final class FittingObjects {

    private final ShopFolder shop;
    private final EObject object;
    private final EReference reference;

    private FittingObjects(ShopFolder shop, EObject object, EReference reference) {
        this.shop = shop;
        this.object = object;
        this.reference = reference;
    }

    /** Returns the objects to which the reference may lead, in the order of files; none that would close a circle where that is refused. */
    public static List<EObject> of(ShopFolder shop, EObject object, EReference reference) {
        return new FittingObjects(shop, object, reference).find();
    }

    private List<EObject> find() {
        EObject own = EcoreUtil.getRootContainer(object);
        boolean athome = canHold(own.eClass(), reference.getEReferenceType(), new HashSet<>());
        Stream<EObject> tops = athome ? Stream.of(own) : shop.files().stream().flatMap(file -> file.root().stream());
        List<EObject> found = new ArrayList<>();
        tops.forEach(top -> Contents.walk(top, each -> {
            if (reference.getEReferenceType().isInstance(each) && belongs(each)) {
                found.add(each);
            }
        }));
        if (Rules.refusesCycles(reference)) {
            found.removeIf(each -> leadsBack(each, Collections.newSetFromMap(new IdentityHashMap<>())));
        }
        return List.copyOf(found);
    }

    private static boolean canHold(EClass holder, EClass held, Set<EClass> seen) {
        for (EReference containment : holder.getEAllContainments()) {
            EClass type = containment.getEReferenceType();
            if (held.isSuperTypeOf(type) || type.isSuperTypeOf(held) || seen.add(type) && canHold(type, held, seen)) {
                return true;
            }
        }
        return false;
    }

    private boolean belongs(EObject candidate) {
        if (object instanceof Contact && object.eContainer() instanceof Setup setup) {
            return inside(candidate, setup.getDolly()) && inside(candidate, setup.getLift()) && inside(candidate, setup.getHoist());
        }
        boolean ofCar = object instanceof Operation && object.eContainer() instanceof Job;
        return !ofCar || inside(candidate, ((Job) object.eContainer()).getCar());
    }

    /** Tells whether the candidate lies inside the holder, or has nothing to do with holders of that kind. */
    private static boolean inside(EObject candidate, EObject holder) {
        if (holder == null || holder.eIsProxy()) {
            return true;
        }
        for (EObject at = candidate; at != null; at = at.eContainer()) {
            if (at == holder) {
                return true;
            }
            if (at.eClass() == holder.eClass()) {
                return false;
            }
        }
        return true;
    }

    private boolean leadsBack(EObject from, Set<EObject> seen) {
        if (from == object) {
            return true;
        }
        if (from.eIsProxy() || !seen.add(from)) {
            return false;
        }
        Object next = from.eGet(reference);
        return (next instanceof List<?> several ? several.stream() : Stream.ofNullable(next))
                .anyMatch(each -> leadsBack((EObject) each, seen));
    }
}
