package cradlewright.quantity;

/**
 * A direction in the axes of {@link Position}; its length has no meaning and is kept as written. Text in files:
 * {@code 0 0 1}.
 *
 * @param x rearward part
 * @param y part to the right
 * @param z upward part
 */
public record Direction(double x, double y, double z) {

    /** Straight up. */
    public static final Direction UP = new Direction(0, 0, 1);

    /** Refuses parts that are not finite and the direction with all parts zero. */
    public Direction {
        x = Checked.finite(x, "x");
        y = Checked.finite(y, "y");
        z = Checked.finite(z, "z");
        if (x == 0 && y == 0 && z == 0) {
            throw new IllegalArgumentException("a direction must not be 0 0 0");
        }
    }

    /**
     * Reads the form of the files: three numbers, not all zero.
     *
     * @throws QuantityFormatException when the text is anything else
     */
    public static Direction parse(String text) {
        FileText words = new FileText(text, "0 0 1");
        double x = words.number();
        double y = words.number();
        double z = words.number();
        words.end();
        if (x == 0 && y == 0 && z == 0) {
            throw new QuantityFormatException("0 0 0 points nowhere", "write at least one number other than 0, for up 0 0 1");
        }
        return new Direction(x, y, z);
    }

    /** Returns the one text for files. */
    public String text() {
        return Numbers.text(x) + " " + Numbers.text(y) + " " + Numbers.text(z);
    }

    /** Returns x, y, z scaled to length one. */
    public double[] unit() {
        double largest = Math.max(Math.abs(x), Math.max(Math.abs(y), Math.abs(z)));
        double a = x / largest;
        double b = y / largest;
        double c = z / largest;
        double length = Math.sqrt(a * a + b * b + c * c);
        return new double[] {a / length, b / length, c / length};
    }

    /** Returns {@link #text()}. */
    @Override
    public String toString() {
        return text();
    }
}
