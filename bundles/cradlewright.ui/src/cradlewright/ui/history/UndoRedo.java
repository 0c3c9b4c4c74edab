package cradlewright.ui.history;

import cradlewright.model.edit.HistoryEntry;
import cradlewright.model.edit.ShopEvent;
import cradlewright.model.edit.ShopStack;
import cradlewright.ui.Messages;
import cradlewright.ui.shop.OpenShopListener;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.shop.WorkingShopListener;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.HandlerEvent;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.menus.UIElement;

/** Undo and redo of the whole window: the shop has one history, wherever the edit was made, and the menus name what comes next. */
public final class UndoRedo extends AbstractHandler implements IElementUpdater, OpenShopListener, WorkingShopListener {

    private final String bare;
    private final String named;
    private final Function<ShopStack, Optional<HistoryEntry>> next;
    private final Consumer<ShopStack> step;
    private final Runnable refresh;

    private UndoRedo(String bare, String named, Function<ShopStack, Optional<HistoryEntry>> next, Consumer<ShopStack> step,
            Runnable refresh) {
        this.bare = bare;
        this.named = named;
        this.next = next;
        this.step = step;
        this.refresh = refresh;
    }

    /** Puts both in force for the life of a workbench. */
    public static void install(IWorkbench workbench) {
        install(workbench, IWorkbenchCommandConstants.EDIT_UNDO, Messages.Undo, Messages.Undo_named, ShopStack::nextUndo, ShopStack::undo);
        install(workbench, IWorkbenchCommandConstants.EDIT_REDO, Messages.Redo, Messages.Redo_named, ShopStack::nextRedo, ShopStack::redo);
    }

    private static void install(IWorkbench workbench, String command, String bare, String named,
            Function<ShopStack, Optional<HistoryEntry>> next, Consumer<ShopStack> step) {
        ICommandService commands = workbench.getService(ICommandService.class);
        UndoRedo handler = new UndoRedo(bare, named, next, step, () -> commands.refreshElements(command, null));
        workbench.getService(IHandlerService.class).activateHandler(command, handler);
        WorkingShop.addOpenListener(handler);
        WorkingShop.current().ifPresent(handler::opened);
    }

    private Optional<HistoryEntry> entry() {
        return WorkingShop.current().map(WorkingShop::stack).flatMap(next);
    }

    @Override
    public boolean isEnabled() {
        return entry().isPresent();
    }

    @Override
    public Object execute(ExecutionEvent event) {
        WorkingShop.current().map(WorkingShop::stack).filter(stack -> next.apply(stack).isPresent()).ifPresent(step);
        return null;
    }

    @Override
    public void updateElement(UIElement element, @SuppressWarnings("rawtypes") Map parameters) {
        String text = entry().map(entry -> NLS.bind(named, entry.label())).orElse(bare);
        element.setText(text);
        element.setTooltip(text.replace("&", ""));
    }

    @Override
    public void opened(WorkingShop shop) {
        shop.addListener(this);
        tell();
    }

    @Override
    public void closing(WorkingShop shop) {
        shop.removeListener(this);
        tell();
    }

    @Override
    public void changed(ShopEvent event) {
        tell();
    }

    private void tell() {
        fireHandlerChanged(new HandlerEvent(this, true, false));
        refresh.run();
    }
}
