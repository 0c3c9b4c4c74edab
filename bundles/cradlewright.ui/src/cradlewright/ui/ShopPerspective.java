package cradlewright.ui;

import cradlewright.ui.ask.AskView;
import cradlewright.ui.history.HistoryView;
import cradlewright.ui.navigator.ShopView;
import cradlewright.ui.warnings.WarningsView;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The first layout of the window: the shop on the left, what is wrong below what is being worked on. */
public final class ShopPerspective implements IPerspectiveFactory {

    /** Its id. */
    public static final String ID = "cradlewright.ui.perspective";

    /** The folder below the editors, for views of others. */
    public static final String BELOW = "below";

    private static final float LEFT_SHARE = 0.27f;
    private static final float UPPER_SHARE = 0.64f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.addView(ShopView.ID, IPageLayout.LEFT, LEFT_SHARE, layout.getEditorArea());
        IFolderLayout below = layout.createFolder(BELOW, IPageLayout.BOTTOM, UPPER_SHARE, layout.getEditorArea());
        below.addView(WarningsView.ID);
        below.addView(AskView.ID);
        below.addView(IPageLayout.ID_PROBLEM_VIEW);
        below.addView(IPageLayout.ID_PROP_SHEET);
        below.addView(HistoryView.ID);
        layout.addShowViewShortcut(ShopView.ID);
        layout.addShowViewShortcut(WarningsView.ID);
        layout.addShowViewShortcut(AskView.ID);
        layout.addShowViewShortcut(IPageLayout.ID_PROBLEM_VIEW);
        layout.addShowViewShortcut(IPageLayout.ID_PROP_SHEET);
        layout.addShowViewShortcut(IPageLayout.ID_OUTLINE);
        layout.addShowViewShortcut(HistoryView.ID);
        layout.addShowViewShortcut(IPageLayout.ID_PROGRESS_VIEW);
    }
}
