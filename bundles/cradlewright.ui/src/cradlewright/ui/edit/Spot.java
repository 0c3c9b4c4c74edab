package cradlewright.ui.edit;

import cradlewright.model.edit.ShopChange;
import cradlewright.model.io.ShopFile;
import cradlewright.ui.Messages;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.words.Nouns;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.osgi.util.NLS;

/**
 * A place in a list of an object where things can be put.
 *
 * @param owner the object
 * @param list its list
 * @param index before which member; the size of the list for its end
 */
public record Spot(EObject owner, EReference list, int index) {

    /** Returns the end of the list of an object that takes all of these; nothing when it has none. */
    public static Optional<Spot> in(EObject owner, Collection<? extends EObject> things) {
        return owner.eClass().getEAllContainments().stream().filter(list -> list.isMany() && takes(list, things)).findFirst()
                .map(list -> endOf(owner, list));
    }

    /** Returns the end of a list. */
    public static Spot endOf(EObject owner, EReference list) {
        return new Spot(owner, list, ((List<?>) owner.eGet(list)).size());
    }

    /** Returns the place before or after a thing in a list, when that list takes all of these. */
    public static Optional<Spot> beside(EObject sibling, boolean after, Collection<? extends EObject> things) {
        EReference list = sibling.eContainmentFeature();
        if (list == null || !list.isMany() || !takes(list, things)) {
            return Optional.empty();
        }
        int at = ((List<?>) sibling.eContainer().eGet(list)).indexOf(sibling);
        return Optional.of(new Spot(sibling.eContainer(), list, after ? at + 1 : at));
    }

    private static boolean takes(EReference list, Collection<? extends EObject> things) {
        return !things.isEmpty() && things.stream().allMatch(list.getEReferenceType()::isInstance);
    }

    /** Tells whether things that lie in the same file can be moved here. */
    public boolean accepts(Collection<? extends EObject> things) {
        return Edits.possible(owner) && takes(list, things)
                && things.stream().allMatch(thing -> thing.eResource() == owner.eResource() && !holds(thing, owner));
    }

    private static boolean holds(EObject outer, EObject inner) {
        for (EObject at = inner; at != null; at = at.eContainer()) {
            if (at == outer) {
                return true;
            }
        }
        return false;
    }

    /** Moves things here; whatever refers to them still does. Returns whether it was done. */
    public boolean move(List<? extends EObject> things) {
        return run(Messages.Edit_move, things, () -> {
            EList<EObject> members = members();
            int at = index;
            for (EObject thing : things) {
                int old = members.indexOf(thing);
                if (old < 0) {
                    members.add(at++, thing);
                } else if (old < at) {
                    members.move(at - 1, thing);
                } else {
                    members.move(at++, thing);
                }
            }
        });
    }

    /** Puts new things here. Returns whether it was done. */
    public boolean add(String label, List<? extends EObject> things) {
        return run(label, things, () -> members().addAll(index, things));
    }

    private boolean run(String label, List<? extends EObject> things, Runnable body) {
        WorkingShop shop = WorkingShop.current().orElseThrow();
        Set<ShopFile> files = new LinkedHashSet<>();
        shop.folder().fileOf(owner).ifPresent(files::add);
        String what = things.size() == 1 ? Nouns.kindAndName(things.get(0)) : NLS.bind(Messages.Delete_several, things.size());
        return Edits.run(new ShopChange(NLS.bind(label, what), files, body));
    }

    @SuppressWarnings("unchecked") // the list takes what its type says, which was looked at before
    private EList<EObject> members() {
        return (EList<EObject>) owner.eGet(list);
    }
}
