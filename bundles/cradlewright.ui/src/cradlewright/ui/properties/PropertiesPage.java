package cradlewright.ui.properties;

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
import java.util.List;
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
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.eclipse.ui.part.Page;
import org.eclipse.ui.views.properties.IPropertySheetPage;

/** What is known of the things that are selected, heading by heading, in fields that can be edited. */
public final class PropertiesPage extends Page implements IPropertySheetPage, Desk, OpenShopListener, WorkingShopListener {

    private final List<Field> fields = new ArrayList<>();
    private Composite top;
    private Label header;
    private ReplyLine line;
    private ScrolledForm form;
    private Sections sections;
    private Optional<WorkingShop> shop = Optional.empty();
    private List<EObject> objects = List.of();

    @Override
    public void createControl(Composite parent) {
        top = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(0, 2).applyTo(top);
        header = new Label(top, SWT.NONE);
        header.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(header);
        line = new ReplyLine(top);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line.control());
        form = new ScrolledForm(top, SWT.V_SCROLL);
        form.setExpandHorizontal(true);
        form.setExpandVertical(true);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(form);
        form.getBody().setLayout(new SideBySide());
        sections = new Sections(form.getBody(), this, this::reveal);
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
        chosen.ifPresent(known -> fields.addAll(sections.fill(known)));
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
            return ReplyLine.escape(alike ? NLS.bind(Messages.Header_manyKind, count, Nouns.kind(first.eClass())) : count);
        }
        EObject around = first.eContainer();
        String name = Nouns.kindAndName(first);
        return ReplyLine.escape(around == null ? name : NLS.bind(Messages.Header_file, name, Nouns.kindAndName(around)));
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
        line.tell(words);
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
        if (!line.say(reply)) {
            standing(objects.isEmpty() ? Optional.empty() : shop.map(this::chosen));
        }
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
