package cradlewright.ui.ask;

import cradlewright.model.edit.ShopEvent;
import cradlewright.ui.shop.OpenShopListener;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.shop.WorkingShopListener;
import cradlewright.ui.words.ReaderUnits;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.action.Action;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.ViewPart;

/** The daily questions, one tab each. An edit asks the last question again. */
public final class AskView extends ViewPart implements OpenShopListener, WorkingShopListener {

    /** Its id. */
    public static final String ID = "cradlewright.ui.askView";

    private CTabFolder tabs;
    private PartOffPage part;
    private SupportPage support;
    private LiftPage lift;
    private List<AskPage> pages;
    private Optional<WorkingShop> shop = Optional.empty();

    @Override
    public void createPartControl(Composite parent) {
        tabs = new CTabFolder(parent, SWT.TOP | SWT.FLAT);
        part = new PartOffPage(tabs);
        support = new SupportPage(tabs);
        lift = new LiftPage(tabs);
        pages = List.of(part, support, lift);
        ReaderUnits.whenChanged(tabs, () -> pages.forEach(AskPage::ask));
        tab(part, Messages.Ask_part);
        tab(support, Messages.Ask_support);
        tab(lift, Messages.Ask_lift);
        tabs.setSelection(0);
        Action copy = new Action(Messages.Ask_copy) {
            @Override
            public void run() {
                pages.get(tabs.getSelectionIndex()).pane().copy();
            }
        };
        copy.setImageDescriptor(PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(ISharedImages.IMG_TOOL_COPY));
        getViewSite().getActionBars().getToolBarManager().add(copy);
        getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.COPY.getId(), copy);
        WorkingShop.addOpenListener(this);
        show(WorkingShop.current());
    }

    private void tab(AskPage page, String title) {
        CTabItem item = new CTabItem(tabs, SWT.NONE);
        item.setText(title);
        item.setControl(page.control());
    }

    private void bring(AskPage page) {
        tabs.setSelection(pages.indexOf(page));
        page.focus();
    }

    /** Asks whether a part may come off; an empty id only brings the question up. */
    public void askPart(String partId) {
        bring(part);
        if (!partId.isEmpty()) {
            part.askForId(partId);
        }
    }

    /** Looks a support up by its name; an empty one only brings the question up. */
    public void askSupport(String name) {
        bring(support);
        if (!name.isEmpty()) {
            support.askFor(name);
        }
    }

    /** Asks about lifting a car; an empty id only brings the question up. */
    public void askLift(String carId) {
        bring(lift);
        if (!carId.isEmpty()) {
            lift.askFor(carId);
        }
    }

    /** Asks about whatever a text means: a support of that name, else a part. */
    public void askAnything(String text) {
        if (shop.map(SupportPage::names).filter(names -> names.contains(SupportWish.of(text, names).name())).isPresent()) {
            askSupport(text);
        } else {
            bring(part);
            part.askFor(text);
        }
    }

    private void show(Optional<WorkingShop> shown) {
        shop.ifPresent(old -> old.removeListener(this));
        shop = shown;
        shown.ifPresent(open -> open.addListener(this));
        pages.forEach(page -> page.show(shown));
    }

    @Override
    public void opened(WorkingShop opened) {
        show(Optional.of(opened));
    }

    @Override
    public void closing(WorkingShop closing) {
        show(Optional.empty());
    }

    @Override
    public void changed(ShopEvent event) {
        if (event.kind().changesObjects()) {
            lift.refresh();
            pages.forEach(AskPage::ask);
        }
    }

    @Override
    public void answered() {
        support.answered();
    }

    @Override
    public void setFocus() {
        pages.get(tabs.getSelectionIndex()).focus();
    }

    @Override
    public void dispose() {
        WorkingShop.removeOpenListener(this);
        shop.ifPresent(open -> open.removeListener(this));
        pages.forEach(AskPage::giveUp);
        super.dispose();
    }
}
