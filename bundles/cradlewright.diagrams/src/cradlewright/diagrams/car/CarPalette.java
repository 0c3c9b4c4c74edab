package cradlewright.diagrams.car;

import cradlewright.diagrams.Messages;
import cradlewright.diagrams.car.CarAdditions.Sort;
import cradlewright.diagrams.shared.Pictures;
import cradlewright.diagrams.shared.ScenePalette;
import org.eclipse.gef.palette.PaletteRoot;

/** The tools of the diagram of a car. */
final class CarPalette {

    private CarPalette() {
    }

    static PaletteRoot create() {
        return new ScenePalette().tool(Messages.Palette_support, Messages.Palette_support_hint, Sort.SUPPORT, Pictures.SUPPORT)
                .tool(Messages.Palette_prop, Messages.Palette_prop_hint, Sort.PROP, Pictures.PROP)
                .tool(Messages.Palette_liftPoint, Messages.Palette_liftPoint_hint, Sort.LIFT_POINT, Pictures.LIFT)
                .tool(Messages.Palette_workPoint, Messages.Palette_workPoint_hint, Sort.WORK_POINT, Pictures.LEAN)
                .tool(Messages.Palette_cutZone, Messages.Palette_cutZone_hint, Sort.CUT_ZONE, Pictures.CUT).root();
    }
}
