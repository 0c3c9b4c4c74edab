package cradlewright.diagrams.dolly;

import cradlewright.diagrams.shared.SceneEditor;
import cradlewright.diagrams.shared.ScenePage;
import cradlewright.model.base.FileRoot;
import cradlewright.model.fixture.Dolly;
import cradlewright.ui.shop.WorkingShop;
import org.eclipse.gef.palette.PaletteRoot;

/** The editor of a dolly, empty or under a car. */
public final class DollyEditor extends SceneEditor {

    /** Its id. */
    public static final String ID = "cradlewright.diagrams.dolly";

    @Override
    protected ScenePage<?> createPage(WorkingShop open, FileRoot shown, Runnable changed) {
        return new DollyPage(open, (Dolly) shown, changed);
    }

    @Override
    protected PaletteRoot getPaletteRoot() {
        return DollyPalette.create();
    }
}
