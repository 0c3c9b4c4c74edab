package cradlewright.quantity;

import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A number with its unit, its standard uncertainty when one was given, and its source. Immutable; the unit stays the one
 * that was written, so a file reads back as it was typed.
 *
 * <p>Text in files: {@code 285 kg}, {@code 285 kg u 4 weighed}, {@code 1250 mm measured}, {@code 0.35 guessed} (a ratio
 * has no unit, or %). The sign is not judged here: whether a mass may be negative is for the one who uses it.
 *
 * @param value the value in {@code unit}, finite; minus zero becomes zero
 * @param unit the unit
 * @param uncertainty standard uncertainty (k = 1) in {@code unit}, finite and not below zero, or empty
 * @param source where the value comes from
 */
public record Measured(double value, Unit unit, OptionalDouble uncertainty, Source source) {

    private static final int MOST_DECIMALS = 15;

    /** Refuses values that are not finite and uncertainties that are not finite or below zero. */
    public Measured {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(uncertainty, "uncertainty");
        Objects.requireNonNull(source, "source");
        value = Checked.finite(value, "value");
        uncertainty = Checked.uncertainty(uncertainty);
    }

    /** Returns a value without uncertainty and source. */
    public static Measured of(double value, Unit unit) {
        return new Measured(value, unit, OptionalDouble.empty(), Source.UNSTATED);
    }

    /** Returns a value with its source, whose uncertainty is left to {@link SourceDefaults}. */
    public static Measured of(double value, Unit unit, Source source) {
        return new Measured(value, unit, OptionalDouble.empty(), source);
    }

    /** Returns a value with standard uncertainty and source. */
    public static Measured of(double value, Unit unit, double uncertainty, Source source) {
        return new Measured(value, unit, OptionalDouble.of(uncertainty), source);
    }

    /**
     * Reads the form of the files: number, unit, optionally {@code u} with the standard uncertainty, optionally the
     * source; one blank between words; decimal dot; symbols of units as in {@link Unit#symbol()}.
     *
     * @throws QuantityFormatException when the text is anything else, or of another dimension
     */
    public static Measured parse(String text, Dimension dimension) {
        FileText words = new FileText(text, Measured.of(12.5, dimension.stored()).text());
        double value = words.number();
        Unit unit = words.unit(dimension);
        OptionalDouble uncertainty = words.uncertainty();
        return new Measured(value, unit, uncertainty, words.source());
    }

    /**
     * Reads what a person types into a field or on the command line. Beyond the form of the files it takes the decimal
     * sign and the digits of the locale, aliases and free spelling of units ({@code 18"}, {@code 12,5kg}, {@code 5 Nm}),
     * fractions ({@code 1/2 in}, {@code 1 1/2 in}), feet with inches ({@code 3'6"}) and a bare number, which is taken in
     * {@code defaultUnit}. Grouping of digits is refused, and so is a dot in a comma locale where it could be grouping
     * ({@code 1.250}): a load must not be off by a thousand.
     *
     * @param defaultUnit unit of a bare number; null when a unit must be typed (a bare ratio is always a plain number)
     * @throws QuantityFormatException when the text cannot be read in exactly one way, or is of another dimension
     * @throws IllegalArgumentException when the default unit is of another dimension
     */
    public static Measured parseTyped(String text, Dimension dimension, Unit defaultUnit, Locale locale) {
        return new TypedText(dimension, defaultUnit, locale).parse(text);
    }

    /** Returns the one text for files: fewest digits that read back the same value, no locale. */
    public String text() {
        String number = Numbers.text(value);
        return (unit == Unit.ONE ? number : number + " " + unit.symbol()) + FileText.tail(uncertainty, source);
    }

    /**
     * Returns value and unit for screens and sheets, without uncertainty and source: half up in decimals, decimal sign and
     * digits of the locale, no grouping so that it can be typed back.
     *
     * @param digits decimals, 0 to 15
     * @throws IllegalArgumentException when the unit is of another dimension or the decimals are out of range
     */
    public String format(Unit in, int digits, Locale locale) {
        if (digits < 0 || digits > MOST_DECIMALS) {
            throw new IllegalArgumentException("decimals must lie from 0 to " + MOST_DECIMALS + ", found " + digits);
        }
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(digits);
        format.setMaximumFractionDigits(digits);
        String number = format.format(Numbers.decimal(in(in)).setScale(digits, RoundingMode.HALF_UP));
        return in.label().isEmpty() ? number : number + " " + in.label();
    }

    /**
     * Returns value and unit as a person of the locale would type them, without uncertainty and source: the fewest digits, no grouping.
     *
     * @param in unit to be shown
     * @param digits most significant digits, 1 or more
     * @throws IllegalArgumentException when the unit is of another dimension or no digit is wanted
     */
    public String typed(Unit in, int digits, Locale locale) {
        if (digits < 1) {
            throw new IllegalArgumentException("at least one digit is wanted, found " + digits);
        }
        String number = Numbers.typed(in(in), digits, locale);
        return in.label().isEmpty() ? number : number + " " + in.label();
    }

    /** Returns what is measured. */
    public Dimension dimension() {
        return unit.dimension();
    }

    /**
     * Returns the value in another unit of the same dimension.
     *
     * @throws IllegalArgumentException when the unit is of another dimension
     */
    public double in(Unit other) {
        return unit.convert(value, other);
    }

    /**
     * Returns the same quantity in another unit of the same dimension, uncertainty included.
     *
     * @throws IllegalArgumentException when the unit is of another dimension
     */
    public Measured to(Unit other) {
        OptionalDouble converted = uncertainty.isPresent()
                ? OptionalDouble.of(unit.convertDifference(uncertainty.getAsDouble(), other)) : uncertainty;
        return new Measured(in(other), other, converted, source);
    }

    /** Returns the value in the coherent SI unit: kg, m, N, N*m, Pa, N/m, N*m/rad, N*m2, rad, s, 1, K, kg/m3, N/m3, m/s, m2. */
    public double si() {
        return unit.toSi(value);
    }

    /**
     * Returns the standard uncertainty in the coherent SI unit: the one given, else the share that the source has by
     * default, times the size of the value. Empty when neither is known: also for a value of zero, for temperatures and
     * for angles, where a share of the value says nothing.
     */
    public OptionalDouble uncertaintySi(SourceDefaults defaults) {
        if (uncertainty.isPresent()) {
            return OptionalDouble.of(unit.differenceToSi(uncertainty.getAsDouble()));
        }
        OptionalDouble share = relativeDefault(defaults);
        return share.isPresent() ? OptionalDouble.of(share.getAsDouble() * Math.abs(si())) : share;
    }

    /** Returns the share of the value that stands for the uncertainty when none was given; empty as in {@link #uncertaintySi}. */
    public OptionalDouble relativeDefault(SourceDefaults defaults) {
        return value == 0 || !dimension().hasNaturalZero() ? OptionalDouble.empty() : defaults.share(source);
    }

    /** Returns {@link #text()}. */
    @Override
    public String toString() {
        return text();
    }
}
