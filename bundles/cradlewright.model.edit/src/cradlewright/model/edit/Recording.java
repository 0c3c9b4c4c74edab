package cradlewright.model.edit;

import cradlewright.model.base.BasePackage;
import cradlewright.model.base.Identified;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

/** What a change does while it runs, and whether it keeps the rules of the shop. */
final class Recording {

    private final ShopFolder shop;
    private final ShopChange change;
    private final List<Step> steps = new ArrayList<>();
    private final Set<ShopFile> files = new LinkedHashSet<>();
    private String objection;

    Recording(ShopFolder shop, ShopChange change) {
        this.shop = shop;
        this.change = change;
    }

    /** Takes down one step. Nothing is refused here: EMF may be half way through a change of two objects. */
    void add(Notification told) {
        Step step = Step.of(told);
        steps.add(step);
        Slot slot = step.slot();
        if (slot.atTop()) {
            object("the object at the top of a file can neither be taken out nor be replaced; change what is inside it");
            return;
        }
        shop.fileOf(slot.object()).ifPresent(file -> {
            files.add(file);
            if (!change.files().contains(file)) {
                object("it changed " + Words.name(slot.object()) + " in " + file.path() + ", which it did not name; name this file too");
            }
        });
        if (slot.feature() == BasePackage.Literals.IDENTIFIED__ID) {
            object("it changed the id of " + Words.name(slot.object())
                    + ", which others refer to; give an id once, before the object comes into the shop");
        }
    }

    /** Notes that a file came into the shop or left it. */
    void filesChanged() {
        object("it added or removed a file; add files through the stack itself");
    }

    List<Step> steps() {
        return Collections.unmodifiableList(steps);
    }

    /** Returns the files that were changed. */
    Set<ShopFile> files() {
        return Collections.unmodifiableSet(files);
    }

    /** Returns the first rule that the change broke. */
    Optional<String> objection() {
        judgeNewObjects();
        judgeReferences();
        return Optional.ofNullable(objection);
    }

    private void object(String why) {
        if (objection == null) {
            objection = why;
        }
    }

    private void judgeNewObjects() {
        for (Step step : steps) {
            if (step.slot().holdsContents()) {
                walk(step.came(), object -> {
                    if (inShop(object)) {
                        judgeId(object);
                        judgeTargets(object);
                    }
                });
            }
        }
    }

    private void judgeId(EObject object) {
        if (!(object instanceof Identified identified)) {
            return;
        }
        String id = identified.getId();
        if (id == null || id.isBlank()) {
            object(Words.name(object) + " came into the shop without an id; give it a new one before");
        } else if (shop.find(id).orElse(object) != object) {
            object(Words.name(object) + " came with the id " + id + ", which is that of " + shop.find(id).map(Words::name).orElse("")
                    + "; copies get ids of their own");
        }
    }

    private void judgeReferences() {
        boolean gone = false;
        for (Step step : steps) {
            if (step.slot().holdsContents()) {
                gone |= step.went().stream().anyMatch(value -> value instanceof EObject object && !inShop(object));
            } else if (step.slot().feature() instanceof EReference && inShop(step.slot().object())) {
                judgeTargets(step.slot().object());
            }
        }
        if (gone) {
            shop.files().forEach(file -> file.root().ifPresent(top -> walk(List.of(top), this::judgeTargets)));
        }
    }

    private void judgeTargets(EObject object) {
        for (EObject target : (Iterable<EObject>) () -> ((InternalEList<EObject>) object.eCrossReferences()).basicIterator()) {
            if (!target.eIsProxy() && !inShop(target)) {
                object(Words.name(object) + " refers to " + Words.name(target)
                        + ", which is not in the shop afterwards; take the reference away in the same change");
            }
        }
    }

    private boolean inShop(EObject object) {
        return object.eResource() != null && object.eResource().getResourceSet() == shop.resourceSet();
    }

    private static void walk(List<?> tops, Consumer<EObject> visitor) {
        for (Object top : tops) {
            if (top instanceof EObject object) {
                visitor.accept(object);
                EcoreUtil.<EObject>getAllContents(object, false).forEachRemaining(visitor);
            }
        }
    }
}
