package cradlewright.model.value;

import cradlewright.quantity.Dimension;
import cradlewright.quantity.Direction;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.QuantityFormatException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.regex.Pattern;

/**
 * The text of each data type in a file. A quantity may be written in any unit of its dimension and is kept in the one unit
 * that files hold ({@link Dimension#stored()}), so a file that the program wrote reads and writes back unchanged.
 *
 * <p>All readers answer null for null and throw {@link QuantityFormatException} for text they do not understand.
 */
public final class StoredText {

    /** A year has four digits here: a slip like 20260 must not become a date. */
    private static final Pattern FOUR_DIGIT_YEAR = Pattern.compile("\\d{4}-.*");

    private StoredText() {
    }

    /** Reads a quantity of the dimension and returns it in the unit that files hold. */
    public static Measured measured(String text, Dimension dimension) {
        return text == null ? null : Measured.parse(text, dimension).to(dimension.stored());
    }

    /**
     * Writes a quantity in the unit that files hold.
     *
     * @throws IllegalArgumentException when the quantity is of another dimension
     */
    public static String text(Measured value, Dimension dimension) {
        return value == null ? null : value.to(dimension.stored()).text();
    }

    /** Reads a position. */
    public static Position position(String text) {
        return text == null ? null : Position.parse(text);
    }

    /** Writes a position. */
    public static String text(Position value) {
        return value == null ? null : value.text();
    }

    /** Reads a direction. */
    public static Direction direction(String text) {
        return text == null ? null : Direction.parse(text);
    }

    /** Writes a direction. */
    public static String text(Direction value) {
        return value == null ? null : value.text();
    }

    /** Reads a calendar day, as in {@code 2026-03-31}. */
    public static LocalDate date(String text) {
        if (text == null) {
            return null;
        }
        try {
            return LocalDate.parse(fourDigitYear(text));
        } catch (DateTimeException e) {
            throw new QuantityFormatException("\"" + text + "\" is not a day of the calendar",
                    "write year-month-day, as in 2026-03-31");
        }
    }

    /** Writes a calendar day. */
    public static String text(LocalDate value) {
        return value == null ? null : value.toString();
    }

    /** Reads a day with the time on the clock of the shop, as in {@code 2026-03-31T14:05}. */
    public static LocalDateTime moment(String text) {
        if (text == null) {
            return null;
        }
        try {
            return LocalDateTime.parse(fourDigitYear(text));
        } catch (DateTimeException e) {
            throw new QuantityFormatException("\"" + text + "\" is not a day with a time",
                    "write year-month-day, T and the time, as in 2026-03-31T14:05");
        }
    }

    /** Writes a day with the time on the clock of the shop. */
    public static String text(LocalDateTime value) {
        return value == null ? null : value.toString();
    }

    private static String fourDigitYear(String text) {
        if (!FOUR_DIGIT_YEAR.matcher(text).matches()) {
            throw new DateTimeException("year");
        }
        return text;
    }
}
