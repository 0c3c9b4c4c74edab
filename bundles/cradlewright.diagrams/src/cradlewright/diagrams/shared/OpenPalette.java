package cradlewright.diagrams.shared;

import org.eclipse.draw2d.PositionConstants;
import org.eclipse.gef.ui.palette.FlyoutPaletteComposite;
import org.eclipse.gef.ui.palette.FlyoutPaletteComposite.FlyoutPreferences;

/** The palette stands open at the right when a diagram opens; what people do to it lasts as long as the diagram. */
final class OpenPalette implements FlyoutPreferences {

    private static final int WIDTH = 150;

    private int dock = PositionConstants.EAST;
    private int state = FlyoutPaletteComposite.STATE_PINNED_OPEN;
    private int width = WIDTH;

    @Override
    public int getDockLocation() {
        return dock;
    }

    @Override
    public int getPaletteState() {
        return state;
    }

    @Override
    public int getPaletteWidth() {
        return width;
    }

    @Override
    public void setDockLocation(int location) {
        dock = location;
    }

    @Override
    public void setPaletteState(int now) {
        state = now;
    }

    @Override
    public void setPaletteWidth(int now) {
        width = now;
    }
}
