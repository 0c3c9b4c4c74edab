package cradlewright.ui.edit;

import cradlewright.model.base.Named;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopCopier;
import cradlewright.ui.Messages;
import cradlewright.ui.words.Nouns;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Display;

/**
 * What was copied last in the window, as things were at that moment. The names also go to the clipboard of the system as text. Pasting
 * gives new things with new ids; they can be put into the file that they come from, and into others unless they refer to things in it.
 */
public final class Clippings {

    private static final ShopCopier COPIER = new ShopCopier(IdSource.secure());

    private static List<EObject> copies = List.of();
    private static Optional<Resource> from = Optional.empty();
    private static boolean bound;

    private Clippings() {
    }

    /** Copies things that lie in one file. */
    public static void copy(List<? extends EObject> things) {
        copies = COPIER.<EObject>copyAll(things);
        from = things.stream().findFirst().map(EObject::eResource);
        bound = things.stream().anyMatch(thing -> refersInto(thing, thing.eResource(), things));
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        clipboard.setContents(new Object[] {things.stream().map(Nouns::name).collect(Collectors.joining("\n"))},
                new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
    }

    /** Forgets everything, because another shop is opened. */
    public static void clear() {
        copies = List.of();
        from = Optional.empty();
    }

    /** Returns where what was copied would go when this is chosen: into it, else behind it. */
    public static Optional<Spot> spot(EObject chosen) {
        return Spot.in(chosen, copies).or(() -> Spot.beside(chosen, true, copies))
                .filter(spot -> Edits.possible(spot.owner()) && (!bound || from.filter(spot.owner().eResource()::equals).isPresent()));
    }

    /** Pastes. Returns whether it was done. */
    public static boolean paste(Spot spot) {
        List<EObject> fresh = COPIER.copyAll(copies);
        fresh.stream().filter(Named.class::isInstance).map(Named.class::cast).filter(named -> named.getName() != null)
                .forEach(named -> named.setName(NLS.bind(Messages.Paste_name, named.getName())));
        return spot.add(Messages.Edit_paste, fresh);
    }

    private static boolean refersInto(EObject thing, Resource file, Collection<? extends EObject> copied) {
        return EcoreUtil.CrossReferencer.find(List.of(thing)).keySet().stream()
                .anyMatch(target -> target.eResource() == file && copied.stream().noneMatch(each -> EcoreUtil.isAncestor(each, target)));
    }
}
