package cradlewright.ui.command;

import cradlewright.ui.Messages;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.CompoundContributionItem;

/** The entries of the menu of recent shops. */
public final class RecentShopsMenu extends CompoundContributionItem {

    @Override
    protected IContributionItem[] getContributionItems() {
        List<Path> recent = RecentShops.all();
        if (recent.isEmpty()) {
            Action none = new Action(Messages.Recent_none) {
            };
            none.setEnabled(false);
            return new IContributionItem[] {new ActionContributionItem(none)};
        }
        return recent.stream().map(folder -> new ActionContributionItem(new Action(folder.toString()) {
            @Override
            public void run() {
                IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
                ShopOpening.open(window, folder);
            }
        })).toArray(IContributionItem[]::new);
    }
}
