package cradlewright.ui.look;

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

/** A tree below a field that filters it, with columns of which some take what room there is and others are narrow. */
public final class ColumnTree extends FilteredTree {

    private static final int LEAST_NAME = 120;

    private TreeColumnLayout columns;

    /**
     * Makes the tree.
     *
     * @param filter lets rows through by the words in the field
     * @param selection {@link SWT#SINGLE} or {@link SWT#MULTI}
     */
    public ColumnTree(Composite parent, PatternFilter filter, int selection) {
        super(parent, selection | SWT.H_SCROLL | SWT.V_SCROLL | SWT.FULL_SELECTION, filter, true, true);
    }

    @Override
    protected Control createTreeControl(Composite parent, int style) {
        Control tree = super.createTreeControl(parent, style);
        columns = new TreeColumnLayout();
        parent.setLayout(columns);
        return tree;
    }

    /** Adds a column that takes its share of what room there is. */
    public TreeViewerColumn addWide(ColumnLabelProvider labels, int share) {
        return add(labels, new ColumnWeightData(share, LEAST_NAME));
    }

    /** Adds a column of a fixed width. */
    public TreeViewerColumn addNarrow(ColumnLabelProvider labels, int width) {
        return add(labels, new ColumnPixelData(width));
    }

    private TreeViewerColumn add(ColumnLabelProvider labels, ColumnLayoutData width) {
        TreeViewerColumn column = new TreeViewerColumn(getViewer(), SWT.NONE);
        column.setLabelProvider(labels);
        columns.setColumnData(column.getColumn(), width);
        return column;
    }
}
