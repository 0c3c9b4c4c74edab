package cradlewright.diagrams.car;

import cradlewright.diagrams.shared.SceneEditor;
import cradlewright.diagrams.shared.ScenePage;
import cradlewright.model.base.FileRoot;
import cradlewright.model.vehicle.Car;
import cradlewright.ui.shop.WorkingShop;
import org.eclipse.gef.palette.PaletteRoot;

/** The editor of a car: its visits on what carries them. */
public final class CarEditor extends SceneEditor {

    /** Its id. */
    public static final String ID = "cradlewright.diagrams.car";

    @Override
    protected ScenePage<?> createPage(WorkingShop open, FileRoot shown, Runnable changed) {
        return new CarPage(open, (Car) shown, changed);
    }

    @Override
    protected PaletteRoot getPaletteRoot() {
        return CarPalette.create();
    }
}
