package cradlewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.io.ShopFile;
import cradlewright.ui.ask.AskView;
import cradlewright.ui.history.HistoryView;
import cradlewright.ui.look.VerdictLook;
import cradlewright.ui.navigator.ShopView;
import cradlewright.ui.parts.PartsEditor;
import cradlewright.ui.shop.ShopEditors;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.warnings.WarningsView;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Every editor and view once on the display, looked at for what is empty, cut off or over one another. Run three times: as it comes, on a
 * dark ground and twice as large; the environment of the run says which, and the pictures bear its name.
 */
class LookOfTheWindowTest {

    private static final String LOOK = System.getProperty("cradlewright.look", "light");
    /** A drawn page has frames, words with smoothed edges and pictures: far more colours than an empty one with its border. */
    private static final int DRAWN = 12;
    private static final int TWICE = 200;

    private static WorkingShop shop;

    @BeforeAll
    static void open() throws Exception {
        shop = DemoShop.open(DemoShop.copy(), DemoShop.PRESENT);
        DemoShop.awaitAnswers();
    }

    @AfterAll
    static void close() {
        Bot.page().closeAllEditors(false);
        WorkingShop.close();
        Bot.settle();
    }

    private static void look(Control control, String name) {
        Bot.picture(control, name + "-" + LOOK);
        assertTrue(Eyes.colours(control) >= DRAWN, name + " is empty");
        assertEquals(List.of(), Eyes.complaints(Bot.shell()), name);
    }

    private static void view(String id) throws PartInitException {
        Bot.page().showView(id);
        look(Bot.shell(), id.substring(id.lastIndexOf('.') + 1));
    }

    @Test
    void theRunHasTheLookThatItIsNamedFor() {
        assertEquals("dark".equals(LOOK), VerdictLook.dark(Bot.shell().getBackground()), "ground " + Bot.shell().getBackground());
        assertEquals("large".equals(LOOK), Bot.shell().getMonitor().getZoom() == TWICE, "zoom " + Bot.shell().getMonitor().getZoom());
    }

    @Test
    void viewsAreDrawnWhole() throws PartInitException {
        for (String id : List.of(ShopView.ID, WarningsView.ID, AskView.ID, HistoryView.ID, IPageLayout.ID_PROP_SHEET,
                IPageLayout.ID_PROBLEM_VIEW)) {
            view(id);
        }
    }

    @Test
    void theStartPageIsDrawnWhole() {
        Bot.menu("Window", "Start Page");
        look(Bot.shell(), "start");
    }

    @Test
    void anEditorOfEachKindOfFileIsDrawnWhole() {
        List<String> seen = new ArrayList<>();
        for (ShopFile file : shop.folder().files()) {
            String kind = file.path().substring(file.path().lastIndexOf('.') + 1);
            if (!seen.contains(kind)) {
                seen.add(kind);
                ShopEditors.open(Bot.page(), file);
                Bot.settle();
                look(Bot.shell(), "editor-" + kind);
            }
        }
        assertTrue(seen.size() > 3, seen.toString());
    }

    @Test
    void thePartsListIsDrawnWhole() {
        PartsEditor.open(Bot.page(), shop.folder().files().stream().filter(file -> file.path().contains("black estate")).findFirst()
                .orElseThrow());
        Bot.settle();
        look(Bot.shell(), "parts-list");
    }

    @Test
    void thePreferencesAreDrawnWhole() {
        Bot.withDialog(() -> PreferencesUtil.createPreferenceDialogOn(Bot.shell(), "cradlewright.ui.preferences", null, null).open(),
                dialog -> {
                    lookAt(dialog);
                    Bot.press(dialog, "Cancel");
                });
    }

    private static void lookAt(Shell dialog) {
        Bot.picture(dialog, "preferences-" + LOOK);
        assertTrue(Eyes.colours(dialog) >= DRAWN, "the dialog is empty");
        assertEquals(List.of(), Eyes.complaints(dialog));
    }
}
