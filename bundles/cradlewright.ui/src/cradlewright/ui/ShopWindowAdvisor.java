package cradlewright.ui;

import cradlewright.ui.shop.OpenShopListener;
import cradlewright.ui.shop.WorkingShop;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Sets the window up: size, bars, and the name of the open shop in its title. */
final class ShopWindowAdvisor extends WorkbenchWindowAdvisor implements OpenShopListener {

    private static final Point SIZE = new Point(1280, 860);

    ShopWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        super(configurer);
    }

    @Override
    public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
        return new ShopActionBars(configurer);
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer window = getWindowConfigurer();
        window.setInitialSize(SIZE);
        window.setShowMenuBar(true);
        window.setShowCoolBar(true);
        window.setShowStatusLine(true);
        window.setShowProgressIndicator(true);
        WorkingShop.current().ifPresentOrElse(this::opened, () -> window.setTitle(Messages.Start_title));
        WorkingShop.addOpenListener(this);
    }

    @Override
    public void opened(WorkingShop shop) {
        getWindowConfigurer().setTitle(NLS.bind(Messages.Start_titleOf, shop.snapshot().name()));
    }

    @Override
    public void closing(WorkingShop shop) {
        getWindowConfigurer().setTitle(Messages.Start_title);
    }

    @Override
    public void dispose() {
        WorkingShop.removeOpenListener(this);
    }
}
