package cradlewright.ui.parts;

import cradlewright.analysis.check.Verdict;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.Stage;
import cradlewright.ui.look.Spoken;
import cradlewright.ui.look.VerdictLook;
import cradlewright.ui.words.Nouns;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnPixelData;
import org.eclipse.jface.viewers.ColumnLayoutData;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Shows row by row what would become of pasted cells, and asks what their columns are where no header says it. */
final class PasteDialog extends Dialog {

    private static final int WIDTH = 860;
    private static final int HEIGHT = 560;
    private static final int NARROW = 60;
    private static final int KIND = 90;
    private static final int COLUMN = 150;

    private final ShopFile file;
    private final PartsTable table;
    private final PastedCells cells;
    private final List<PasteColumn> choices = new ArrayList<>();
    private final List<Combo> columns = new ArrayList<>();
    private List<PasteColumn> meant;
    private Piece target;
    private boolean header;
    private DecimalSign sign;
    private PastePlan plan;
    private Composite columnRow;
    private ScrolledComposite scrolled;
    private TableViewer preview;
    private Label sum;

    PasteDialog(Shell shell, ShopFile file, PartsTable table, PastedCells cells, Piece target) {
        super(shell);
        this.file = file;
        this.table = table;
        this.cells = cells;
        this.target = target;
        header = PasteColumn.isHeader(cells.rows().get(0));
        sign = DecimalSign.of(cells.rows(), table.habits().locale());
        choices.add(PasteColumn.SKIPPED);
        Arrays.stream(PartColumn.values()).filter(column -> column != PartColumn.WHERE).map(PasteColumn::of).forEach(choices::add);
        table.car().getStages().stream().map(PasteColumn::of).forEach(choices::add);
        propose();
    }

    private void propose() {
        meant = new ArrayList<>(header ? PasteColumn.ofHeader(cells.rows().get(0), table.car().getStages())
                : PasteColumn.proposed(cells.columns()));
    }

    /** Returns what was shown last. */
    PastePlan plan() {
        return plan;
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Point getInitialSize() {
        return new Point(WIDTH, HEIGHT);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.Paste_title);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Composite questions = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(5).spacing(8, 4).applyTo(questions);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(questions);
        List<Piece> pieces = table.car().getPieces();
        Combo into = combo(questions, Messages.Paste_into, pieces.stream().map(Nouns::name).toList(), pieces.indexOf(target));
        into.addListener(SWT.Selection, event -> {
            target = pieces.get(into.getSelectionIndex());
            again();
        });
        Combo signs = combo(questions, Messages.Paste_sign, List.of(Messages.Paste_point, Messages.Paste_comma), sign.ordinal());
        signs.addListener(SWT.Selection, event -> {
            sign = DecimalSign.values()[signs.getSelectionIndex()];
            again();
        });
        Button first = new Button(questions, SWT.CHECK);
        first.setText(Messages.Paste_header);
        first.setSelection(header);
        first.addListener(SWT.Selection, event -> {
            header = first.getSelection();
            propose();
            showColumns();
            again();
        });
        scrolled = new ScrolledComposite(area, SWT.H_SCROLL);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(scrolled);
        columnRow = new Composite(scrolled, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(cells.columns()).spacing(4, 2).applyTo(columnRow);
        scrolled.setContent(columnRow);
        makeColumns();
        makePreview(area);
        sum = new Label(area, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(sum);
        return area;
    }

    private static Combo combo(Composite parent, String title, List<String> words, int chosen) {
        new Label(parent, SWT.NONE).setText(title);
        Combo combo = new Combo(parent, SWT.READ_ONLY);
        combo.setItems(words.toArray(new String[0]));
        combo.select(chosen);
        return combo;
    }

    private void makeColumns() {
        String[] words = choices.stream().map(this::words).toArray(String[]::new);
        for (int i = 0; i < cells.columns(); i++) {
            new Label(columnRow, SWT.NONE).setText(NLS.bind(Messages.Paste_column, i + 1));
        }
        for (int i = 0; i < cells.columns(); i++) {
            int number = i;
            Combo combo = new Combo(columnRow, SWT.READ_ONLY);
            combo.setItems(words);
            String example = cells.rows().get(Math.min(1, cells.rows().size() - 1)).get(i);
            String name = NLS.bind(Messages.Paste_columnHint, NLS.bind(Messages.Paste_column, i + 1), example);
            combo.setToolTipText(name);
            GridDataFactory.fillDefaults().hint(COLUMN, SWT.DEFAULT).applyTo(combo);
            Spoken.name(combo, name);
            combo.addListener(SWT.Selection, event -> {
                meant.set(number, choices.get(combo.getSelectionIndex()));
                again();
            });
            columns.add(combo);
        }
        showColumns();
        scrolled.setMinSize(columnRow.computeSize(SWT.DEFAULT, SWT.DEFAULT));
    }

    private String words(PasteColumn choice) {
        Optional<Stage> stage = choice.stage();
        return stage.map(Nouns::name).orElseGet(() -> choice.column().map(this::words).orElse(Messages.Paste_skip));
    }

    private String words(PartColumn column) {
        return switch (column) {
            case GIVE, PLACE_GIVE -> table.about(column).replaceFirst(",.*", "");
            default -> table.title(column);
        };
    }

    private void showColumns() {
        for (int i = 0; i < columns.size(); i++) {
            PasteColumn now = meant.get(i);
            int found = 0;
            for (int k = 0; k < choices.size(); k++) {
                if (choices.get(k).column().equals(now.column()) && choices.get(k).stage().equals(now.stage())) {
                    found = k;
                }
            }
            columns.get(i).select(found);
        }
    }

    private void makePreview(Composite area) {
        Composite frame = new Composite(area, SWT.NONE);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(frame);
        preview = new TableViewer(frame, SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
        preview.getTable().setHeaderVisible(true);
        preview.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(preview);
        Spoken.name(preview.getTable(), Messages.Paste_preview);
        add(layout, Messages.Paste_row, new ColumnPixelData(NARROW), row -> Integer.toString(row.number() + (header ? 1 : 0)));
        add(layout, Messages.Paste_name, new ColumnWeightData(3), PastePlan.Row::name);
        add(layout, Messages.Paste_kind, new ColumnPixelData(KIND), row -> word(row.kind()));
        add(layout, Messages.Paste_what, new ColumnWeightData(8), PastePlan.Row::words);
    }

    private void add(TableColumnLayout layout, String title, ColumnLayoutData width, Function<PastePlan.Row, String> text) {
        TableViewerColumn column = new TableViewerColumn(preview, SWT.NONE);
        column.getColumn().setText(title);
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                return text.apply((PastePlan.Row) row);
            }

            @Override
            public String getToolTipText(Object row) {
                return getText(row).isEmpty() ? null : getText(row);
            }

            @Override
            public Color getForeground(Object row) {
                Color ground = preview.getTable().getBackground();
                return switch (((PastePlan.Row) row).kind()) {
                    case REFUSED -> VerdictLook.color(Verdict.STOP, ground);
                    case SAME -> VerdictLook.faint(ground);
                    case NEW, CHANGED -> null;
                };
            }
        });
        layout.setColumnData(column.getColumn(), width);
    }

    private static String word(PastePlan.Kind kind) {
        return switch (kind) {
            case NEW -> Messages.Paste_kindNew;
            case CHANGED -> Messages.Paste_kindChanged;
            case SAME -> Messages.Paste_kindSame;
            case REFUSED -> Messages.Paste_kindRefused;
        };
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, NLS.bind(Messages.Paste_do, ""), true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        again();
    }

    /** Plans anew with what is chosen now, and shows it. */
    private void again() {
        List<List<String>> rows = cells.rows().subList(header ? 1 : 0, cells.rows().size());
        plan = new PastePlanner(file, table.car(), target, PastePlanner.Written.of(table.habits(), sign), IdSource.secure())
                .plan(rows, meant);
        preview.setInput(plan.rows());
        sum.setText(NLS.bind(Messages.Paste_sum, new Object[] {plan.count(PastePlan.Kind.NEW), plan.count(PastePlan.Kind.CHANGED),
            plan.count(PastePlan.Kind.SAME), plan.count(PastePlan.Kind.REFUSED)}));
        long entered = plan.count(PastePlan.Kind.NEW) + plan.count(PastePlan.Kind.CHANGED);
        Button enter = getButton(IDialogConstants.OK_ID);
        enter.setText(entered == 1 ? Messages.Paste_doOne : NLS.bind(Messages.Paste_do, entered));
        enter.setEnabled(plan.change().isPresent());
        enter.getParent().layout();
    }
}
