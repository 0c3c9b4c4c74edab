package cradlewright.ui;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The first layout of the window: what is wrong stands below what is being worked on. */
public final class ShopPerspective implements IPerspectiveFactory {

    /** Its id. */
    public static final String ID = "cradlewright.ui.perspective";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.addView(IPageLayout.ID_PROBLEM_VIEW, IPageLayout.BOTTOM, 0.7f, layout.getEditorArea());
    }
}
