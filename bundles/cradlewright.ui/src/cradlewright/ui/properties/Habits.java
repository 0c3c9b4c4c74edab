package cradlewright.ui.properties;

import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Unit;
import cradlewright.report.UnitSystem;
import cradlewright.ui.words.ReaderUnits;
import java.util.Locale;

/**
 * How somebody reads and types numbers.
 *
 * @param units units of numbers that are shown, and of those typed without a unit
 * @param locale decides on the decimal sign and the digits
 */
public record Habits(UnitSystem units, Locale locale) {

    private static final int DIGITS_AS_KEPT = 9;
    private static final int DIGITS_CONVERTED = 6;
    private static final int DIGITS_OF_DIFFERENCE = 3;

    /** Returns those of the person at this window. */
    public static Habits current() {
        return new Habits(ReaderUnits.current(), Locale.getDefault(Locale.Category.FORMAT));
    }

    /** Returns the unit in which numbers of a dimension are shown. */
    public Unit unit(Dimension dimension) {
        return units.unit(dimension);
    }

    /** Returns a quantity with its unit, such as {@code 285 kg}; a number that had to be converted is rounded. */
    public String show(Measured value) {
        return value.typed(unit(value.dimension()), digits(value.dimension()), locale);
    }

    /** Returns a length in the unit of lengths, without the unit. */
    public String number(double millimetres) {
        Unit unit = unit(Dimension.LENGTH);
        String text = Measured.of(millimetres, Unit.MILLIMETRE).typed(unit, digits(Dimension.LENGTH), locale);
        return text.substring(0, text.length() - unit.label().length()).strip();
    }

    /** Returns a bare number. */
    String plain(double number) {
        return Measured.of(number, Unit.ONE).typed(Unit.ONE, DIGITS_AS_KEPT, locale);
    }

    private int digits(Dimension dimension) {
        return unit(dimension) == dimension.stored() ? DIGITS_AS_KEPT : DIGITS_CONVERTED;
    }

    /** Reads a quantity and turns it into the unit that files hold. */
    public Measured read(String text, Dimension dimension) {
        return Measured.parseTyped(text, dimension, unit(dimension), locale).to(dimension.stored());
    }

    /** Reads a difference of two values, such as a give or take, and turns it into the unit that files hold. */
    public double readDifference(String text, Dimension dimension) {
        Measured typed = Measured.parseTyped(text, dimension, unit(dimension), locale);
        return typed.unit().convertDifference(typed.value(), dimension.stored());
    }

    /** Returns a difference in the unit that files hold as a person types it. */
    public String showDifference(double difference, Dimension dimension) {
        Unit unit = unit(dimension);
        int digits = unit == dimension.stored() ? DIGITS_CONVERTED : DIGITS_OF_DIFFERENCE;
        return Measured.of(dimension.stored().convertDifference(difference, unit), unit).typed(unit, digits, locale);
    }
}
