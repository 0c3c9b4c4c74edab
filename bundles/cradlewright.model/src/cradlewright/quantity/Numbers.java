package cradlewright.quantity;

import static cradlewright.quantity.QuantityFormatException.quote;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.regex.Pattern;

/** Reads and writes numbers of files: ASCII digits, decimal dot, no grouping, no locale. */
final class Numbers {

    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?");
    private static final int SAFE_DIGITS = 15;
    private static final int MOST_DIGITS = 17;
    private static final int LONGEST_PLAIN = 17;
    private static final int MOST_LEADING_ZEROS = 6;
    private static final int MOST_DECIMALS = 340;

    private Numbers() {
    }

    /**
     * Reads a number.
     *
     * @throws QuantityFormatException when the text is not a number of this form, or too large or too small for one
     */
    static double parse(String text) {
        if (!NUMBER.matcher(text).matches()) {
            throw notANumber(text);
        }
        double value = Double.parseDouble(text);
        if (Double.isInfinite(value)) {
            throw new QuantityFormatException(quote(text) + " is too large a number", "check the digits and the exponent");
        }
        if (value == 0 && mantissaHasDigit(text)) {
            throw new QuantityFormatException(quote(text) + " is too small a number to be kept", "write 0 or check the exponent");
        }
        return value;
    }

    private static boolean mantissaHasDigit(String text) {
        return text.split("[eE]", 2)[0].chars().anyMatch(c -> c >= '1' && c <= '9');
    }

    private static QuantityFormatException notANumber(String text) {
        if (text.indexOf(',') >= 0) {
            return new QuantityFormatException(quote(text) + " has a comma, a number with a dot is wanted",
                    "write a dot if the comma was the decimal sign, leave it out otherwise");
        }
        return new QuantityFormatException(quote(text) + " is not a number",
                "write digits with a dot for decimals, as in 12.5 or 1e-3, and a blank before what follows");
    }

    /**
     * Writes the number with the fewest digits that read back to the same value. The result does not depend on the Java
     * version, unlike {@link Double#toString(double)}, so files do not change when Java does.
     */
    static String text(double value) {
        BigDecimal bare = decimal(value);
        int wholeDigits = bare.precision() - bare.scale();
        boolean plain = wholeDigits <= LONGEST_PLAIN && wholeDigits > -MOST_LEADING_ZEROS;
        return plain ? bare.toPlainString() : bare.toString();
    }

    /** Writes the number as a person of the locale types it: at most so many significant digits, no grouping. */
    static String typed(double value, int digits, Locale locale) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
        format.setMaximumFractionDigits(MOST_DECIMALS);
        return format.format(decimal(value).round(new MathContext(digits, RoundingMode.HALF_UP)));
    }

    /**
     * Returns the decimal that a person means by the value: the one with the fewest digits that reads back to it. Any
     * decimal of up to 15 digits survives the way through a normal double, so the search may begin there.
     */
    static BigDecimal decimal(double value) {
        BigDecimal exact = new BigDecimal(value);
        for (int digits = Math.abs(value) < Double.MIN_NORMAL ? 1 : SAFE_DIGITS; digits < MOST_DIGITS; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (rounded.doubleValue() == value) {
                return rounded.stripTrailingZeros();
            }
        }
        return exact.round(new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN)).stripTrailingZeros();
    }
}
