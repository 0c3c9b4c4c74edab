package cradlewright.diagrams.car;

import cradlewright.diagrams.Messages;
import cradlewright.diagrams.car.CarAdditions.Sort;
import cradlewright.diagrams.shared.Pictures;
import org.eclipse.gef.palette.CombinedTemplateCreationEntry;
import org.eclipse.gef.palette.MarqueeToolEntry;
import org.eclipse.gef.palette.PaletteDrawer;
import org.eclipse.gef.palette.PaletteGroup;
import org.eclipse.gef.palette.PaletteRoot;
import org.eclipse.gef.palette.SelectionToolEntry;
import org.eclipse.gef.palette.ToolEntry;
import org.eclipse.gef.requests.CreationFactory;
import org.eclipse.jface.resource.ImageDescriptor;

/** The tools of the diagram. */
final class CarPalette {

    private CarPalette() {
    }

    /** Says what a tool makes; the change that makes it comes from {@link SheetPolicy}. */
    private record Makes(Sort sort) implements CreationFactory {

        @Override
        public Object getNewObject() {
            return sort;
        }

        @Override
        public Object getObjectType() {
            return sort;
        }
    }

    static PaletteRoot create() {
        PaletteRoot root = new PaletteRoot();
        PaletteGroup tools = new PaletteGroup(Messages.Palette_tools);
        ToolEntry select = new SelectionToolEntry(Messages.Palette_select);
        tools.add(select);
        tools.add(new MarqueeToolEntry(Messages.Palette_marquee));
        root.add(tools);
        PaletteDrawer things = new PaletteDrawer(Messages.Palette_things);
        things.add(entry(Messages.Palette_support, Messages.Palette_support_hint, Sort.SUPPORT, Pictures.SUPPORT));
        things.add(entry(Messages.Palette_prop, Messages.Palette_prop_hint, Sort.PROP, Pictures.PROP));
        things.add(entry(Messages.Palette_liftPoint, Messages.Palette_liftPoint_hint, Sort.LIFT_POINT, Pictures.LIFT));
        things.add(entry(Messages.Palette_workPoint, Messages.Palette_workPoint_hint, Sort.WORK_POINT, Pictures.LEAN));
        things.add(entry(Messages.Palette_cutZone, Messages.Palette_cutZone_hint, Sort.CUT_ZONE, Pictures.CUT));
        root.add(things);
        root.setDefaultEntry(select);
        return root;
    }

    private static ToolEntry entry(String name, String hint, Sort sort, Pictures picture) {
        ImageDescriptor image = picture.descriptor();
        return new CombinedTemplateCreationEntry(name, hint, sort, new Makes(sort), image, image);
    }
}
