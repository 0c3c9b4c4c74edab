package cradlewright.ui.start;

import cradlewright.analysis.overview.PlaceLine;
import cradlewright.analysis.overview.ShopDay;
import cradlewright.analysis.overview.ShopDayKey;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.model.edit.ShopEvent;
import cradlewright.report.sheet.CarSheet;
import cradlewright.ui.sheet.SheetPane;
import cradlewright.ui.shop.Answer;
import cradlewright.ui.shop.ChosenCar;
import cradlewright.ui.shop.OpenShopListener;
import cradlewright.ui.shop.Question;
import cradlewright.ui.shop.ShopEditors;
import cradlewright.ui.shop.StateWords;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.shop.WorkingShopListener;
import cradlewright.ui.words.ReaderUnits;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.menus.CommandContributionItem;
import org.eclipse.ui.menus.CommandContributionItemParameter;
import org.eclipse.ui.part.EditorPart;

/** The start page: one line a car, one for each dolly and each piece of lifting gear; laid out for manager or technician. */
public final class StartEditor extends EditorPart implements OpenShopListener, WorkingShopListener, ChosenCar {

    /** Its id. */
    public static final String ID = "cradlewright.ui.start";

    private StackLayout pages;
    private Composite book;
    private EmptyPage empty;
    private Composite full;
    private Label title;
    private Label line;
    private Composite body;
    private Optional<RowTable<CarRow>> cars = Optional.empty();
    private Optional<RowTable<CarrierRow>> carriers = Optional.empty();
    private Optional<RowTable<PlaceLine>> places = Optional.empty();
    private Optional<SheetPane> sheet = Optional.empty();
    private Role role = Role.chosen();
    private Optional<WorkingShop> shop = Optional.empty();
    private Optional<ShopDay> day = Optional.empty();
    private Optional<Question> question = Optional.empty();

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
    }

    @Override
    public void createPartControl(Composite parent) {
        book = parent;
        pages = new StackLayout();
        parent.setLayout(pages);
        empty = new EmptyPage(parent, getSite().getWorkbenchWindow());
        full = new Composite(parent, SWT.NONE);
        ReaderUnits.whenChanged(full, this::fill);
        GridLayoutFactory.swtDefaults().margins(12, 10).spacing(6, 6).applyTo(full);
        head();
        body = new Composite(full, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(body);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        layOut();
        WorkingShop.addOpenListener(this);
        show(WorkingShop.current());
    }

    private void head() {
        Composite head = new Composite(full, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(head);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        title = new Label(head, SWT.NONE);
        title.setFont(JFaceResources.getHeaderFont());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(title);
        Composite roles = new Composite(head, SWT.NONE);
        roles.setLayout(new RowLayout());
        role(roles, Messages.Start_technician, Role.TECHNICIAN);
        role(roles, Messages.Start_manager, Role.MANAGER);
        line = new Label(full, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
    }

    private void role(Composite parent, String words, Role wanted) {
        Button button = new Button(parent, SWT.RADIO);
        button.setText(words);
        button.setSelection(role == wanted);
        button.addListener(SWT.Selection, event -> {
            if (button.getSelection() && role != wanted) {
                role = wanted;
                role.choose();
                layOut();
                fill();
            }
        });
    }

    /** Lays the tables out anew for the role that is chosen. */
    private void layOut() {
        for (Control child : body.getChildren()) {
            child.dispose();
        }
        SashForm halves = new SashForm(body, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
        RowTable<CarRow> top = new RowTable<CarRow>(halves, Messages.Start_cars).verdict(Messages.Start_today, CarRow::verdict)
                .text(Messages.Start_car, 3, CarRow::name);
        SashForm below = new SashForm(halves, SWT.HORIZONTAL);
        if (role == Role.MANAGER) {
            top.text(Messages.Start_stands, 4, row -> row.line().standing())
                    .text(Messages.Start_waits, 4, row -> row.line().waiting()).text(Messages.Start_next, 3, CarRow::date);
            carriers = Optional.of(carriers(below));
            places = Optional.of(new RowTable<PlaceLine>(below, Messages.Start_places).text(Messages.Start_place, 1, PlaceLine::name)
                    .text(Messages.Start_taken, 1, row -> row.cars().isEmpty() ? Messages.Start_free : String.join("; ", row.cars())));
            sheet = Optional.empty();
        } else {
            top.text(Messages.Start_stops, 5, CarRow::stops).text(Messages.Start_first, 5, CarRow::first);
            sheet = Optional.of(new SheetPane(below, Messages.Start_about));
            carriers = Optional.of(carriers(below));
            places = Optional.empty();
        }
        below.setWeights(3, 2);
        halves.setWeights(5, 4);
        cars = Optional.of(top);
        openOnDoubleClick(top.viewer());
        offerPartsList(top.viewer());
        top.viewer().addSelectionChangedListener(event -> tellAbout());
        body.layout();
    }

    private RowTable<CarrierRow> carriers(Composite parent) {
        RowTable<CarrierRow> table = new RowTable<CarrierRow>(parent, Messages.Start_carriers)
                .verdict(Messages.Start_answer, CarrierRow::verdict).text(Messages.Start_carrier, 3, CarrierRow::name);
        if (role == Role.MANAGER) {
            table.text(Messages.Start_due, 2, CarrierRow::due).text(Messages.Start_usedBy, 3, row -> String.join("; ", row.line().cars()));
        }
        table.text(Messages.Start_reason, 4, CarrierRow::reason);
        openOnDoubleClick(table.viewer());
        return table;
    }

    private void openOnDoubleClick(TableViewer viewer) {
        viewer.addOpenListener(event -> Optional.ofNullable(viewer.getStructuredSelection().getFirstElement())
                .filter(StartRow.class::isInstance).map(StartRow.class::cast)
                .ifPresent(row -> ShopEditors.open(getSite().getPage(), row.id())));
    }

    private void offerPartsList(TableViewer viewer) {
        MenuManager menu = new MenuManager();
        menu.add(new CommandContributionItem(new CommandContributionItemParameter(getSite(), null, "cradlewright.ui.openParts",
                CommandContributionItem.STYLE_PUSH)));
        viewer.getControl().setMenu(menu.createContextMenu(viewer.getControl()));
    }

    @Override
    public Optional<String> chosenCar() {
        return cars.flatMap(RowTable::selected).map(CarRow::id);
    }

    private void show(Optional<WorkingShop> shown) {
        shop.ifPresent(old -> old.removeListener(this));
        shop = shown;
        day = Optional.empty();
        pages.topControl = shown.isPresent() ? full : empty.control();
        book.layout();
        shown.ifPresent(open -> {
            open.addListener(this);
            ask();
        });
        fill();
    }

    /** Asks who stands where; what is shown stays until the answer is there. */
    private void ask() {
        question.ifPresent(Question::giveUp);
        question = shop.map(open -> open.ask(new ShopDayKey(), new Answer<>() {
            @Override
            public void is(ShopDay value) {
                day = Optional.of(value);
                fill();
            }

            @Override
            public void failed(RuntimeException why) {
                Answer.super.failed(why);
                day = Optional.empty();
                fill();
            }
        }));
    }

    private void fill() {
        if (shop.isEmpty() || body.isDisposed()) {
            return;
        }
        WorkingShop open = shop.get();
        title.setText(NLS.bind(Messages.Start_title, open.snapshot().name(), open.snapshot().today()));
        String words = StateWords.of(open);
        line.setText(words);
        ((GridData) line.getLayoutData()).exclude = words.isEmpty();
        line.setVisible(!words.isEmpty());
        full.layout();
        Optional<ShopAnswers> answers = answers();
        boolean old = open.workingOut();
        cars.ifPresent(table -> table.show(day.map(today -> CarRow.of(today, answers)).orElse(List.of()), old));
        carriers.ifPresent(table -> table.show(day.map(today -> CarrierRow.of(today, answers)).orElse(List.of()), old));
        places.ifPresent(table -> table.show(day.map(ShopDay::places).orElse(List.of()), false));
        if (cars.flatMap(RowTable::selected).isEmpty()) {
            cars.ifPresent(StartEditor::selectGravest);
        }
        tellAbout();
    }

    private static void selectGravest(RowTable<CarRow> table) {
        table.rows().stream().filter(row -> row.verdict().isPresent()).max(Comparator.comparing(row -> row.verdict().orElseThrow()))
                .ifPresent(row -> table.viewer().setSelection(new StructuredSelection(row), true));
    }

    /** Answers of files that are not in order are held back. */
    private Optional<ShopAnswers> answers() {
        return shop.filter(open -> open.state() != WorkingShop.State.HELD_BACK).flatMap(WorkingShop::answers);
    }

    private void tellAbout() {
        sheet.ifPresent(pane -> cars.flatMap(RowTable::selected).ifPresentOrElse(
                row -> pane.show(new CarSheet(ReaderUnits.current()).write(row.line(), answers())),
                () -> pane.say(Messages.Start_choose)));
    }

    @Override
    public void opened(WorkingShop shown) {
        show(Optional.of(shown));
    }

    @Override
    public void closing(WorkingShop closed) {
        show(Optional.empty());
    }

    @Override
    public void changed(ShopEvent event) {
        if (event.kind().changesObjects()) {
            ask();
        }
    }

    @Override
    public void answered() {
        if (shop.filter(open -> day.map(shown -> !shown.day().equals(open.snapshot().today())).orElse(true)).isPresent()) {
            ask();
        }
        fill();
    }

    @Override
    public void setFocus() {
        if (shop.isPresent() && cars.isPresent()) {
            cars.get().viewer().getControl().setFocus();
        } else {
            empty.control().setFocus();
        }
    }

    @Override
    public void dispose() {
        question.ifPresent(Question::giveUp);
        WorkingShop.removeOpenListener(this);
        shop.ifPresent(open -> open.removeListener(this));
        super.dispose();
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        throw new UnsupportedOperationException("nothing is edited on the start page");
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("nothing is edited on the start page");
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }
}
