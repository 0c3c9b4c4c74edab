package cradlewright.ui.parts;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.model.base.Identified;
import cradlewright.model.edit.ShopEvent;
import cradlewright.model.io.ShopFile;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Stage;
import cradlewright.ui.ask.AskView;
import cradlewright.ui.edit.Edits;
import cradlewright.ui.file.TroublePage;
import cradlewright.ui.look.Spoken;
import cradlewright.ui.properties.Habits;
import cradlewright.ui.properties.Reply;
import cradlewright.ui.properties.ReplyLine;
import cradlewright.ui.shop.Saveables;
import cradlewright.ui.shop.ShowsObject;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.shop.WorkingShopListener;
import cradlewright.ui.words.Nouns;
import cradlewright.ui.words.ReaderUnits;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.ISaveablesSource;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.Saveable;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.ide.IGotoMarker;
import org.eclipse.ui.part.EditorPart;
import org.eclipse.ui.part.FileEditorInput;

/** The parts list of a car as a table, with what each stage weighs at its foot. All edits go through the one stack of the shop. */
public final class PartsEditor extends EditorPart implements ISaveablesSource, ShowsObject, IGotoMarker, WorkingShopListener {

    /** Its id. */
    public static final String ID = "cradlewright.ui.parts";

    private WorkingShop shop;
    private ShopFile file;
    private Saveables saveables;
    private PartsTable table;
    private Map<String, String> where = Map.of();
    private PartsTree tree;
    private PartsActions actions;
    private StageFoot foot;
    private OffBar bar;
    private ReplyLine line;

    /** Opens the parts list of a car beside whatever else shows its file. */
    public static void open(IWorkbenchPage page, ShopFile file) {
        WorkingShop shop = WorkingShop.current().orElseThrow();
        try {
            page.openEditor(new FileEditorInput(shop.resource(file)), ID, true,
                    IWorkbenchPage.MATCH_INPUT | IWorkbenchPage.MATCH_ID);
        } catch (PartInitException e) {
            MessageDialog.openInformation(page.getWorkbenchWindow().getShell(), Messages.Editor_parts, e.getMessage());
        }
    }

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        Optional<WorkingShop> open = WorkingShop.current();
        Optional<ShopFile> found = input instanceof IFileEditorInput wanted ? open.flatMap(now -> now.fileOf(wanted.getFile()))
                : Optional.empty();
        if (found.isEmpty()) {
            throw new PartInitException(Messages.Editor_notOfShop);
        }
        shop = open.orElseThrow();
        file = found.get();
        setSite(site);
        setInput(input);
        setPartName(NLS.bind(Messages.Editor_title, file.root().map(Nouns::name).orElse(input.getName())));
        saveables = new Saveables(this, shop, () -> Stream.of(file), () -> firePropertyChange(PROP_DIRTY));
        shop.addListener(this);
    }

    @Override
    public String getTitleToolTip() {
        return NLS.bind(Messages.Editor_tip, getPartName());
    }

    @Override
    public void createPartControl(Composite parent) {
        if (TroublePage.wanted(file) || file.root().filter(Car.class::isInstance).isEmpty()) {
            TroublePage.create(parent, shop, file);
            return;
        }
        read();
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        Composite head = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).margins(6, 4).applyTo(head);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        bar = new OffBar(parent);
        SashForm halves = new SashForm(parent, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
        Composite top = new Composite(halves, SWT.NONE);
        top.setLayout(new FillLayout());
        tree = new PartsTree(top, () -> table, this::say, (stage, thing) -> turn(stage, List.of(thing), !Ticks.isOn(stage, thing)));
        foot = new StageFoot(halves, shop, table.car().getId());
        halves.setWeights(7, 3);
        actions = new PartsActions(tree, () -> table, file, this::say, this::turn);
        fill(head);
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(actions::fill);
        tree.viewer().getTree().setMenu(menu.createContextMenu(tree.viewer().getTree()));
        getSite().registerContextMenu(menu, tree.viewer());
        getSite().setSelectionProvider(tree.viewer());
        ReaderUnits.whenChanged(parent, this::show);
        say(Reply.nothing());
    }

    private void fill(Composite head) {
        Text filter = new Text(head, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        filter.setMessage(Messages.Editor_filter);
        Spoken.name(filter, Messages.Editor_filter);
        filter.addListener(SWT.Modify, event -> {
            tree.filter(filter.getText());
            say(Reply.nothing());
        });
        GridDataFactory.fillDefaults().hint(240, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(filter);
        Combo group = new Combo(head, SWT.READ_ONLY);
        group.setItems(Messages.Editor_byPiece, Messages.Editor_oneList);
        group.select(0);
        Spoken.name(group, Messages.Editor_group);
        group.addListener(SWT.Selection, event -> tree.group(group.getSelectionIndex() == 0));
        ToolBarManager tools = new ToolBarManager(SWT.FLAT);
        actions.tools().forEach(tools::add);
        tools.createControl(head);
        line = new ReplyLine(head);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(100, SWT.DEFAULT).applyTo(line.control());
    }

    private void read() {
        Car car = (Car) file.root().orElseThrow();
        Optional<CarFacts> facts = shop.snapshot().find(CarFacts.class, car.getId());
        where = facts.map(found -> WhereNow.of(found, shop.snapshot().today())).orElse(Map.of());
        table = new PartsTable(shop.folder(), car, Habits.current(), thing -> where.getOrDefault(((Identified) thing).getId(), ""));
    }

    /** Says what there is to say about what was typed; else how many rows there are. */
    private void say(Reply reply) {
        if (!line.say(reply)) {
            line.tellPlainly(count());
        }
    }

    private String count() {
        List<EObject> all = table.things();
        long shown = all.stream().filter(tree::passes).count();
        long parts = all.stream().filter(Part.class::isInstance).count();
        return shown == all.size() ? NLS.bind(Messages.Editor_count, parts, all.size() - parts)
                : NLS.bind(Messages.Editor_countShown, shown, all.size());
    }

    /** Ticks things; where the car stands in that stage now, what comes off is asked about first. */
    private void turn(Stage stage, List<EObject> things, boolean on) {
        List<EObject> turned = things.stream().filter(thing -> Ticks.isOn(stage, thing) != on).toList();
        if (turned.isEmpty() || !Edits.possible(stage)) {
            return;
        }
        Optional<CarFacts> car = shop.snapshot().find(CarFacts.class, table.car().getId());
        List<String> standing = car.map(facts -> Ticks.standing(facts, stage.getId(), shop.snapshot().today())).orElse(List.of());
        if (on || standing.isEmpty() || turned.stream().noneMatch(Part.class::isInstance)) {
            Ticks.change(file, stage, turned, on).ifPresent(Edits::run);
            return;
        }
        boolean one = turned.size() == 1;
        String what = one ? Nouns.kindAndName(turned.get(0)) : NLS.bind(Messages.Several, turned.size());
        String question = NLS.bind(one ? Messages.Bar_one : Messages.Bar_many,
                new Object[] {what, Nouns.name(stage), String.join(", ", standing)});
        List<String> others = Ticks.others(car.orElseThrow(), stage.getId(), shop.snapshot().today());
        bar.ask(others.isEmpty() ? question : question + " " + NLS.bind(Messages.Bar_others, String.join(", ", others)),
                () -> Ticks.change(file, stage, turned.stream().filter(thing -> thing.eResource() != null).toList(), false)
                        .ifPresent(Edits::run));
        if (one) {
            ask(((Identified) turned.get(0)).getId());
        }
    }

    private void ask(String partId) {
        try {
            ((AskView) getSite().getPage().showView(AskView.ID, null, IWorkbenchPage.VIEW_VISIBLE)).askPart(partId);
        } catch (PartInitException e) {
            throw new IllegalStateException(e);
        }
    }

    private void show() {
        read();
        tree.refresh();
        foot.show();
    }

    @Override
    public void changed(ShopEvent event) {
        if (tree == null || !event.kind().changesObjects()) {
            return;
        }
        bar.hide();
        setPartName(NLS.bind(Messages.Editor_title, Nouns.name(table.car())));
        show();
        foot.ask();
        say(Reply.nothing());
    }

    /** Returns the action for an entry of the Edit menu; null when there is none. */
    IAction global(ActionFactory entry) {
        return actions == null ? null : actions.global(entry);
    }

    @Override
    public void show(String objectId) {
        if (tree != null) {
            shop.folder().find(objectId).filter(PartsTable::isThing).ifPresent(thing -> tree.select(List.of(thing)));
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
        return saveables != null && saveables.isDirty();
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
        if (tree != null) {
            tree.viewer().getTree().setFocus();
        }
    }

    @Override
    public void dispose() {
        if (shop != null) {
            shop.removeListener(this);
            saveables.dispose();
        }
        if (foot != null) {
            foot.giveUp();
        }
        super.dispose();
    }
}
