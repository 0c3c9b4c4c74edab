package cradlewright.report.scene;

/**
 * How much room a text takes when nobody knows yet in which font it will be painted: letters as wide as those of the widest plain fonts
 * in common use, so that a text that fits by this fits in any of them. Common practice, no source.
 */
public final class TextSize {

    /** From the line that letters stand on up to the top of the tallest, over the height of the font. */
    public static final double ASCENT = 0.8;
    /** From the line that letters stand on down to the lowest, over the height of the font. */
    public static final double DESCENT = 0.25;

    private static final String NARROW = "ijlI|!.,:;'()[] ";
    private static final String WIDE = "mwMW@%";
    private static final double NARROW_WIDTH = 0.37;
    private static final double WIDE_WIDTH = 0.99;
    private static final double CAPITAL_WIDTH = 0.72;
    private static final double OTHER_WIDTH = 0.64;
    private static final double BOLD = 1.1;

    private TextSize() {
    }

    /** Returns the width of a text in the unit of the font's height. */
    public static double width(String text, double height, boolean bold) {
        double sum = text.codePoints().mapToDouble(TextSize::width).sum();
        return height * sum * (bold ? BOLD : 1);
    }

    private static double width(int c) {
        if (NARROW.indexOf(c) >= 0) {
            return NARROW_WIDTH;
        }
        if (WIDE.indexOf(c) >= 0) {
            return WIDE_WIDTH;
        }
        if (Character.isIdeographic(c)) {
            return 1;
        }
        return Character.isUpperCase(c) ? CAPITAL_WIDTH : OTHER_WIDTH;
    }
}
