package cradlewright.ui.properties;

import java.util.Arrays;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.dialogs.ListSelectionDialog;

/** Shows which things are ticked and lets them be ticked in a list. */
final class TickField implements Field {

    private final TickRow row;
    private final Desk desk;
    private final Text names;
    private final Button button;

    TickField(Composite parent, TickRow row, Desk desk) {
        this.row = row;
        this.desk = desk;
        names = new Text(parent, SWT.READ_ONLY | SWT.SINGLE | SWT.BORDER);
        Field.call(names, row.label());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).indent(TextField.MARK, 0).span(2, 1)
                .hint(1, SWT.DEFAULT).applyTo(names);
        button = new Button(parent, SWT.PUSH);
        button.setText(Messages.Field_tick);
        Field.call(button, NLS.bind(Messages.Field_tickTitle, row.label()));
        button.addListener(SWT.Selection, event -> choose());
        GridDataFactory.fillDefaults().applyTo(button);
        refresh();
    }

    void setEditable(boolean editable) {
        button.setEnabled(editable);
    }

    private void choose() {
        ListSelectionDialog dialog = ListSelectionDialog.of(row.candidates()).contentProvider(ArrayContentProvider.getInstance())
                .labelProvider(LabelProvider.createTextProvider(each -> row.label((EObject) each))).preselect(row.ticked().toArray())
                .title(NLS.bind(Messages.Field_tickTitle, row.label())).message(row.label()).create(button.getShell());
        if (dialog.open() == Window.OK) {
            Reply reply = row.tick(Arrays.stream(dialog.getResult()).map(EObject.class::cast).toList());
            reply.change().ifPresent(desk::perform);
            desk.say(reply);
        }
    }

    @Override
    public void refresh() {
        names.setText(row.text());
        names.setToolTipText(row.text());
    }
}
