package cradlewright.ui.look;

import cradlewright.analysis.check.Verdict;
import org.eclipse.jface.resource.ColorRegistry;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.RGB;

/**
 * The glyph, the word and the colour of each verdict. The glyphs differ in shape, and the word always stands beside: nobody has to tell
 * colours apart. Each colour has a contrast of at least 4.5 to 1 on the grounds of the light and of the dark style.
 */
public final class VerdictLook {

    /** A ground counts as dark below this mean of its three parts. */
    private static final int DARK_BELOW = 128;

    private VerdictLook() {
    }

    /** Returns the glyph; nobody disposes of it. */
    public static Image image(Verdict verdict) {
        return Picture.image(verdict.name());
    }

    /** Returns how to make the glyph. */
    public static ImageDescriptor descriptor(Verdict verdict) {
        return Picture.descriptor(verdict.name());
    }

    /** Returns the word. */
    public static String word(Verdict verdict) {
        return verdict.word();
    }

    /** Returns the colour of the word on such a ground; nobody disposes of it. */
    public static Color color(Verdict verdict, Color ground) {
        return color(rgb(verdict, dark(ground)));
    }

    /** Returns the colour of words that matter less, such as an answer that is out of date, on such a ground. */
    public static Color faint(Color ground) {
        return color(faintRgb(dark(ground)));
    }

    /** Tells whether a ground is dark. */
    public static boolean dark(Color ground) {
        return ground.getRed() + ground.getGreen() + ground.getBlue() < 3 * DARK_BELOW;
    }

    static RGB rgb(Verdict verdict, boolean onDark) {
        return onDark ? light(verdict) : strong(verdict);
    }

    static RGB faintRgb(boolean onDark) {
        return onDark ? new RGB(0xb6, 0xbc, 0xc5) : new RGB(0x5b, 0x64, 0x70);
    }

    private static RGB strong(Verdict verdict) {
        return switch (verdict) {
            case HOLDS -> new RGB(0x14, 0x53, 0x2d);
            case TIGHT -> new RGB(0x7a, 0x4a, 0x00);
            case CANT_SAY -> new RGB(0x20, 0x25, 0x2c);
            case STOP -> new RGB(0x9b, 0x22, 0x26);
        };
    }

    private static RGB light(Verdict verdict) {
        return switch (verdict) {
            case HOLDS -> new RGB(0x8f, 0xd6, 0xa8);
            case TIGHT -> new RGB(0xf5, 0xc4, 0x5e);
            case CANT_SAY -> new RGB(0xe6, 0xe9, 0xee);
            case STOP -> new RGB(0xff, 0x9c, 0x9c);
        };
    }

    private static Color color(RGB rgb) {
        ColorRegistry colors = JFaceResources.getColorRegistry();
        String key = VerdictLook.class.getName() + '.' + rgb;
        if (!colors.hasValueFor(key)) {
            colors.put(key, rgb);
        }
        return colors.get(key);
    }
}
