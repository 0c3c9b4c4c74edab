package cradlewright.diagrams.shared;

import cradlewright.report.scene.Colour;
import cradlewright.report.scene.Palette;
import cradlewright.report.scene.Role;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;

/** Colours and fonts of a palette on a device; to be disposed of with the diagram. */
public final class Paints {

    /** Larger letters are painted in this size: nobody zooms in to read one word. */
    private static final int LARGEST = 120;
    private static final double POINTS_PER_INCH = 72;

    private final Device device;
    private final Palette palette;
    private final String family;
    private final Map<Colour, Color> colours = new HashMap<>();
    private final Map<Integer, Font> fonts = new HashMap<>();

    /**
     * Mixes nothing yet.
     *
     * @param family name of the font of the window
     */
    public Paints(Device device, Palette palette, String family) {
        this.device = device;
        this.palette = palette;
        this.family = family;
    }

    /** Returns the palette. */
    public Palette palette() {
        return palette;
    }

    /** Returns a colour. */
    public Color colour(Colour colour) {
        return colours.computeIfAbsent(colour, c -> new Color(c.red(), c.green(), c.blue()));
    }

    /** Returns the colour of the sheet. */
    public Color ground() {
        return colour(palette.ground());
    }

    /** Returns the colour of texts. */
    public Color text() {
        return colour(palette.ink(Role.TEXT).fill().orElseThrow());
    }

    /** Returns a font of about that many pixels. */
    Font font(double pixels, boolean bold) {
        int size = (int) Math.max(1, Math.min(LARGEST, Math.round(pixels)));
        int points = (int) Math.max(1, Math.round(size * POINTS_PER_INCH / device.getDPI().y));
        return fonts.computeIfAbsent(bold ? -points : points,
                key -> new Font(device, new FontData(family, points, bold ? SWT.BOLD : SWT.NORMAL)));
    }

    /** Gives the fonts back. */
    public void dispose() {
        fonts.values().forEach(Font::dispose);
        fonts.clear();
    }
}
