package cradlewright.ui.parts;

import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.Stage;
import cradlewright.ui.look.Picture;
import cradlewright.ui.look.Spoken;
import cradlewright.ui.properties.Reply;
import cradlewright.ui.words.Nouns;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerEditor;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationStrategy;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.FocusCellOwnerDrawHighlighter;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.jface.viewers.TreeViewerEditor;
import org.eclipse.jface.viewers.TreeViewerFocusCellManager;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.jface.viewers.ViewerComparator;
import org.eclipse.jface.viewers.ViewerFilter;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;

/** The rows of a parts list with a column for each detail and one with ticks for each stage. */
final class PartsTree {

    private static final int NAME_WIDTH = 190;
    private static final int WORD_WIDTH = 105;
    private static final int NUMBER_WIDTH = 70;
    private static final int GIVE_WIDTH = 104;
    private static final int STAGE_WIDTH = 104;
    private static final int WIDEST_STAGE = 180;
    private static final int MARGIN = 24;

    private final TreeViewer viewer;
    private final Supplier<PartsTable> table;
    private final PartsRows rows;
    private final Consumer<Reply> say;
    private final BiConsumer<Stage, EObject> tick;
    private final Map<PartColumn, TreeColumn> columns = new EnumMap<>(PartColumn.class);
    private final List<TreeViewerColumn> stageColumns = new ArrayList<>();
    private final TreeViewerFocusCellManager focus;
    private List<Stage> stages = List.of();
    private String words = "";

    /**
     * Makes the tree.
     *
     * @param table as it is now
     * @param say is told what there is to say about what is being typed
     * @param tick turns the tick of a thing in a stage
     */
    PartsTree(Composite parent, Supplier<PartsTable> table, Consumer<Reply> say, BiConsumer<Stage, EObject> tick) {
        this.table = table;
        this.say = say;
        this.tick = tick;
        rows = new PartsRows(table);
        viewer = new TreeViewer(parent, SWT.MULTI | SWT.FULL_SELECTION | SWT.BORDER | SWT.H_SCROLL | SWT.V_SCROLL);
        Tree tree = viewer.getTree();
        tree.setHeaderVisible(true);
        tree.setLinesVisible(true);
        Spoken.name(tree, NLS.bind(Messages.Editor_table, Nouns.name(table.get().car())));
        viewer.setUseHashlookup(true);
        viewer.setContentProvider(rows);
        viewer.addFilter(new ViewerFilter() {
            @Override
            public boolean select(Viewer inside, Object parentRow, Object row) {
                return PartsTable.isThing(row) ? passes((EObject) row)
                        : words.isBlank() || rows.children(row).stream().anyMatch(PartsTree.this::passes);
            }
        });
        ColumnViewerToolTipSupport.enableFor(viewer);
        focus = new TreeViewerFocusCellManager(viewer, new FocusCellOwnerDrawHighlighter(viewer));
        TreeViewerEditor.create(viewer, focus, new ColumnViewerEditorActivationStrategy(viewer) {
            @Override
            protected boolean isEditorActivationEvent(ColumnViewerEditorActivationEvent event) {
                return event.eventType == ColumnViewerEditorActivationEvent.MOUSE_DOUBLE_CLICK_SELECTION
                        || event.eventType == ColumnViewerEditorActivationEvent.PROGRAMMATIC
                        || event.eventType == ColumnViewerEditorActivationEvent.TRAVERSAL
                        || event.eventType == ColumnViewerEditorActivationEvent.KEY_PRESSED
                        && (event.keyCode == SWT.CR || event.keyCode == SWT.F2);
            }
        }, ColumnViewerEditor.TABBING_HORIZONTAL | ColumnViewerEditor.TABBING_MOVE_TO_ROW_NEIGHBOR
                | ColumnViewerEditor.KEYBOARD_ACTIVATION);
        Arrays.stream(PartColumn.values()).forEach(this::add);
        stagesChanged();
        tree.addListener(SWT.MouseDown, this::clicked);
        tree.addListener(SWT.KeyDown, this::keyed);
        viewer.setInput(rows);
        viewer.expandAll();
    }

    TreeViewer viewer() {
        return viewer;
    }

    /** Tells whether a row is let through by the words of the filter. */
    boolean passes(EObject thing) {
        return words.isBlank() || table.get().matches(thing, words);
    }

    private void add(PartColumn column) {
        TreeViewerColumn made = column(width(column), column.numbers() ? SWT.RIGHT : SWT.LEFT,
                (a, b) -> table.get().order(column).compare(a, b));
        columns.put(column, made.getColumn());
        made.getColumn().setText(table.get().title(column));
        made.getColumn().setToolTipText(table.get().about(column));
        made.setLabelProvider(new Labels(column));
        if (column != PartColumn.PIECE && column != PartColumn.WHERE) {
            made.setEditingSupport(new CellTyping(viewer, table, column, say));
        }
    }

    /** Names of stages are long and begin alike. */
    private int width(Stage stage) {
        GC gc = new GC(viewer.getTree());
        try {
            return Math.max(STAGE_WIDTH, Math.min(WIDEST_STAGE, gc.textExtent(Nouns.name(stage)).x + MARGIN));
        } finally {
            gc.dispose();
        }
    }

    private static int width(PartColumn column) {
        return switch (column) {
            case NAME -> NAME_WIDTH;
            case GIVE, PLACE_GIVE -> GIVE_WIDTH;
            case MASS, X, Y, Z -> NUMBER_WIDTH;
            case SOURCE, PIECE, WHERE -> WORD_WIDTH;
        };
    }

    private TreeViewerColumn column(int width, int align, Comparator<EObject> order) {
        TreeViewerColumn made = new TreeViewerColumn(viewer, align);
        TreeColumn column = made.getColumn();
        column.setWidth(width);
        column.setMoveable(true);
        column.setResizable(true);
        column.addListener(SWT.Selection, event -> sort(column, order));
        return made;
    }

    /** First click up, second down, third as in the file. */
    private void sort(TreeColumn column, Comparator<EObject> order) {
        Tree tree = viewer.getTree();
        boolean same = tree.getSortColumn() == column;
        int next = !same ? SWT.UP : tree.getSortDirection() == SWT.UP ? SWT.DOWN : SWT.NONE;
        tree.setSortColumn(next == SWT.NONE ? null : column);
        tree.setSortDirection(next);
        viewer.setComparator(next == SWT.NONE ? null : new ViewerComparator() {
            @Override
            public int compare(Viewer inside, Object a, Object b) {
                if (!PartsTable.isThing(a) || !PartsTable.isThing(b)) {
                    return 0;
                }
                Comparator<EObject> way = next == SWT.UP ? order : order.reversed();
                return way.compare((EObject) a, (EObject) b);
            }
        });
    }

    /** Makes a column for each stage there is now. */
    private void stagesChanged() {
        List<Stage> now = List.copyOf(table.get().car().getStages());
        if (now.equals(stages)) {
            stageColumns.forEach(column -> name(column.getColumn()));
            return;
        }
        stageColumns.forEach(column -> column.getColumn().dispose());
        stageColumns.clear();
        stages = now;
        for (Stage stage : stages) {
            TreeViewerColumn made = column(width(stage), SWT.LEFT, Comparator.comparing(thing -> !Ticks.isOn(stage, thing)));
            made.getColumn().setData(stage);
            made.setLabelProvider(new TickLabels(stage));
            name(made.getColumn());
            stageColumns.add(made);
        }
        bringForward();
    }

    /** The ticks stand behind what is known of the mass: they are what changes from day to day. */
    private void bringForward() {
        int fixed = PartColumn.values().length;
        int before = PartColumn.SOURCE.ordinal() + 1;
        IntStream order = IntStream.concat(IntStream.range(0, before), IntStream.range(fixed, fixed + stages.size()));
        viewer.getTree().setColumnOrder(IntStream.concat(order, IntStream.range(before, fixed)).toArray());
    }

    private static void name(TreeColumn column) {
        String name = Nouns.name((Stage) column.getData());
        column.setText(name);
        column.setToolTipText(name);
    }

    /** Shows what is there after an edit, or in other units. */
    void refresh() {
        stagesChanged();
        columns.forEach((column, shown) -> shown.setText(table.get().title(column)));
        viewer.getTree().setRedraw(false);
        try {
            viewer.refresh();
        } finally {
            viewer.getTree().setRedraw(true);
        }
    }

    void filter(String wanted) {
        words = wanted;
        viewer.refresh();
        if (!words.isBlank()) {
            viewer.expandAll();
        }
    }

    void group(boolean byPiece) {
        rows.group(byPiece);
        viewer.refresh();
        viewer.expandAll();
    }

    /** Returns the parts and loads that are selected; a heading that is selected stands for none. */
    List<EObject> selected() {
        IStructuredSelection selection = viewer.getStructuredSelection();
        List<EObject> all = new ArrayList<>();
        for (Object row : selection) {
            if (PartsTable.isThing(row)) {
                all.add((EObject) row);
            }
        }
        return all.stream().distinct().toList();
    }

    /** Returns the rows that are shown, in the order in which they are shown. */
    List<EObject> shown() {
        List<EObject> all = new ArrayList<>();
        Arrays.stream(viewer.getTree().getItems()).forEach(item -> {
            if (PartsTable.isThing(item.getData())) {
                all.add((EObject) item.getData());
            }
            Arrays.stream(item.getItems()).map(child -> (EObject) child.getData()).filter(PartsTable::isThing).forEach(all::add);
        });
        return all;
    }

    /** Selects rows and scrolls to them. */
    void select(List<? extends EObject> things) {
        viewer.setSelection(new StructuredSelection(things), true);
    }

    /** Begins to type a name. */
    void rename(EObject thing) {
        viewer.editElement(thing, PartColumn.NAME.ordinal());
    }

    private void clicked(Event event) {
        ViewerCell cell = viewer.getCell(new Point(event.x, event.y));
        if (event.button == 1 && (event.stateMask & SWT.MODIFIER_MASK) == 0 && cell != null && cell.getImage() != null) {
            turn(cell);
        }
    }

    private void keyed(Event event) {
        if (event.character == ' ' && focus.getFocusCell() != null && turn(focus.getFocusCell())) {
            event.doit = false;
        }
    }

    private boolean turn(ViewerCell cell) {
        Object stage = viewer.getTree().getColumn(cell.getColumnIndex()).getData();
        if (stage instanceof Stage turned && PartsTable.isThing(cell.getElement())) {
            tick.accept(turned, (EObject) cell.getElement());
            return true;
        }
        return false;
    }

    /** What stands in a column. */
    private final class Labels extends ColumnLabelProvider {
        private final PartColumn column;

        Labels(PartColumn column) {
            this.column = column;
        }

        @Override
        public String getText(Object row) {
            if (PartsTable.isThing(row)) {
                return table.get().text((EObject) row, column);
            }
            return column != PartColumn.NAME ? "" : row instanceof Piece piece ? Nouns.name(piece) : Messages.Group_loads;
        }

        @Override
        public Image getImage(Object row) {
            if (column != PartColumn.NAME) {
                return null;
            }
            return picture(row).image();
        }

        private static Picture picture(Object row) {
            if (row instanceof Part) {
                return Picture.PART;
            }
            return row instanceof Piece ? Picture.PIECE : Picture.LOAD;
        }

        @Override
        public Font getFont(Object row) {
            return PartsTable.isThing(row) ? null : JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT);
        }

        @Override
        public String getToolTipText(Object row) {
            return getText(row).isEmpty() ? null : getText(row);
        }
    }

    /** The tick of a stage: a picture, and a word for those who have it read out. */
    private static final class TickLabels extends ColumnLabelProvider {
        private final Stage stage;

        TickLabels(Stage stage) {
            this.stage = stage;
        }

        @Override
        public String getText(Object row) {
            return !PartsTable.isThing(row) ? "" : Ticks.isOn(stage, (EObject) row) ? Messages.Tick_on : Messages.Tick_off;
        }

        @Override
        public Image getImage(Object row) {
            return !PartsTable.isThing(row) ? null
                    : (Ticks.isOn(stage, (EObject) row) ? Picture.TICKED : Picture.UNTICKED).image();
        }

        @Override
        public String getToolTipText(Object row) {
            return PartsTable.isThing(row) ? Nouns.name(stage) + ": " + getText(row) : null;
        }
    }
}
