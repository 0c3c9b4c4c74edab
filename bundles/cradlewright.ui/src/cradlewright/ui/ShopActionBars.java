package cradlewright.ui;

import cradlewright.ui.command.CheckAgain;
import cradlewright.ui.command.CloseShop;
import cradlewright.ui.command.OpenShop;
import cradlewright.ui.command.ReadAgain;
import cradlewright.ui.command.RecentShopsMenu;
import cradlewright.ui.look.Picture;
import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.ICoolBarManager;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.action.ToolBarContributionItem;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.ActionFactory.IWorkbenchAction;
import org.eclipse.ui.actions.ContributionItemFactory;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.menus.CommandContributionItem;
import org.eclipse.ui.menus.CommandContributionItemParameter;

/** The menu bar and the tool bar. Others add to the places marked as additions. */
final class ShopActionBars extends ActionBarAdvisor {

    private static final String SHOW_KEYS = "org.eclipse.ui.window.showKeyAssist";

    private final IWorkbenchWindow window;

    ShopActionBars(IActionBarConfigurer configurer) {
        super(configurer);
        window = configurer.getWindowConfigurer().getWindow();
    }

    private IWorkbenchAction action(ActionFactory factory) {
        IWorkbenchAction known = (IWorkbenchAction) getAction(factory.getId());
        if (known == null) {
            known = factory.create(window);
            register(known);
        }
        return known;
    }

    private CommandContributionItem command(String command) {
        return command(command, null);
    }

    /** Makes an entry with an id of its own: the platform takes undo and redo, by the id of their command, out of every tool bar. */
    private CommandContributionItem command(String command, ImageDescriptor picture) {
        CommandContributionItemParameter item = new CommandContributionItemParameter(window, "cradlewright.ui.item." + command, command,
                CommandContributionItem.STYLE_PUSH);
        item.icon = picture;
        return new CommandContributionItem(item);
    }

    @Override
    protected void fillMenuBar(IMenuManager bar) {
        bar.add(file());
        bar.add(edit());
        bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        bar.add(window());
        bar.add(help());
    }

    private IMenuManager file() {
        MenuManager menu = new MenuManager(Messages.Menu_file, IWorkbenchActionConstants.M_FILE);
        menu.add(new GroupMarker(IWorkbenchActionConstants.FILE_START));
        menu.add(new GroupMarker("new"));
        menu.add(command(OpenShop.COMMAND, Picture.OPEN.descriptor()));
        MenuManager recent = new MenuManager(Messages.Menu_recent, "recent");
        recent.add(new RecentShopsMenu());
        menu.add(recent);
        menu.add(command(CloseShop.COMMAND));
        menu.add(new Separator());
        menu.add(action(ActionFactory.SAVE));
        menu.add(action(ActionFactory.SAVE_ALL));
        menu.add(command(ReadAgain.COMMAND));
        menu.add(command("cradlewright.ui.unsavedCopies"));
        menu.add(new Separator("print"));
        menu.add(action(ActionFactory.PRINT));
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(new GroupMarker(IWorkbenchActionConstants.FILE_END));
        menu.add(new Separator());
        menu.add(action(ActionFactory.QUIT));
        return menu;
    }

    private IMenuManager edit() {
        MenuManager menu = new MenuManager(Messages.Menu_edit, IWorkbenchActionConstants.M_EDIT);
        menu.add(new GroupMarker(IWorkbenchActionConstants.EDIT_START));
        menu.add(command(IWorkbenchCommandConstants.EDIT_UNDO, Picture.UNDO.descriptor()));
        menu.add(command(IWorkbenchCommandConstants.EDIT_REDO, Picture.REDO.descriptor()));
        menu.add(new Separator());
        menu.add(action(ActionFactory.CUT));
        menu.add(action(ActionFactory.COPY));
        menu.add(action(ActionFactory.PASTE));
        menu.add(new Separator());
        menu.add(action(ActionFactory.RENAME));
        menu.add(action(ActionFactory.DELETE));
        menu.add(action(ActionFactory.SELECT_ALL));
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(new GroupMarker(IWorkbenchActionConstants.EDIT_END));
        return menu;
    }

    private IMenuManager window() {
        MenuManager menu = new MenuManager(Messages.Menu_window, IWorkbenchActionConstants.M_WINDOW);
        menu.add(command(CheckAgain.COMMAND, Picture.CHECK.descriptor()));
        menu.add(new Separator());
        MenuManager views = new MenuManager(Messages.Menu_views, "views");
        views.add(ContributionItemFactory.VIEWS_SHORTLIST.create(window));
        menu.add(views);
        menu.add(action(ActionFactory.RESET_PERSPECTIVE));
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(new Separator());
        menu.add(action(ActionFactory.NEXT_EDITOR));
        menu.add(action(ActionFactory.PREVIOUS_EDITOR));
        menu.add(action(ActionFactory.NEXT_PART));
        menu.add(new Separator());
        menu.add(action(ActionFactory.PREFERENCES));
        return menu;
    }

    private IMenuManager help() {
        MenuManager menu = new MenuManager(Messages.Menu_help, IWorkbenchActionConstants.M_HELP);
        menu.add(new GroupMarker(IWorkbenchActionConstants.HELP_START));
        menu.add(command(SHOW_KEYS));
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(new GroupMarker(IWorkbenchActionConstants.HELP_END));
        menu.add(new Separator());
        menu.add(action(ActionFactory.ABOUT));
        return menu;
    }

    @Override
    protected void fillCoolBar(ICoolBarManager bar) {
        IToolBarManager tools = new ToolBarManager(SWT.FLAT | SWT.RIGHT);
        tools.add(command(OpenShop.COMMAND, Picture.OPEN.descriptor()));
        tools.add(action(ActionFactory.SAVE));
        tools.add(action(ActionFactory.SAVE_ALL));
        tools.add(new Separator());
        tools.add(command(IWorkbenchCommandConstants.EDIT_UNDO, Picture.UNDO.descriptor()));
        tools.add(command(IWorkbenchCommandConstants.EDIT_REDO, Picture.REDO.descriptor()));
        tools.add(new Separator());
        tools.add(command(CheckAgain.COMMAND, Picture.CHECK.descriptor()));
        tools.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        bar.add(new ToolBarContributionItem(tools, "main"));
    }
}
