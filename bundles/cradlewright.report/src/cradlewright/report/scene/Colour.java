package cradlewright.report.scene;

import java.util.Locale;

/**
 * A colour.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Colour(int red, int green, int blue) {

    /** Refuses what is no colour. */
    public Colour {
        if (Math.min(red, Math.min(green, blue)) < 0 || Math.max(red, Math.max(green, blue)) > 255) {
            throw new IllegalArgumentException("each part of a colour goes from 0 to 255, found " + red + ", " + green + ", " + blue);
        }
    }

    /** Returns the colour that is written like #1f5c8b without the mark. */
    static Colour of(int rgb) {
        return new Colour(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
    }

    /** Returns it as style sheets write it. */
    public String hex() {
        return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
    }
}
