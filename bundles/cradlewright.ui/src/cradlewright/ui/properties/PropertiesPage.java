package cradlewright.ui.properties;

import cradlewright.model.edit.Removal;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.edit.ShopEvent;
import cradlewright.model.io.ShopFile;
import cradlewright.ui.edit.Edits;
import cradlewright.ui.navigator.ShopView;
import cradlewright.ui.shop.OpenShopListener;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.shop.WorkingShopListener;
import cradlewright.ui.words.Nouns;
import cradlewright.ui.words.ReaderUnits;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.eclipse.ui.part.Page;
import org.eclipse.ui.views.properties.IPropertySheetPage;

/** What is known of the things that are selected, heading by heading, in fields that can be edited. */
public final class PropertiesPage extends Page implements IPropertySheetPage, Desk, OpenShopListener, WorkingShopListener {

    private static final int COLUMNS = 4;
    private static final int MOST_USERS = 12;

    private final List<Field> fields = new ArrayList<>();
    private Composite top;
    private Label header;
    private CLabel line;
    private ScrolledForm form;
    private Optional<WorkingShop> shop = Optional.empty();
    private List<EObject> objects = List.of();

    @Override
    public void createControl(Composite parent) {
        top = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(0, 2).applyTo(top);
        header = new Label(top, SWT.NONE);
        header.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(header);
        line = new CLabel(top, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        form = new ScrolledForm(top, SWT.V_SCROLL);
        form.setExpandHorizontal(true);
        form.setExpandVertical(true);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(form);
        form.getBody().setLayout(new SideBySide());
        WorkingShop.addOpenListener(this);
        ReaderUnits.whenChanged(top, this::rebuild);
        show(WorkingShop.current());
    }

    @Override
    public Control getControl() {
        return top;
    }

    @Override
    public void setFocus() {
        if (!form.getBody().setFocus()) {
            top.setFocus();
        }
    }

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        List<EObject> chosen = selection instanceof IStructuredSelection several
                ? several.stream().flatMap(PropertiesPage::things).filter(this::inShop).distinct().toList() : List.of();
        if (!chosen.equals(objects)) {
            objects = chosen;
            rebuild();
        }
    }

    private static Stream<EObject> things(Object chosen) {
        return chosen instanceof ShopFile file ? file.root().stream().map(EObject.class::cast)
                : Stream.ofNullable(Adapters.adapt(chosen, EObject.class));
    }

    private boolean inShop(EObject object) {
        return shop.filter(open -> open.folder().fileOf(object).isPresent()).isPresent();
    }

    private void rebuild() {
        form.setRedraw(false);
        fields.clear();
        for (Control each : form.getBody().getChildren()) {
            each.dispose();
        }
        header.setText(headerWords());
        Optional<Chosen> chosen = objects.isEmpty() ? Optional.empty() : shop.map(this::chosen);
        chosen.ifPresent(this::fill);
        standing(chosen);
        form.reflow(true);
        form.setOrigin(0, 0);
        form.setRedraw(true);
        top.layout();
    }

    private Chosen chosen(WorkingShop open) {
        return new Chosen(open.folder(), objects, Habits.current());
    }

    private String headerWords() {
        if (shop.isEmpty()) {
            return Messages.Header_noShop;
        }
        if (objects.isEmpty()) {
            return Messages.Header_none;
        }
        EObject first = objects.get(0);
        if (objects.size() > 1) {
            boolean alike = objects.stream().allMatch(each -> each.eClass() == first.eClass());
            String count = NLS.bind(Messages.Header_many, objects.size());
            return escape(alike ? NLS.bind(Messages.Header_manyKind, count, Nouns.kind(first.eClass())) : count);
        }
        EObject around = first.eContainer();
        String name = Nouns.kindAndName(first);
        return escape(around == null ? name : NLS.bind(Messages.Header_file, name, Nouns.kindAndName(around)));
    }

    private static String escape(String words) {
        return words.replace("&", "&&");
    }

    /** Says what holds for all that is shown, as long as nothing is being typed. */
    private void standing(Optional<Chosen> chosen) {
        String words = "";
        if (chosen.isPresent() && !chosen.get().editable()) {
            Optional<ShopFile> closed = chosen.get().closedFile();
            words = closed.isPresent() ? NLS.bind(Messages.Page_closedFile, closed.get().path() + " " + closed.get().state().words())
                    : Messages.Page_notEdited;
        } else if (chosen.isPresent() && !chosen.get().single()) {
            words = Messages.Page_several;
        }
        line.setText(escape(words));
        line.setToolTipText(words);
        line.setImage(words.isEmpty() ? null : shared(ISharedImages.IMG_OBJS_INFO_TSK));
    }

    private void fill(Chosen chosen) {
        Map<Section, Composite> sections = new EnumMap<>(Section.class);
        boolean editable = chosen.editable();
        for (Row row : Rows.of(chosen)) {
            Composite section = sections.computeIfAbsent(row.section(), each -> section(each, COLUMNS));
            Label label = new Label(section, SWT.NONE);
            label.setText(escape(row.label()));
            fields.add(field(section, row, editable));
        }
        if (chosen.single()) {
            users(chosen);
        }
    }

    private Composite section(Section section, int columns) {
        Composite all = new Composite(form.getBody(), SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(columns).spacing(4, 3).extendedMargins(0, 6, 0, 8).applyTo(all);
        Label title = new Label(all, SWT.NONE);
        title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
        title.setText(switch (section) {
            case WHAT -> Messages.Section_WHAT;
            case WHERE -> Messages.Section_WHERE;
            case HEAVY -> Messages.Section_HEAVY;
            case SIZE -> Messages.Section_SIZE;
            case KNOWN -> Messages.Section_KNOWN;
            case DEPENDS -> Messages.Section_DEPENDS;
        });
        GridDataFactory.fillDefaults().span(columns, 1).applyTo(title);
        return all;
    }

    private Field field(Composite parent, Row row, boolean editable) {
        if (row instanceof QuantityRow quantity) {
            return new QuantityField(parent, quantity, editable, this);
        }
        if (row instanceof ChoiceRow choice) {
            List<String> labels = choice.choices().stream().map(ChoiceRow.Choice::label).toList();
            ChoiceField field = new ChoiceField(parent, row.label(), new ChoiceField.Content(labels, choice::current, choice::choose),
                    this);
            field.combo().setLayoutData(spanning());
            field.combo().setEnabled(editable);
            return field;
        }
        if (row instanceof TickRow tick) {
            TickField field = new TickField(parent, tick, this);
            field.setEditable(editable);
            return field;
        }
        TypedRow typed = (TypedRow) row;
        TextField field = new TextField(parent, row.label(), new TextField.Content(typed::text,
                () -> row.differ() ? Messages.Field_differ : "", typed::text, typed::type), this).wide(1, true, COLUMNS - 1);
        field.setEditable(editable);
        return field;
    }

    private static GridData spanning() {
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false, COLUMNS - 1, 1);
        data.horizontalIndent = TextField.MARK;
        data.widthHint = 1;
        return data;
    }

    private void users(Chosen chosen) {
        List<EObject> users = new Removal(chosen.shop(), chosen.objects()).users();
        if (users.isEmpty()) {
            return;
        }
        Composite section = section(Section.DEPENDS, 1);
        users.stream().limit(MOST_USERS).forEach(user -> {
            Link link = new Link(section, SWT.NONE);
            String name = Nouns.kind(user.eClass()) + " " + ChoiceRow.label(chosen, user);
            link.setText("<a>" + escape(name) + "</a>");
            Field.call(link, name);
            link.addListener(SWT.Selection, event -> reveal(user));
        });
        if (users.size() > MOST_USERS) {
            new Label(section, SWT.NONE).setText(NLS.bind(Messages.Page_more, users.size() - MOST_USERS));
        }
    }

    private void reveal(EObject object) {
        try {
            ((ShopView) getSite().getPage().showView(ShopView.ID)).reveal(object);
        } catch (PartInitException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void say(Reply reply) {
        if (reply.isRefused() || !reply.remark().isEmpty()) {
            String words = reply.isRefused() ? reply.trouble() : reply.remark();
            line.setText(escape(words));
            line.setToolTipText(words);
            line.setImage(shared(reply.isRefused() ? ISharedImages.IMG_OBJS_ERROR_TSK : ISharedImages.IMG_OBJS_INFO_TSK));
        } else {
            standing(objects.isEmpty() ? Optional.empty() : shop.map(this::chosen));
        }
    }

    private static Image shared(String name) {
        return PlatformUI.getWorkbench().getSharedImages().getImage(name);
    }

    @Override
    public void perform(ShopChange change) {
        Edits.run(change);
    }

    @Override
    public void opened(WorkingShop opened) {
        show(Optional.of(opened));
    }

    @Override
    public void closing(WorkingShop closing) {
        show(Optional.empty());
    }

    private void show(Optional<WorkingShop> shown) {
        shop.ifPresent(old -> old.removeListener(this));
        shop = shown;
        shown.ifPresent(open -> open.addListener(this));
        objects = List.of();
        rebuild();
    }

    @Override
    public void changed(ShopEvent event) {
        if (!event.kind().changesObjects() || objects.isEmpty()) {
            return;
        }
        List<EObject> left = objects.stream().filter(this::inShop).toList();
        if (!left.equals(objects)) {
            objects = left;
            rebuild();
        } else {
            header.setText(headerWords());
            fields.forEach(Field::refresh);
        }
    }

    @Override
    public void dispose() {
        WorkingShop.removeOpenListener(this);
        shop.ifPresent(open -> open.removeListener(this));
        super.dispose();
    }
}
