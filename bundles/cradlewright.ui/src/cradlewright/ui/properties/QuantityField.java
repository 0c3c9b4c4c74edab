package cradlewright.ui.properties;

import cradlewright.quantity.Source;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Value, give or take and source beside each other. */
final class QuantityField implements Field {

    private static final int VALUE_LETTERS = 6;
    private static final int SHORT_LETTERS = 8;
    private static final int THREE_FIELDS = 3;
    private static final int SOURCE_WIDTH = 126;
    private static final List<Source> SOURCES = Arrays.asList(Source.values());

    private final QuantityRow row;
    private final TextField value;
    private final TextField give;
    private final ChoiceField source;
    private final boolean editable;

    QuantityField(Composite parent, QuantityRow row, boolean editable, Desk desk) {
        this.row = row;
        this.editable = editable;
        value = new TextField(parent, row.label(), new TextField.Content(row::value,
                () -> row.differ(Known::raw) ? Messages.Field_differ : Messages.Field_unknown, this::about, row::typeValue), desk)
                .wide(VALUE_LETTERS, true, row.place() ? THREE_FIELDS : 1);
        if (row.place()) {
            // Three lengths want the whole line; how well they are known goes below.
            new Label(parent, SWT.NONE);
        }
        Composite known = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.horizontalSpacing = 0;
        known.setLayout(layout);
        known.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, row.place(), false, row.place() ? 2 : 1, 1));
        Label sign = new Label(known, SWT.NONE);
        sign.setText("±");
        give = new TextField(known, NLS.bind(Messages.Name_giveOrTake, row.label()), new TextField.Content(row::giveOrTake,
                () -> row.differ(Known::giveOrTake) ? Messages.Field_differ : row.usual(), row::aboutGiveOrTake,
                row::typeGiveOrTake), desk).wide(SHORT_LETTERS, true, 1);
        source = new ChoiceField(parent, NLS.bind(Messages.Name_source, row.label()), new ChoiceField.Content(
                SOURCES.stream().map(Source::word).toList(), this::current, number -> row.choose(SOURCES.get(number))), desk);
        GridData narrow = new GridData(SWT.FILL, SWT.CENTER, false, false);
        narrow.widthHint = SOURCE_WIDTH;
        source.combo().setLayoutData(narrow);
        value.setEditable(editable);
        refresh();
    }

    private String about() {
        return row.place() ? NLS.bind(Messages.Place_words, row.label()) : row.label();
    }

    private Optional<Integer> current() {
        return row.source().map(SOURCES::indexOf);
    }

    @Override
    public void refresh() {
        value.refresh();
        give.refresh();
        source.refresh();
        boolean open = editable && row.anyKnown();
        give.setEditable(open);
        source.combo().setEnabled(open);
    }
}
