package cradlewright.ui.parts;

import cradlewright.quantity.Source;
import cradlewright.ui.edit.Edits;
import cradlewright.ui.properties.Reply;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ComboBoxCellEditor;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/** Lets a cell be typed over; what is typed is judged at each key, and nothing is stored that is refused. */
final class CellTyping extends EditingSupport {

    private static final List<Source> SOURCES = Arrays.asList(Source.values());

    private final Supplier<PartsTable> table;
    private final PartColumn column;
    private final Consumer<Reply> say;
    private final CellEditor editor;
    private EObject edited;

    /**
     * Makes the editing of a column.
     *
     * @param table as it is now
     * @param say is told what there is to say about what is being typed
     */
    CellTyping(TreeViewer viewer, Supplier<PartsTable> table, PartColumn column, Consumer<Reply> say) {
        super(viewer);
        this.table = table;
        this.column = column;
        this.say = say;
        this.editor = column == PartColumn.SOURCE ? choice(viewer.getTree()) : field(viewer.getTree());
    }

    private static CellEditor choice(Composite parent) {
        String[] words = SOURCES.stream().map(source -> source == Source.UNSTATED ? Messages.Bulk_unstated : source.word())
                .toArray(String[]::new);
        ComboBoxCellEditor combo = new ComboBoxCellEditor(parent, words, SWT.READ_ONLY);
        combo.setActivationStyle(ComboBoxCellEditor.DROP_DOWN_ON_MOUSE_ACTIVATION | ComboBoxCellEditor.DROP_DOWN_ON_KEY_ACTIVATION);
        return combo;
    }

    private CellEditor field(Composite parent) {
        TextCellEditor field = new TextCellEditor(parent);
        field.setValidator(value -> {
            if (edited == null) {
                return null;
            }
            Reply reply = table.get().type(edited, column, (String) value);
            say.accept(reply);
            return reply.isRefused() ? reply.trouble() : null;
        });
        return field;
    }

    @Override
    protected boolean canEdit(Object row) {
        return PartsTable.isThing(row) && table.get().editable((EObject) row, column);
    }

    @Override
    protected CellEditor getCellEditor(Object row) {
        return editor;
    }

    @Override
    protected Object getValue(Object row) {
        edited = null;
        String text = table.get().typed((EObject) row, column);
        edited = (EObject) row;
        return column == PartColumn.SOURCE ? (Object) SOURCES.indexOf(Source.ofWord(text).orElse(Source.UNSTATED)) : text;
    }

    @Override
    protected void setValue(Object row, Object value) {
        if (value == null) {
            // Refused; what was wrong stays in the line above.
            return;
        }
        String text = column == PartColumn.SOURCE ? SOURCES.get((Integer) value).word() : (String) value;
        Reply reply = table.get().type((EObject) row, column, text);
        reply.change().ifPresent(Edits::run);
        say.accept(reply);
    }
}
