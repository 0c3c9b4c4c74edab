package cradlewright.ui.properties;

import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/** A field for one of a few, stored at once. */
final class ChoiceField implements Field {

    /**
     * What there is to choose.
     *
     * @param labels of the choices
     * @param current number of the one that holds; nothing when none does
     * @param choose makes another one hold
     */
    record Content(List<String> labels, Supplier<Optional<Integer>> current, IntFunction<Reply> choose) {
    }

    private final Combo combo;
    private final Content content;
    private final Desk desk;

    ChoiceField(Composite parent, String name, Content content, Desk desk) {
        this.content = content;
        this.desk = desk;
        combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setItems(content.labels().toArray(new String[0]));
        Field.call(combo, name);
        combo.addListener(SWT.Selection, event -> choose());
        // Whoever scrolls the page must not change what lies below the mouse.
        combo.addListener(SWT.MouseVerticalWheel, event -> event.doit = false);
        refresh();
    }

    Combo combo() {
        return combo;
    }

    private void choose() {
        Reply reply = content.choose().apply(combo.getSelectionIndex());
        reply.change().ifPresent(desk::perform);
        refresh();
        desk.say(reply);
    }

    @Override
    public void refresh() {
        content.current().get().ifPresentOrElse(combo::select, combo::deselectAll);
    }
}
