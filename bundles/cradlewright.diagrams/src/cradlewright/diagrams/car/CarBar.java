package cradlewright.diagrams.car;

import cradlewright.diagrams.Messages;
import cradlewright.model.vehicle.Visit;
import cradlewright.ui.words.Nouns;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The bar over the diagram: which visit is shown, what can be done, and how things stand with the loads. */
final class CarBar {

    private static final int WIDTH = 260;

    private final CarPage page;
    private final Combo visits;
    private final Label status;
    private List<Visit> shown = List.of();

    CarBar(Composite parent, CarPage page, CarActions actions, List<IAction> views) {
        this.page = page;
        Composite bar = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        GridLayoutFactory.swtDefaults().numColumns(4).margins(6, 3).applyTo(bar);
        new Label(bar, SWT.NONE).setText(Messages.Bar_visit);
        visits = new Combo(bar, SWT.READ_ONLY);
        visits.addListener(SWT.Selection, event -> page.choose(Optional.of(shown.get(visits.getSelectionIndex()))));
        GridDataFactory.fillDefaults().hint(WIDTH, SWT.DEFAULT).applyTo(visits);
        ToolBarManager tools = new ToolBarManager(SWT.FLAT);
        actions.fill(tools, views);
        tools.createControl(bar);
        status = new Label(bar, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(status);
        show();
    }

    /** Shows how things are now. */
    void show() {
        List<Visit> now = page.visits();
        List<String> names = now.stream().map(CarBar::name).toList();
        if (!now.equals(shown) || !List.of(visits.getItems()).equals(names)) {
            shown = now;
            visits.setItems(names.toArray(String[]::new));
            visits.requestLayout();
        }
        int at = page.visit().map(shown::indexOf).orElse(-1);
        if (at >= 0 && visits.getSelectionIndex() != at) {
            visits.select(at);
        }
        tell(page.status());
    }

    private static String name(Visit visit) {
        return NLS.bind(Messages.Bar_as, Nouns.name(visit), Nouns.name(visit.getStage())) + ", " + Nouns.name(visit.getSetup());
    }

    /** Shows some words until the next change. */
    void tell(String words) {
        if (!status.getText().equals(words)) {
            status.setText(words);
            status.setToolTipText(words);
        }
    }
}
