package cradlewright.ui.properties;

import cradlewright.model.edit.Removal;
import cradlewright.ui.words.Nouns;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;

/** Makes the fields of what is chosen, below headings. */
final class Sections {

    private static final int COLUMNS = 4;
    private static final int MOST_USERS = 12;

    private final Composite body;
    private final Desk desk;
    private final Consumer<EObject> reveal;

    /**
     * Makes fields.
     *
     * @param body takes one composite for each heading
     * @param desk runs the changes of the fields
     * @param reveal goes to a thing that depends on what is chosen
     */
    Sections(Composite body, Desk desk, Consumer<EObject> reveal) {
        this.body = body;
        this.desk = desk;
        this.reveal = reveal;
    }

    /** Makes a field for each detail, heading by heading, and names what depends on a single thing. */
    List<Field> fill(Chosen chosen) {
        List<Field> fields = new ArrayList<>();
        Map<Section, Composite> sections = new EnumMap<>(Section.class);
        boolean editable = chosen.editable();
        for (Row row : Rows.of(chosen)) {
            Composite section = sections.computeIfAbsent(row.section(), each -> section(each, COLUMNS));
            Label label = new Label(section, SWT.NONE);
            label.setText(ReplyLine.escape(row.label()));
            fields.add(field(section, row, editable));
        }
        if (chosen.single()) {
            users(chosen);
        }
        return fields;
    }

    private Composite section(Section section, int columns) {
        Composite all = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(columns).spacing(4, 3).extendedMargins(0, 6, 0, 8).applyTo(all);
        Label title = new Label(all, SWT.NONE);
        title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
        title.setText(switch (section) {
            case WHAT -> Messages.Section_WHAT;
            case WHERE -> Messages.Section_WHERE;
            case HEAVY -> Messages.Section_HEAVY;
            case SIZE -> Messages.Section_SIZE;
            case KNOWN -> Messages.Section_KNOWN;
            case DEPENDS -> Messages.Section_DEPENDS;
        });
        GridDataFactory.fillDefaults().span(columns, 1).applyTo(title);
        return all;
    }

    private Field field(Composite parent, Row row, boolean editable) {
        if (row instanceof QuantityRow quantity) {
            return new QuantityField(parent, quantity, editable, desk);
        }
        if (row instanceof ChoiceRow choice) {
            List<String> labels = choice.choices().stream().map(ChoiceRow.Choice::label).toList();
            ChoiceField field = new ChoiceField(parent, row.label(), new ChoiceField.Content(labels, choice::current, choice::choose),
                    desk);
            field.combo().setLayoutData(spanning());
            field.combo().setEnabled(editable);
            return field;
        }
        if (row instanceof TickRow tick) {
            TickField field = new TickField(parent, tick, desk);
            field.setEditable(editable);
            return field;
        }
        TypedRow typed = (TypedRow) row;
        TextField field = new TextField(parent, row.label(), new TextField.Content(typed::text,
                () -> row.differ() ? Messages.Field_differ : "", typed::text, typed::type), desk).wide(1, true, COLUMNS - 1);
        field.setEditable(editable);
        return field;
    }

    private static GridData spanning() {
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false, COLUMNS - 1, 1);
        data.horizontalIndent = TextField.MARK;
        data.widthHint = 1;
        return data;
    }

    private void users(Chosen chosen) {
        List<EObject> users = new Removal(chosen.shop(), chosen.objects()).users();
        if (users.isEmpty()) {
            return;
        }
        Composite section = section(Section.DEPENDS, 1);
        users.stream().limit(MOST_USERS).forEach(user -> {
            Link link = new Link(section, SWT.NONE);
            String name = Nouns.kind(user.eClass()) + " " + ChoiceRow.label(chosen, user);
            link.setText("<a>" + ReplyLine.escape(name) + "</a>");
            Field.call(link, name);
            link.addListener(SWT.Selection, event -> reveal.accept(user));
        });
        if (users.size() > MOST_USERS) {
            new Label(section, SWT.NONE).setText(NLS.bind(Messages.Page_more, users.size() - MOST_USERS));
        }
    }
}
