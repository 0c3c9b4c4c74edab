package cradlewright.diagrams.shared;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The bar over a diagram: what is shown, what can be done, and how things stand with the loads. */
final class SceneBar {

    /** Least width of a choice, alone and beside others, px; what room is left they share with the words at the end. */
    private static final int ALONE = 260;
    private static final int WIDTH = 170;

    private final ScenePage<?> page;
    private final List<Combo> combos = new ArrayList<>();
    private final Label status;
    private final Label nothing;

    SceneBar(Composite parent, ScenePage<?> page, SceneActions actions, List<IAction> views) {
        this.page = page;
        Composite bar = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        List<Chooser> choosers = page.choosers();
        GridLayoutFactory.swtDefaults().numColumns(2 * choosers.size() + 2).margins(6, 3).applyTo(bar);
        for (int i = 0; i < choosers.size(); i++) {
            combos.add(combo(bar, choosers.get(i).label(), i, choosers.size() > 1 ? WIDTH : ALONE));
        }
        ToolBarManager tools = new ToolBarManager(SWT.FLAT);
        actions.fill(tools, views);
        tools.createControl(bar);
        status = new Label(bar, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(status);
        nothing = new Label(parent, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).indent(6, 3).hint(WIDTH, SWT.DEFAULT).applyTo(nothing);
        show();
    }

    private Combo combo(Composite bar, String label, int which, int width) {
        new Label(bar, SWT.NONE).setText(label);
        Combo combo = new Combo(bar, SWT.READ_ONLY);
        combo.addListener(SWT.Selection, event -> page.choosers().get(which).choose().accept(combo.getSelectionIndex()));
        GridDataFactory.fillDefaults().grab(true, false).hint(width, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(combo);
        return combo;
    }

    /** Shows how things are now. */
    void show() {
        List<Chooser> choosers = page.choosers();
        for (int i = 0; i < combos.size(); i++) {
            show(combos.get(i), choosers.get(i));
        }
        tell(page.status());
        tellWhyNothing(page.nothing());
    }

    /** Why the sheet is empty has a line of its own below the bar, where it is not cut off. */
    private void tellWhyNothing(String why) {
        if (!nothing.getText().equals(why) || nothing.getVisible() == why.isEmpty()) {
            nothing.setText(why);
            nothing.setVisible(!why.isEmpty());
            ((GridData) nothing.getLayoutData()).exclude = why.isEmpty();
            nothing.requestLayout();
        }
    }

    private static void show(Combo combo, Chooser chooser) {
        if (!List.of(combo.getItems()).equals(chooser.names())) {
            combo.setItems(chooser.names().toArray(String[]::new));
            combo.requestLayout();
        }
        if (chooser.chosen() >= 0 && combo.getSelectionIndex() != chooser.chosen()) {
            combo.select(chooser.chosen());
        }
        combo.setToolTipText(combo.getText());
    }

    /** Shows some words until the next change. */
    void tell(String words) {
        if (!status.getText().equals(words)) {
            status.setText(words);
            status.setToolTipText(words);
        }
    }
}
