package cradlewright.ui;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Sets a window up: size, bars, title. */
final class ShopWindowAdvisor extends WorkbenchWindowAdvisor {

    private static final Point SIZE = new Point(1280, 860);

    ShopWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        super(configurer);
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer window = getWindowConfigurer();
        window.setInitialSize(SIZE);
        window.setShowMenuBar(true);
        window.setShowCoolBar(true);
        window.setShowStatusLine(true);
        window.setShowProgressIndicator(true);
        window.setTitle(Messages.Start_title);
    }
}
