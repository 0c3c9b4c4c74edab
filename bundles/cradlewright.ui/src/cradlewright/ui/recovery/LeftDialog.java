package cradlewright.ui.recovery;

import cradlewright.model.edit.ChangeRefused;
import cradlewright.ui.look.Spoken;
import cradlewright.ui.shop.WorkingShop;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;

/** Asks what to do with the copies that a run of the program has left: which files, when, and what differs, in words. */
final class LeftDialog extends Dialog {

    private static final int TAKE = IDialogConstants.CLIENT_ID + 1;
    private static final int THROW = IDialogConstants.CLIENT_ID + 2;
    private static final int LATER = IDialogConstants.CANCEL_ID;
    private static final int WIDTH = 640;
    private static final int ROWS = 5;
    private static final int LINES = 8;
    private static final int MOST_NAMED = 40;

    private final LeftCopies left;
    private final List<CopyRow> rows;
    private boolean besideWhenChanged = true;
    private Text details;

    private LeftDialog(Shell parent, LeftCopies left, List<CopyRow> rows) {
        super(parent);
        this.left = left;
        this.rows = rows;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** Asks about each run that left something, the latest first, until the person puts it off. */
    static void ask(Recovery recovery) {
        for (LeftCopies left : recovery.left()) {
            WorkingShop shop = recovery.shop().orElseThrow();
            List<CopyRow> rows = new CopyRows(shop.folder()).of(left).stream().filter(row -> row.state() != CopyRow.State.SAME).toList();
            if (rows.isEmpty() && left.broken().isEmpty()) {
                recovery.remove(left);
                continue;
            }
            LeftDialog dialog = new LeftDialog(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(), left, rows);
            int answer = dialog.open();
            if (answer == TAKE) {
                if (!dialog.takeUp(shop)) {
                    return;
                }
                recovery.copyNow();
            } else if (answer != THROW) {
                return;
            }
            recovery.remove(left);
        }
    }

    private boolean takeUp(WorkingShop shop) {
        Shell parent = getParentShell();
        try {
            List<Path> beside = new TakingUp(shop.stack()).run(rows, besideWhenChanged);
            if (!beside.isEmpty()) {
                MessageDialog.openInformation(parent, Messages.Left_title, NLS.bind(Messages.TakeUp_beside,
                        beside.stream().map(Path::toString).collect(Collectors.joining("\n"))));
            }
            return true;
        } catch (IOException e) {
            MessageDialog.openError(parent, Messages.Left_title, NLS.bind(Messages.TakeUp_notWritten, e.getMessage()));
        } catch (ChangeRefused | IllegalArgumentException e) {
            MessageDialog.openError(parent, Messages.Left_title, NLS.bind(Messages.TakeUp_refused, e.getMessage()));
        }
        return false;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.Left_title);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Label question = new Label(area, SWT.WRAP);
        question.setText(rows.isEmpty() ? Messages.Left_allBroken : Messages.Left_question);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(question);
        if (!rows.isEmpty()) {
            addTable(area);
            Label what = new Label(area, SWT.NONE);
            what.setText(Messages.Left_differs);
            details = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.BORDER | SWT.V_SCROLL | SWT.WRAP);
            Spoken.name(details, Messages.Left_differs);
            GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, details.getLineHeight() * LINES).applyTo(details);
            details.setText(words(rows.get(0)));
        }
        if (rows.stream().anyMatch(row -> row.state() == CopyRow.State.FILE_CHANGED)) {
            Button beside = new Button(area, SWT.CHECK | SWT.WRAP);
            beside.setText(Messages.Left_keepBoth);
            beside.setSelection(besideWhenChanged);
            beside.addListener(SWT.Selection, event -> besideWhenChanged = beside.getSelection());
        }
        if (!left.broken().isEmpty()) {
            Label broken = new Label(area, SWT.WRAP);
            broken.setText(NLS.bind(Messages.Left_broken, String.join("\n", left.broken())));
            GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(broken);
        }
        applyDialogFont(area);
        return area;
    }

    private void addTable(Composite area) {
        Table table = new Table(area, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        table.setHeaderVisible(true);
        Spoken.name(table, Messages.Left_table);
        for (String heading : List.of(Messages.Left_file, Messages.Left_when, Messages.Left_state)) {
            new TableColumn(table, SWT.NONE).setText(heading);
        }
        DateTimeFormatter when = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM).withZone(ZoneId.systemDefault());
        for (CopyRow row : rows) {
            new TableItem(table, SWT.NONE).setText(new String[] {row.copy().path(), when.format(row.copy().made()), state(row)});
        }
        for (TableColumn column : table.getColumns()) {
            column.pack();
        }
        table.select(0);
        table.addListener(SWT.Selection, event -> details.setText(words(rows.get(table.getSelectionIndex()))));
        int height = table.getItemHeight() * (Math.min(rows.size(), ROWS) + 2);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, height).applyTo(table);
    }

    private static String state(CopyRow row) {
        return switch (row.state()) {
            case NEW -> Messages.State_new;
            case FILE_CHANGED -> Messages.State_changed;
            case ONLY_BESIDE -> Messages.State_beside;
            default -> Messages.State_fits;
        };
    }

    private static String words(CopyRow row) {
        if (row.differences().isEmpty()) {
            return row.state() == CopyRow.State.NEW ? Messages.Left_wholeFile : NLS.bind(Messages.Left_why, row.why());
        }
        String named = row.differences().stream().limit(MOST_NAMED).map(DifferenceWords::of).collect(Collectors.joining("\n"));
        int more = row.differences().size() - MOST_NAMED;
        return more > 0 ? named + "\n" + NLS.bind(Messages.Left_more, more) : named;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        if (!rows.isEmpty()) {
            createButton(parent, TAKE, Messages.Left_take, true);
        }
        createButton(parent, THROW, Messages.Left_throw, false);
        createButton(parent, LATER, Messages.Left_later, rows.isEmpty());
    }

    @Override
    protected void buttonPressed(int button) {
        setReturnCode(button);
        close();
    }
}
