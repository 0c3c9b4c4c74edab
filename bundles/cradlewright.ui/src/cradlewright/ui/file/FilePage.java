package cradlewright.ui.file;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.model.io.ShopFile;
import cradlewright.ui.Messages;
import cradlewright.ui.look.Spoken;
import cradlewright.ui.look.VerdictLook;
import cradlewright.ui.shop.Saveables;
import cradlewright.ui.shop.ShowsObject;
import cradlewright.ui.shop.StateWords;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.shop.WorkingShopListener;
import cradlewright.ui.words.Nouns;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnPixelData;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.ISaveablesSource;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.Saveable;
import org.eclipse.ui.ide.IGotoMarker;
import org.eclipse.ui.part.EditorPart;

/**
 * Shows what the checks say about the things in a file, for kinds of files that have no editor of their own, and what is wrong with one
 * that could not be read.
 */
public final class FilePage extends EditorPart implements ISaveablesSource, ShowsObject, IGotoMarker, WorkingShopListener {

    /** Its id. */
    public static final String ID = "cradlewright.ui.filePage";

    private static final int VERDICT_WIDTH = 120;
    private static final int THING = 2;
    private static final int REASON = 7;

    private WorkingShop shop;
    private ShopFile file;
    private Saveables saveables;
    private TableViewer table;
    private Label line;

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        Optional<WorkingShop> open = WorkingShop.current();
        Optional<ShopFile> found = input instanceof IFileEditorInput wanted ? open.flatMap(now -> now.fileOf(wanted.getFile()))
                : Optional.empty();
        if (found.isEmpty()) {
            throw new PartInitException(Messages.Open_notOfShop);
        }
        shop = open.orElseThrow();
        file = found.get();
        setSite(site);
        setInput(input);
        setPartName(file.root().map(Nouns::name).orElse(input.getName()));
        setTitleToolTip(file.path());
        saveables = new Saveables(this, shop, () -> Stream.of(file), () -> firePropertyChange(PROP_DIRTY));
        shop.addListener(this);
    }

    @Override
    public void createPartControl(Composite parent) {
        if (TroublePage.wanted(file)) {
            TroublePage.create(parent, shop, file);
            return;
        }
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().margins(12, 12).spacing(6, 8).applyTo(page);
        Label title = new Label(page, SWT.NONE);
        title.setFont(JFaceResources.getHeaderFont());
        title.setText(file.root().map(Nouns::name).orElse(""));
        line = new Label(page, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        Composite frame = new Composite(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(frame);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        table = new TableViewer(frame, SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL);
        table.getTable().setHeaderVisible(true);
        Spoken.name(table.getTable(), Messages.File_table);
        columns.setColumnData(add(Messages.File_verdict, new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                return VerdictLook.word(((Finding) row).verdict());
            }

            @Override
            public Image getImage(Object row) {
                return VerdictLook.image(((Finding) row).verdict());
            }
        }).getColumn(), new ColumnPixelData(VERDICT_WIDTH));
        columns.setColumnData(add(Messages.File_thing, ColumnLabelProvider.createTextProvider(row -> ((Finding) row).objectName()))
                .getColumn(), new ColumnWeightData(THING));
        columns.setColumnData(add(Messages.File_reason, ColumnLabelProvider.createTextProvider(row -> ((Finding) row).words()))
                .getColumn(), new ColumnWeightData(REASON));
        table.setContentProvider(ArrayContentProvider.getInstance());
        getSite().setSelectionProvider(table);
        answered();
    }

    private TableViewerColumn add(String title, ColumnLabelProvider labels) {
        TableViewerColumn column = new TableViewerColumn(table, SWT.NONE);
        column.getColumn().setText(title);
        column.setLabelProvider(labels);
        return column;
    }

    @Override
    public void answered() {
        if (table == null) {
            return;
        }
        List<Finding> findings = shop.state() == WorkingShop.State.HELD_BACK ? List.of() : about();
        table.setInput(findings);
        boolean nothing = shop.state() == WorkingShop.State.CURRENT && findings.isEmpty();
        line.setText(nothing ? Messages.File_nothing : StateWords.of(shop));
        line.getParent().layout();
    }

    private List<Finding> about() {
        return shop.answers().stream().flatMap(answers -> answers.findings().stream())
                .filter(finding -> finding.verdict() != Verdict.HOLDS)
                .filter(finding -> shop.fileOf(finding.objectId()).or(() -> shop.fileOf(finding.subject().ownerId()))
                        .filter(lies -> lies == file).isPresent())
                .sorted(Comparator.comparing(Finding::verdict).reversed()).toList();
    }

    @Override
    public void show(String objectId) {
        if (table != null) {
            about().stream().filter(finding -> finding.objectId().equals(objectId)).findFirst()
                    .ifPresent(finding -> table.setSelection(new StructuredSelection(finding), true));
        }
    }

    @Override
    public void gotoMarker(IMarker marker) {
        show(marker.getAttribute("objectId", ""));
    }

    @Override
    public Saveable[] getSaveables() {
        return saveables.getSaveables();
    }

    @Override
    public Saveable[] getActiveSaveables() {
        return saveables.getSaveables();
    }

    @Override
    public boolean isDirty() {
        return saveables.isDirty();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        throw new UnsupportedOperationException("the workbench saves the file itself");
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("the files of a shop have their names");
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void setFocus() {
        if (table != null) {
            table.getControl().setFocus();
        }
    }

    @Override
    public void dispose() {
        if (shop != null) {
            shop.removeListener(this);
            saveables.dispose();
        }
        super.dispose();
    }
}
