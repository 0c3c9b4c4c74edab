package cradlewright.ui.start;

import cradlewright.analysis.check.Verdict;
import cradlewright.ui.look.Spoken;
import cradlewright.ui.look.VerdictLook;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnPixelData;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;

/** A table of lines; texts that are cut stand whole in the tip. While answers are old, words in them are faint. */
final class RowTable<T> {

    private static final int VERDICT_WIDTH = 110;
    /** Least width for each share of a column, so that names stay readable; where that is too much the table scrolls. */
    private static final int LEAST_WIDTH = 60;
    private static final int WIDE = 3;

    private final Composite frame;
    private final TableColumnLayout columns = new TableColumnLayout();
    private final TableViewer viewer;
    private List<T> rows = List.of();
    private boolean old;

    RowTable(Composite parent, String name) {
        frame = new Composite(parent, SWT.NONE);
        frame.setLayout(columns);
        viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL | SWT.SINGLE);
        viewer.getTable().setHeaderVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(viewer);
        Spoken.name(viewer.getTable(), name);
    }

    Composite control() {
        return frame;
    }

    TableViewer viewer() {
        return viewer;
    }

    /** Adds the column with glyph and word of a verdict. */
    RowTable<T> verdict(String title, Function<T, Optional<Verdict>> verdict) {
        columns.setColumnData(column(title, new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                return verdict.apply(cast(row)).map(VerdictLook::word).orElse(Messages.Start_noVerdict);
            }

            @Override
            public Image getImage(Object row) {
                return verdict.apply(cast(row)).map(VerdictLook::image).orElse(null);
            }

            @Override
            public Color getForeground(Object row) {
                Color ground = viewer.getTable().getBackground();
                return old ? VerdictLook.faint(ground) : verdict.apply(cast(row)).map(v -> VerdictLook.color(v, ground)).orElse(null);
            }
        }).getColumn(), new ColumnPixelData(VERDICT_WIDTH));
        return this;
    }

    /** Adds a column of text. */
    RowTable<T> text(String title, int weight, Function<T, String> text) {
        columns.setColumnData(column(title, new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                return text.apply(cast(row));
            }

            @Override
            public String getToolTipText(Object row) {
                String whole = getText(row);
                return whole.isEmpty() ? null : whole;
            }
        }).getColumn(), new ColumnWeightData(weight, LEAST_WIDTH * Math.min(weight, WIDE)));
        return this;
    }

    private TableViewerColumn column(String title, ColumnLabelProvider labels) {
        TableViewerColumn column = new TableViewerColumn(viewer, SWT.NONE);
        column.getColumn().setText(title);
        column.setLabelProvider(labels);
        return column;
    }

    @SuppressWarnings("unchecked") // show() takes nothing else
    private T cast(Object row) {
        return (T) row;
    }

    /** Shows lines in place of those before; the selected place stays selected. */
    void show(List<T> shown, boolean answersAreOld) {
        rows = List.copyOf(shown);
        old = answersAreOld;
        int selected = viewer.getTable().getSelectionIndex();
        viewer.setInput(rows);
        if (selected >= 0 && selected < rows.size()) {
            viewer.getTable().setSelection(selected);
        }
    }

    /** Returns the lines that are shown. */
    List<T> rows() {
        return rows;
    }

    /** Returns the selected line. */
    Optional<T> selected() {
        return Optional.ofNullable(viewer.getStructuredSelection().getFirstElement()).map(this::cast);
    }
}
