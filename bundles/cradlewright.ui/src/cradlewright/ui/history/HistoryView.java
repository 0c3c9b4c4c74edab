package cradlewright.ui.history;

import cradlewright.model.edit.HistoryEntry;
import cradlewright.model.edit.ShopEvent;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.io.ShopFile;
import cradlewright.ui.Messages;
import cradlewright.ui.look.Spoken;
import cradlewright.ui.look.VerdictLook;
import cradlewright.ui.shop.OpenShopListener;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.shop.WorkingShopListener;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** The edits since the shop was opened, the latest at the bottom; going to one undoes or redoes as far as that. */
public final class HistoryView extends ViewPart implements OpenShopListener, WorkingShopListener {

    /** Its id. */
    public static final String ID = "cradlewright.ui.historyView";

    private static final int WHAT = 3;
    private static final int WHERE = 2;

    /**
     * One row.
     *
     * @param done how many entries are done when the shop stands at this row
     * @param entry the edit; nothing for the row before all edits
     */
    private record Row(int done, Optional<HistoryEntry> entry) {
    }

    private TableViewer table;

    @Override
    public void createPartControl(Composite parent) {
        Composite page = new Composite(parent, SWT.NONE);
        TableColumnLayout columns = new TableColumnLayout();
        page.setLayout(columns);
        table = new TableViewer(page, SWT.FULL_SELECTION | SWT.V_SCROLL);
        table.getTable().setHeaderVisible(true);
        Spoken.name(table.getTable(), Messages.History_table);
        add(columns, Messages.History_what, WHAT, new Labels() {
            @Override
            public String getText(Object row) {
                return ((Row) row).entry().map(HistoryEntry::label).orElse(Messages.History_begin);
            }
        });
        add(columns, Messages.History_where, WHERE, new Labels() {
            @Override
            public String getText(Object row) {
                return ((Row) row).entry().stream().flatMap(entry -> entry.files().stream()).map(ShopFile::path).sorted()
                        .collect(Collectors.joining(", "));
            }
        });
        add(columns, Messages.History_state, 1, new Labels() {
            @Override
            public String getText(Object row) {
                return done() == ((Row) row).done() ? Messages.History_here : undone((Row) row) ? Messages.History_undone : "";
            }
        });
        table.setContentProvider(ArrayContentProvider.getInstance());
        table.addOpenListener(event -> goTo((Row) ((IStructuredSelection) event.getSelection()).getFirstElement()));
        WorkingShop.addOpenListener(this);
        WorkingShop.current().ifPresent(this::opened);
        show();
    }

    private void add(TableColumnLayout columns, String title, int weight, ColumnLabelProvider labels) {
        TableViewerColumn column = new TableViewerColumn(table, SWT.NONE);
        column.getColumn().setText(title);
        column.setLabelProvider(labels);
        columns.setColumnData(column.getColumn(), new ColumnWeightData(weight));
    }

    private abstract class Labels extends ColumnLabelProvider {

        @Override
        public Color getForeground(Object row) {
            return undone((Row) row) ? VerdictLook.faint(table.getTable().getBackground()) : null;
        }
    }

    private static Optional<ShopStack> stack() {
        return WorkingShop.current().map(WorkingShop::stack);
    }

    private static int done() {
        return stack().map(ShopStack::cursor).orElse(0);
    }

    private static boolean undone(Row row) {
        return row.done() > done();
    }

    private static void goTo(Row row) {
        stack().ifPresent(stack -> {
            while (stack.cursor() > row.done()) {
                stack.undo();
            }
            while (stack.cursor() < row.done()) {
                stack.redo();
            }
        });
    }

    private void show() {
        List<HistoryEntry> history = stack().map(ShopStack::history).orElse(List.of());
        table.setInput(IntStream.rangeClosed(0, history.size())
                .mapToObj(done -> new Row(done, done == 0 ? Optional.empty() : Optional.of(history.get(done - 1)))).toList());
        if (stack().isPresent()) {
            table.getTable().setSelection(done());
            table.getTable().showSelection();
        } else {
            table.setInput(List.of());
        }
    }

    @Override
    public void opened(WorkingShop shop) {
        shop.addListener(this);
        show();
    }

    @Override
    public void closing(WorkingShop shop) {
        shop.removeListener(this);
        table.setInput(List.of());
    }

    @Override
    public void changed(ShopEvent event) {
        show();
    }

    @Override
    public void setFocus() {
        table.getControl().setFocus();
    }

    @Override
    public void dispose() {
        WorkingShop.removeOpenListener(this);
        WorkingShop.current().ifPresent(shop -> shop.removeListener(this));
        super.dispose();
    }
}
