package cradlewright.diagrams.shared;

import cradlewright.diagrams.Messages;
import org.eclipse.gef.palette.CombinedTemplateCreationEntry;
import org.eclipse.gef.palette.MarqueeToolEntry;
import org.eclipse.gef.palette.PaletteDrawer;
import org.eclipse.gef.palette.PaletteGroup;
import org.eclipse.gef.palette.PaletteRoot;
import org.eclipse.gef.palette.SelectionToolEntry;
import org.eclipse.gef.palette.ToolEntry;
import org.eclipse.gef.requests.CreationFactory;
import org.eclipse.jface.resource.ImageDescriptor;

/** The tools of a diagram: those that select, and those that make things. */
public final class ScenePalette {

    private final PaletteRoot root = new PaletteRoot();
    private final PaletteDrawer things = new PaletteDrawer(Messages.Palette_things);

    /** Says what a tool makes; the change that makes it comes from {@link SceneEdits#add}. */
    private record Makes(Object sort) implements CreationFactory {

        @Override
        public Object getNewObject() {
            return sort;
        }

        @Override
        public Object getObjectType() {
            return sort;
        }
    }

    /** Makes a palette that makes nothing yet. */
    public ScenePalette() {
        PaletteGroup tools = new PaletteGroup(Messages.Palette_tools);
        ToolEntry select = new SelectionToolEntry(Messages.Palette_select);
        tools.add(select);
        tools.add(new MarqueeToolEntry(Messages.Palette_marquee));
        root.add(tools);
        root.add(things);
        root.setDefaultEntry(select);
    }

    /** Adds a tool. */
    public ScenePalette tool(String name, String hint, Object sort, Pictures picture) {
        ImageDescriptor image = picture.descriptor();
        things.add(new CombinedTemplateCreationEntry(name, hint, sort, new Makes(sort), image, image));
        return this;
    }

    /** Returns the tools. */
    public PaletteRoot root() {
        return root;
    }
}
