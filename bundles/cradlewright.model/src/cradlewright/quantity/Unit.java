package cradlewright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A unit with its exact factor to the coherent SI unit of its dimension (kg, m, N, N*m, Pa, N/m, N*m/rad, N*m2, rad, s,
 * 1, K, kg/m3, N/m3, m/s, m2). The sources of the factors stand at {@code Factor}.
 *
 * <p>Conversions run in decimal arithmetic of 40 digits and are rounded once, so that 18 in is 457.2 mm and nothing
 * beside it. A unit written with kg or lb is always mass; force is N, kN, daN, kgf or lbf.
 */
public enum Unit {
    /** Kilogram. */
    KILOGRAM(Dimension.MASS, "kg", Factor.ONE, "kgs", "kilo", "kilos"),
    /** Gram. */
    GRAM(Dimension.MASS, "g", Factor.MILLI),
    /** Metric tonne. */
    TONNE(Dimension.MASS, "t", Factor.KILO, "tonne", "tonnes"),
    /** Avoirdupois pound. */
    POUND(Dimension.MASS, "lb", Factor.POUND, "lbs", "lbm", "pound", "pounds"),

    /** Millimetre. */
    MILLIMETRE(Dimension.LENGTH, "mm", Factor.MILLI),
    /** Centimetre. */
    CENTIMETRE(Dimension.LENGTH, "cm", Factor.CENTI),
    /** Metre. */
    METRE(Dimension.LENGTH, "m", Factor.ONE),
    /** International inch. */
    INCH(Dimension.LENGTH, "in", Factor.INCH, "\"", "inch", "inches"),
    /** International foot. */
    FOOT(Dimension.LENGTH, "ft", Factor.FOOT, "'", "foot", "feet"),

    /** Newton. */
    NEWTON(Dimension.FORCE, "N", Factor.ONE),
    /** Decanewton, the unit printed on lashing straps. */
    DECANEWTON(Dimension.FORCE, "daN", Factor.of("10")),
    /** Kilonewton. */
    KILONEWTON(Dimension.FORCE, "kN", Factor.KILO),
    /** Kilogram-force. */
    KILOGRAM_FORCE(Dimension.FORCE, "kgf", Factor.GRAVITY, "kp"),
    /** Pound-force. */
    POUND_FORCE(Dimension.FORCE, "lbf", Factor.POUND_FORCE),

    /** Newton metre. */
    NEWTON_METRE(Dimension.MOMENT, "N*m", Factor.ONE, "Nm"),
    /** Kilonewton metre. */
    KILONEWTON_METRE(Dimension.MOMENT, "kN*m", Factor.KILO, "kNm"),
    /** Pound-force foot. */
    POUND_FORCE_FOOT(Dimension.MOMENT, "lbf*ft", Factor.POUND_FORCE.times(Factor.FOOT), "lbfft", "ft*lbf", "ftlbf"),
    /** Pound-force inch. */
    POUND_FORCE_INCH(Dimension.MOMENT, "lbf*in", Factor.POUND_FORCE.times(Factor.INCH), "lbfin", "in*lbf", "inlbf"),

    /** Megapascal, the same as one newton on a square millimetre. */
    MEGAPASCAL(Dimension.STRESS, "MPa", Factor.MEGA, "N/mm2"),
    /** Gigapascal. */
    GIGAPASCAL(Dimension.STRESS, "GPa", Factor.of("1e9"), "kN/mm2"),
    /** Kilopascal. */
    KILOPASCAL(Dimension.STRESS, "kPa", Factor.KILO, "kN/m2"),
    /** Pound-force on a square inch. */
    PSI(Dimension.STRESS, "psi", Factor.PSI, "lbf/in2"),
    /** A thousand pound-force on a square inch. */
    KSI(Dimension.STRESS, "ksi", Factor.PSI.times(Factor.KILO)),

    /** Newton per metre. */
    NEWTON_PER_METRE(Dimension.STIFFNESS, "N/m", Factor.ONE),
    /** Newton per millimetre. */
    NEWTON_PER_MILLIMETRE(Dimension.STIFFNESS, "N/mm", Factor.KILO),
    /** Kilonewton per millimetre. */
    KILONEWTON_PER_MILLIMETRE(Dimension.STIFFNESS, "kN/mm", Factor.MEGA),
    /** Pound-force per inch. */
    POUND_FORCE_PER_INCH(Dimension.STIFFNESS, "lbf/in", Factor.POUND_FORCE.per(Factor.INCH)),

    /** Newton metre per degree of twist. */
    NEWTON_METRE_PER_DEGREE(Dimension.TORSIONAL_STIFFNESS, "N*m/deg", Factor.ONE.per(Factor.DEGREE), "Nm/deg"),
    /** Newton metre per radian of twist. */
    NEWTON_METRE_PER_RADIAN(Dimension.TORSIONAL_STIFFNESS, "N*m/rad", Factor.ONE, "Nm/rad"),
    /** Pound-force foot per degree of twist. */
    POUND_FORCE_FOOT_PER_DEGREE(Dimension.TORSIONAL_STIFFNESS, "lbf*ft/deg",
            Factor.POUND_FORCE.times(Factor.FOOT).per(Factor.DEGREE), "ft*lbf/deg"),

    /** Newton square metre. */
    NEWTON_SQUARE_METRE(Dimension.BENDING_STIFFNESS, "N*m2", Factor.ONE, "Nm2"),
    /** Kilonewton square metre. */
    KILONEWTON_SQUARE_METRE(Dimension.BENDING_STIFFNESS, "kN*m2", Factor.KILO, "kNm2"),
    /** Pound-force square inch. */
    POUND_FORCE_SQUARE_INCH(Dimension.BENDING_STIFFNESS, "lbf*in2", Factor.POUND_FORCE.times(Factor.INCH).times(Factor.INCH)),

    /** Degree of arc. */
    DEGREE(Dimension.ANGLE, "deg", Factor.DEGREE, "degree", "degrees"),
    /** Radian. */
    RADIAN(Dimension.ANGLE, "rad", Factor.ONE),

    /** Hour. There is no day: a working day is not 24 hours. */
    HOUR(Dimension.TIME, "h", Factor.HOUR, "hour", "hours", "hr", "hrs"),
    /** Minute. */
    MINUTE(Dimension.TIME, "min", Factor.MINUTE, "minute", "minutes"),
    /** Second. */
    SECOND(Dimension.TIME, "s", Factor.ONE, "second", "seconds"),

    /** The number itself; its texts carry no unit. */
    ONE(Dimension.RATIO, "1", Factor.ONE),
    /** One hundredth. */
    PERCENT(Dimension.RATIO, "%", Factor.CENTI, "percent"),

    /** Degree Celsius. */
    DEGREE_CELSIUS(Dimension.TEMPERATURE, "degC", new BigDecimal("273.15"), Factor.ONE, "C"),
    /** Degree Fahrenheit. */
    DEGREE_FAHRENHEIT(Dimension.TEMPERATURE, "degF", new BigDecimal("459.67"), Factor.of("5").per(Factor.of("9")), "F"),
    /** Kelvin. */
    KELVIN(Dimension.TEMPERATURE, "K", Factor.ONE),

    /** Kilogram per cubic metre. */
    KILOGRAM_PER_CUBIC_METRE(Dimension.DENSITY, "kg/m3", Factor.ONE),
    /** Gram per cubic centimetre. */
    GRAM_PER_CUBIC_CENTIMETRE(Dimension.DENSITY, "g/cm3", Factor.KILO),
    /** Pound per cubic foot. */
    POUND_PER_CUBIC_FOOT(Dimension.DENSITY, "lb/ft3", Factor.POUND.per(Factor.FOOT).per(Factor.FOOT).per(Factor.FOOT)),

    /** Newton per cubic millimetre. */
    NEWTON_PER_CUBIC_MILLIMETRE(Dimension.SUBGRADE_MODULUS, "N/mm3", Factor.of("1e9")),
    /** Meganewton per cubic metre. */
    MEGANEWTON_PER_CUBIC_METRE(Dimension.SUBGRADE_MODULUS, "MN/m3", Factor.MEGA),
    /** Kilonewton per cubic metre. */
    KILONEWTON_PER_CUBIC_METRE(Dimension.SUBGRADE_MODULUS, "kN/m3", Factor.KILO),
    /** Pound-force per cubic inch. */
    POUND_FORCE_PER_CUBIC_INCH(Dimension.SUBGRADE_MODULUS, "lbf/in3", Factor.PSI.per(Factor.INCH), "pci"),

    /** Metre per second. */
    METRE_PER_SECOND(Dimension.SPEED, "m/s", Factor.ONE),
    /** Kilometre per hour. */
    KILOMETRE_PER_HOUR(Dimension.SPEED, "km/h", Factor.KILO.per(Factor.HOUR), "kmh"),
    /** Foot per minute. */
    FOOT_PER_MINUTE(Dimension.SPEED, "ft/min", Factor.FOOT.per(Factor.MINUTE)),
    /** Statute mile per hour. */
    MILE_PER_HOUR(Dimension.SPEED, "mph", Factor.MILE.per(Factor.HOUR)),

    /** Square millimetre. */
    SQUARE_MILLIMETRE(Dimension.AREA, "mm2", Factor.MILLI.times(Factor.MILLI)),
    /** Square centimetre. */
    SQUARE_CENTIMETRE(Dimension.AREA, "cm2", Factor.CENTI.times(Factor.CENTI)),
    /** Square metre. */
    SQUARE_METRE(Dimension.AREA, "m2", Factor.ONE),
    /** Square inch. */
    SQUARE_INCH(Dimension.AREA, "in2", Factor.INCH.times(Factor.INCH)),
    /** Square foot. */
    SQUARE_FOOT(Dimension.AREA, "ft2", Factor.FOOT.times(Factor.FOOT));

    private static final MathContext DIGITS = new MathContext(40);
    private static final Map<String, Unit> BY_SYMBOL =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Unit::symbol, Function.identity()));
    private static final Map<String, Unit> BY_TYPED_FORM = Arrays.stream(values())
            .flatMap(unit -> unit.typedForms().map(form -> Map.entry(form, unit)))
            .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));

    private final Dimension dimension;
    private final String symbol;
    private final Factor factor;
    private final BigDecimal offset;
    private final List<String> aliases;

    Unit(Dimension dimension, String symbol, Factor factor, String... aliases) {
        this(dimension, symbol, BigDecimal.ZERO, factor, aliases);
    }

    Unit(Dimension dimension, String symbol, BigDecimal offset, Factor factor, String... aliases) {
        this.dimension = dimension;
        this.symbol = symbol;
        this.offset = offset;
        this.factor = factor;
        this.aliases = List.of(aliases);
    }

    /** Returns what the unit measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** Returns the one way in which files write the unit, in plain ASCII, for example {@code N*m2}. */
    public String symbol() {
        return symbol;
    }

    /** Returns the further ways in which the unit may be typed; capitals and dots between symbols are free there anyway. */
    public List<String> aliases() {
        return aliases;
    }

    /** Returns the symbol for screens and sheets, for example N·m² or °C; empty for a plain number. */
    public String label() {
        return switch (this) {
            case ONE -> "";
            case DEGREE -> "°";
            case DEGREE_CELSIUS -> "°C";
            case DEGREE_FAHRENHEIT -> "°F";
            default -> symbol.replace('*', '·').replace('2', '²').replace('3', '³');
        };
    }

    /** Returns the units of a dimension in the order of this list. */
    public static List<Unit> of(Dimension dimension) {
        return Arrays.stream(values()).filter(unit -> unit.dimension == dimension).toList();
    }

    /** Finds the unit that files write as {@code symbol}, capitals counting. */
    public static Optional<Unit> ofSymbol(String symbol) {
        return Optional.ofNullable(BY_SYMBOL.get(symbol)).filter(unit -> unit != ONE);
    }

    /**
     * Finds a unit by what a person types: symbol, label or alias; blanks are free, capitals too, and a product may be
     * written with a star, a dot, a raised dot or a hyphen. No two units share a typed form.
     */
    public static Optional<Unit> ofTyped(String text) {
        return Optional.ofNullable(BY_TYPED_FORM.get(typedForm(text)));
    }

    private Stream<String> typedForms() {
        return Stream.concat(Stream.of(symbol, label()), aliases.stream()).filter(form -> !form.isEmpty()).map(Unit::typedForm)
                .distinct();
    }

    private static String typedForm(String text) {
        String plain = text.replaceAll("\\s", "").replaceAll("[·⋅.-]", "*").replace('²', '2').replace('³', '3')
                .replace("^", "").replace("°", "deg");
        return plain.toLowerCase(Locale.ROOT);
    }

    /** Returns the symbols of the dimension as a list for messages, for example "kg, g, t or lb". */
    static String list(Dimension dimension) {
        List<String> symbols = of(dimension).stream().map(Unit::symbol).toList();
        int last = symbols.size() - 1;
        return symbols.stream().limit(last).collect(Collectors.joining(", ")) + " or " + symbols.get(last);
    }

    /**
     * Converts a value of this unit into another unit of the same dimension, rounded once.
     *
     * @throws IllegalArgumentException when the value is not finite, the dimensions differ or the result is too large
     */
    public double convert(double value, Unit to) {
        requireSame(to);
        requireFinite(value);
        if (to == this) {
            return value;
        }
        BigDecimal scaled = scale(Numbers.decimal(value).add(offset), to.factor);
        return finite(scaled.subtract(to.offset), value, to.symbol);
    }

    /**
     * Converts a difference of two values, or an uncertainty, into another unit of the same dimension: as
     * {@link #convert}, but the zero points of temperature scales do not enter.
     *
     * @throws IllegalArgumentException when the value is not finite, the dimensions differ or the result is too large
     */
    public double convertDifference(double difference, Unit to) {
        requireSame(to);
        requireFinite(difference);
        return to == this ? difference : finite(scale(Numbers.decimal(difference), to.factor), difference, to.symbol);
    }

    /**
     * Converts a value of this unit into the coherent SI unit of its dimension.
     *
     * @throws IllegalArgumentException when the value is not finite or the result is too large
     */
    public double toSi(double value) {
        requireFinite(value);
        return finite(scale(Numbers.decimal(value).add(offset), Factor.ONE), value, "SI units");
    }

    /**
     * Converts a difference or an uncertainty into the coherent SI unit.
     *
     * @throws IllegalArgumentException when the value is not finite or the result is too large
     */
    public double differenceToSi(double difference) {
        requireFinite(difference);
        return finite(scale(Numbers.decimal(difference), Factor.ONE), difference, "SI units");
    }

    /**
     * Converts a value in the coherent SI unit into this unit.
     *
     * @throws IllegalArgumentException when the value is not finite or the result is too large
     */
    public double fromSi(double value) {
        requireFinite(value);
        BigDecimal scaled = Numbers.decimal(value).multiply(factor.denominator()).divide(factor.numerator(), DIGITS);
        return finite(scaled.subtract(offset), value, symbol);
    }

    private BigDecimal scale(BigDecimal value, Factor to) {
        Factor ratio = factor.per(to);
        return value.multiply(ratio.numerator()).divide(ratio.denominator(), DIGITS);
    }

    private void requireSame(Unit to) {
        if (to.dimension != dimension) {
            throw new IllegalArgumentException(
                    symbol + " is a unit of " + dimension.word() + " and does not convert to " + to.symbol + ", a unit of "
                            + to.dimension.word());
        }
    }

    private static void requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a number to convert must be finite, found " + value);
        }
    }

    private double finite(BigDecimal result, double value, String target) {
        double rounded = result.doubleValue();
        if (!Double.isFinite(rounded)) {
            throw new IllegalArgumentException(value + " " + symbol + " is too large to be given in " + target);
        }
        return rounded;
    }
}
