package cradlewright.ui.navigator;

import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnLayoutData;
import org.eclipse.jface.viewers.ColumnPixelData;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.dialogs.FilteredTree;
import org.eclipse.ui.dialogs.PatternFilter;

/** A tree below a field that filters it, with names in one column and verdicts in a narrow second one. */
final class TwoColumnTree extends FilteredTree {

    private static final int LEAST_NAME = 120;

    private TreeColumnLayout columns;

    TwoColumnTree(Composite parent, PatternFilter filter) {
        super(parent, SWT.MULTI | SWT.H_SCROLL | SWT.V_SCROLL | SWT.FULL_SELECTION, filter, true, true);
    }

    @Override
    protected Control createTreeControl(Composite parent, int style) {
        Control tree = super.createTreeControl(parent, style);
        columns = new TreeColumnLayout();
        parent.setLayout(columns);
        return tree;
    }

    /** Adds the column that takes what room there is. */
    TreeViewerColumn addWide(ColumnLabelProvider labels) {
        return add(labels, new ColumnWeightData(1, LEAST_NAME));
    }

    /** Adds a column of a fixed width. */
    TreeViewerColumn addNarrow(ColumnLabelProvider labels, int width) {
        return add(labels, new ColumnPixelData(width));
    }

    private TreeViewerColumn add(ColumnLabelProvider labels, ColumnLayoutData width) {
        TreeViewerColumn column = new TreeViewerColumn(getViewer(), SWT.NONE);
        column.setLabelProvider(labels);
        columns.setColumnData(column.getColumn(), width);
        return column;
    }
}
