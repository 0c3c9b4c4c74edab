package cradlewright.model.edit;

import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Takes objects out of a shop together with everything that refers to them, in whatever file that stands. */
public final class Removal {

    private final ShopFolder shop;
    private final List<EObject> objects;
    private final List<Slot> uses;
    private final Set<EObject> gone = Collections.newSetFromMap(new IdentityHashMap<>());

    /**
     * Searches the shop for what refers to the objects or to what is inside them.
     *
     * @param objects objects inside files; the top of a file is not taken out this way
     */
    public Removal(ShopFolder shop, Collection<? extends EObject> objects) {
        this.shop = shop;
        this.objects = List.copyOf(objects);
        for (EObject object : this.objects) {
            gone.add(object);
            EcoreUtil.<EObject>getAllContents(object, false).forEachRemaining(gone::add);
        }
        this.uses = uses();
    }

    /** Returns the objects that stay and lose a reference, each once, to be shown before anything is done. */
    public List<EObject> users() {
        Set<EObject> users = Collections.newSetFromMap(new IdentityHashMap<>());
        return uses.stream().map(Slot::object).filter(users::add).toList();
    }

    /** Returns the change; it must run before the shop is changed otherwise. */
    public ShopChange change(String label) {
        Set<ShopFile> files = new LinkedHashSet<>();
        objects.forEach(object -> shop.fileOf(object).ifPresent(files::add));
        uses.forEach(use -> shop.fileOf(use.object()).ifPresent(files::add));
        return new ShopChange(label, files, () -> {
            uses.forEach(this::release);
            objects.forEach(EcoreUtil::remove);
        });
    }

    private void release(Slot use) {
        if (use.feature().isMany()) {
            use.list().removeAll(gone);
        } else {
            use.object().eUnset(use.feature());
        }
    }

    private List<Slot> uses() {
        List<Slot> found = new ArrayList<>();
        for (ShopFile file : shop.files()) {
            file.root().ifPresent(top -> {
                addUses(top, found);
                EcoreUtil.<EObject>getAllContents(top, false).forEachRemaining(object -> addUses(object, found));
            });
        }
        return List.copyOf(found);
    }

    private void addUses(EObject object, List<Slot> found) {
        if (gone.contains(object)) {
            return;
        }
        for (EReference reference : object.eClass().getEAllReferences()) {
            Slot slot = new Slot(object, reference);
            if (!reference.isContainment() && slot.values().stream().anyMatch(gone::contains)) {
                found.add(slot);
            }
        }
    }
}
