package cradlewright.ui.navigator;

import cradlewright.model.edit.ShopEvent;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.ShopFile;
import cradlewright.ui.Messages;
import cradlewright.ui.edit.Clippings;
import cradlewright.ui.edit.Deleting;
import cradlewright.ui.look.ColumnTree;
import cradlewright.ui.edit.Spot;
import cradlewright.ui.look.Picture;
import cradlewright.ui.look.Spoken;
import cradlewright.ui.shop.OpenShopListener;
import cradlewright.ui.shop.Saveables;
import cradlewright.ui.shop.ShopEditors;
import cradlewright.ui.shop.StateWords;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.shop.WorkingShopListener;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.ISaveablePart;
import org.eclipse.ui.ISaveablesSource;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.Saveable;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.ViewPart;

/** The tree of everything in the shop: names, verdicts, unsaved edits; opens editors, renames and deletes. */
public final class ShopView extends ViewPart implements ISaveablesSource, ISaveablePart, OpenShopListener, WorkingShopListener {

    /** Its id. */
    public static final String ID = "cradlewright.ui.shopView";

    private static final int VERDICT_WIDTH = 110;

    private final ShopTree rows = new ShopTree();
    private StackLayout pages;
    private Composite book;
    private Composite empty;
    private Composite full;
    private Label line;
    private TreeViewer tree;
    private VerdictLabels verdicts;
    private Optional<WorkingShop> shop = Optional.empty();
    private Optional<Saveables> saveables = Optional.empty();

    @Override
    public void createPartControl(Composite parent) {
        book = parent;
        pages = new StackLayout();
        parent.setLayout(pages);
        empty = emptyPage(parent);
        full = fullPage(parent);
        makeActions();
        getSite().setSelectionProvider(tree);
        WorkingShop.addOpenListener(this);
        show(WorkingShop.current());
    }

    private Composite emptyPage(Composite parent) {
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(10, 10).applyTo(page);
        Link link = new Link(page, SWT.WRAP);
        link.setText(Messages.Navigator_noShop);
        link.addListener(SWT.Selection, event -> {
            try {
                getSite().getService(IHandlerService.class).executeCommand("cradlewright.ui.openShop", null);
            } catch (CommandException e) {
                throw new IllegalStateException(e);
            }
        });
        GridDataFactory.fillDefaults().grab(true, false).applyTo(link);
        return page;
    }

    private Composite fullPage(Composite parent) {
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(page);
        line = new Label(page, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).indent(4, 2).exclude(true).applyTo(line);
        verdicts = new VerdictLabels(page);
        ColumnTree filtered = new ColumnTree(page, new NameFilter(verdicts), SWT.MULTI);
        filtered.setInitialText(Messages.Navigator_filter);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(filtered);
        tree = filtered.getViewer();
        filtered.addWide(new ShopLabels(), 1).setEditingSupport(new Renaming(tree));
        filtered.addNarrow(verdicts, VERDICT_WIDTH);
        ColumnViewerToolTipSupport.enableFor(tree);
        tree.setContentProvider(rows);
        tree.setUseHashlookup(true);
        Spoken.name(tree.getTree(), Messages.Navigator_tree);
        Spoken.name(filtered.getFilterControl(), Messages.Navigator_filter);
        Dragging.install(tree);
        tree.addDoubleClickListener(event -> open(((IStructuredSelection) event.getSelection()).getFirstElement()));
        return page;
    }

    private void makeActions() {
        Action open = action(Messages.Navigator_open, () -> open(selection().getFirstElement()));
        Action rename = action(Messages.Navigator_rename, () -> tree.editElement(selection().getFirstElement(), 0));
        Action delete = action(Messages.Navigator_delete, () -> Deleting.delete(getSite().getShell(), things()));
        open.setImageDescriptor(Picture.OPEN.descriptor());
        rename.setActionDefinitionId(ActionFactory.RENAME.getCommandId());
        delete.setActionDefinitionId(ActionFactory.DELETE.getCommandId());
        Action copy = action(Messages.Navigator_copy, () -> Clippings.copy(things()));
        Action paste = action(Messages.Navigator_paste, () -> spot().ifPresent(Clippings::paste));
        copy.setActionDefinitionId(ActionFactory.COPY.getCommandId());
        paste.setActionDefinitionId(ActionFactory.PASTE.getCommandId());
        IActionBars bars = getViewSite().getActionBars();
        bars.setGlobalActionHandler(ActionFactory.COPY.getId(), copy);
        bars.setGlobalActionHandler(ActionFactory.PASTE.getId(), paste);
        bars.setGlobalActionHandler(ActionFactory.RENAME.getId(), rename);
        bars.setGlobalActionHandler(ActionFactory.DELETE.getId(), delete);
        tree.addSelectionChangedListener(event -> {
            open.setEnabled(selection().size() == 1 && file(selection().getFirstElement()).isPresent());
            rename.setEnabled(selection().size() == 1 && Renaming.possible(selection().getFirstElement()));
            delete.setEnabled(Deleting.possible(selection().toList()));
            copy.setEnabled(!things().isEmpty() && things().stream().map(EObject::eResource).distinct().count() == 1);
            // What was copied may have changed since; whether it fits here is looked at when it is pasted.
            paste.setEnabled(selection().size() == 1);
        });
        MenuManager menu = new MenuManager();
        menu.add(open);
        menu.add(new Separator());
        menu.add(copy);
        menu.add(paste);
        menu.add(rename);
        menu.add(delete);
        menu.add(new Separator());
        menu.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        tree.getControl().setMenu(menu.createContextMenu(tree.getControl()));
        getSite().registerContextMenu(menu, tree);
    }

    private static Action action(String text, Runnable body) {
        Action action = new Action(text) {
            @Override
            public void run() {
                body.run();
            }
        };
        action.setEnabled(false);
        return action;
    }

    private IStructuredSelection selection() {
        return tree.getStructuredSelection();
    }

    /** Returns the chosen things that lie inside files; nothing when other rows are chosen, too. */
    private List<EObject> things() {
        List<EObject> things = selection().stream().filter(EObject.class::isInstance).map(EObject.class::cast)
                .filter(thing -> thing.eContainer() != null).toList();
        return things.size() == selection().size() ? things : List.of();
    }

    private Optional<Spot> spot() {
        Object row = selection().getFirstElement();
        return row instanceof Group group ? Clippings.spot(group.owner()) : row instanceof EObject object ? Clippings.spot(object)
                : file(row).flatMap(ShopFile::root).flatMap(Clippings::spot);
    }

    private Optional<ShopFile> file(Object row) {
        if (row instanceof ShopFile file) {
            return Optional.of(file);
        }
        if (row instanceof Shelf shelf) {
            return shop.flatMap(open -> open.folder().files().stream().filter(file -> shelf.kind().single() && file.kind() == shelf.kind())
                    .findFirst());
        }
        return row instanceof EObject object ? shop.flatMap(open -> open.folder().fileOf(object)) : Optional.empty();
    }

    private void open(Object row) {
        if (row instanceof EObject && !ShopLabels.id(row).isEmpty()) {
            ShopEditors.open(getSite().getPage(), ShopLabels.id(row));
        } else if (file(row).isPresent()) {
            ShopEditors.open(getSite().getPage(), file(row).get());
        } else {
            tree.setExpandedState(row, !tree.getExpandedState(row));
        }
    }

    /** Selects the row of an object and scrolls to it. */
    public void reveal(EObject object) {
        tree.setSelection(new StructuredSelection(object), true);
    }

    /** Returns the word that stands beside the row of an object; empty for none. */
    public String verdictWord(EObject object) {
        return verdicts.getText(object);
    }

    @Override
    public void opened(WorkingShop opened) {
        show(Optional.of(opened));
    }

    @Override
    public void closing(WorkingShop closing) {
        Clippings.clear();
        show(Optional.empty());
    }

    private void show(Optional<WorkingShop> shown) {
        shop.ifPresent(old -> old.removeListener(this));
        saveables.ifPresent(Saveables::dispose);
        shop = shown;
        saveables = shown.map(open -> new Saveables(this, open, () -> open.folder().files().stream(),
                () -> firePropertyChange(PROP_DIRTY)));
        rows.show(shown.map(WorkingShop::folder));
        shown.ifPresent(open -> open.addListener(this));
        tree.setInput(shown.orElse(null));
        tree.setExpandedElements(new Shelf(FileKind.CAR), new Shelf(FileKind.DOLLY));
        pages.topControl = shown.isPresent() ? full : empty;
        setContentDescription(shown.map(open -> open.snapshot().name()).orElse(""));
        answered();
        book.layout();
    }

    @Override
    public void changed(ShopEvent event) {
        tree.refresh();
    }

    @Override
    public void answered() {
        verdicts.update(shop);
        String words = shop.map(StateWords::of).orElse("");
        line.setText(words);
        ((GridData) line.getLayoutData()).exclude = words.isEmpty();
        line.setVisible(!words.isEmpty());
        full.layout();
        tree.refresh();
    }

    @Override
    public Saveable[] getSaveables() {
        return saveables.map(Saveables::getSaveables).orElse(new Saveable[0]);
    }

    @Override
    public Saveable[] getActiveSaveables() {
        return getSaveables();
    }

    @Override
    public boolean isDirty() {
        return saveables.filter(Saveables::isDirty).isPresent();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        throw new UnsupportedOperationException("the files are saved one by one");
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
    public boolean isSaveOnCloseNeeded() {
        return false;
    }

    @Override
    public void setFocus() {
        Composite top = (Composite) pages.topControl;
        (top == full ? tree.getControl() : top.getChildren()[0]).setFocus();
    }

    @Override
    public void dispose() {
        WorkingShop.removeOpenListener(this);
        shop.ifPresent(open -> open.removeListener(this));
        saveables.ifPresent(Saveables::dispose);
        super.dispose();
    }
}
