package cradlewright.ui.properties;

import cradlewright.model.io.FittingObjects;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/** Things of the shop that are ticked off for one thing: the parts that are on, the pieces that are carried. */
final class TickRow extends Row {

    private final EReference reference;

    TickRow(Chosen chosen, EReference reference) {
        super(chosen, reference);
        this.reference = reference;
    }

    /** Returns the things that may be ticked: what fits, and what is ticked already. */
    List<EObject> candidates() {
        List<EObject> all = new ArrayList<>(FittingObjects.of(chosen().shop(), chosen().first(), reference));
        ticked().stream().filter(each -> !all.contains(each)).forEach(all::add);
        return List.copyOf(all);
    }

    /** Returns the things that are ticked, in their order. */
    List<EObject> ticked() {
        return ((List<?>) chosen().first().eGet(reference)).stream().map(EObject.class::cast).toList();
    }

    /** Returns the names of those that are ticked. */
    String text() {
        return ticked().stream().map(this::label).collect(Collectors.joining(", "));
    }

    String label(EObject thing) {
        return ChoiceRow.label(chosen(), thing);
    }

    /** Ticks just these; those that were ticked keep their order, new ones come after them. */
    Reply tick(List<EObject> things) {
        List<EObject> next = new ArrayList<>(ticked());
        next.retainAll(things);
        things.stream().filter(each -> !next.contains(each)).forEach(next::add);
        return chosen().change(reference, old -> next, "");
    }
}
