package cradlewright.diagrams.dolly;

import cradlewright.diagrams.Messages;
import cradlewright.diagrams.dolly.DollyAdditions.Sort;
import cradlewright.diagrams.shared.Pictures;
import cradlewright.diagrams.shared.ScenePalette;
import org.eclipse.gef.palette.PaletteRoot;

/** The tools of the diagram of a dolly. */
final class DollyPalette {

    private DollyPalette() {
    }

    static PaletteRoot create() {
        return new ScenePalette().tool(Messages.Palette_member, Messages.Palette_member_hint, Sort.MEMBER, Pictures.MEMBER)
                .tool(Messages.Palette_castor, Messages.Palette_castor_hint, Sort.CASTOR, Pictures.CASTOR)
                .tool(Messages.Palette_foot, Messages.Palette_foot_hint, Sort.FOOT, Pictures.FOOT)
                .tool(Messages.Palette_fixture, Messages.Palette_fixture_hint, Sort.FIXTURE, Pictures.FIXTURE).root();
    }
}
