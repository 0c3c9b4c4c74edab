package cradlewright.quantity;

import static cradlewright.quantity.QuantityFormatException.quote;

import java.text.DecimalFormatSymbols;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a quantity as a person of a certain locale types it. */
final class TypedText {

    private static final int LONGEST = 200;
    private static final String FRACTION = "(?:([0-9]{1,9}) +)?([0-9]{1,9}) ?/ ?([0-9]{1,9})";
    private static final Pattern LEADING_FRACTION = Pattern.compile("([+-]?) ?" + FRACTION + "(?![0-9.,/])(.*)");
    private static final Pattern LEADING_NUMBER = Pattern.compile("([+-]? ?[0-9.,]+(?:[eE][+-]?[0-9]+)?)(.*)");
    private static final Pattern FEET_AND_INCHES = Pattern.compile(
            "([+-]?)([0-9]{1,9}) ?(?:'|ft|foot|feet) ?(?:" + FRACTION + "|([0-9.,]+)) ?(?:\"|in|inch|inches)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern UNCERTAINTY = Pattern.compile("(.*?) ?\\bu (\\S+)");
    private static final Pattern MAYBE_GROUPED = Pattern.compile("[+-]?[1-9][0-9]{0,2}\\.[0-9]{3}(?:[eE].*)?");
    private static final double INCHES_PER_FOOT = 12;

    private final Dimension dimension;
    private final Unit defaultUnit;
    private final DecimalFormatSymbols symbols;

    TypedText(Dimension dimension, Unit defaultUnit, Locale locale) {
        this.dimension = Objects.requireNonNull(dimension, "dimension");
        this.defaultUnit = defaultUnit == null && dimension == Dimension.RATIO ? Unit.ONE : defaultUnit;
        this.symbols = DecimalFormatSymbols.getInstance(locale);
        if (this.defaultUnit != null && this.defaultUnit.dimension() != dimension) {
            throw new IllegalArgumentException(this.defaultUnit.symbol() + " cannot be the default unit of " + dimension.one());
        }
    }

    Measured parse(String text) {
        if (text == null || text.isBlank()) {
            throw new QuantityFormatException("nothing is written", "write a number with its unit, " + units());
        }
        if (text.length() > LONGEST) {
            throw new QuantityFormatException(quote(text) + " is too long to be a quantity", "write a number with its unit");
        }
        String rest = plain(text);
        Source source = trailingSource(rest);
        rest = rest.substring(0, rest.length() - source.word().length()).strip();
        Matcher given = UNCERTAINTY.matcher(rest);
        OptionalDouble uncertainty = OptionalDouble.empty();
        if (given.matches()) {
            uncertainty = OptionalDouble.of(uncertainty(given.group(2)));
            rest = given.group(1);
        }
        Measured amount = amount(rest);
        return new Measured(amount.value(), amount.unit(), uncertainty, source);
    }

    /** Locale digits, signs and quotes become ASCII, all kinds of blanks single ones; marks of writing direction go. */
    private String plain(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (char c : text.toCharArray()) {
            int digit = c - symbols.getZeroDigit();
            if (digit >= 0 && digit <= 9) {
                out.append((char) ('0' + digit));
            } else if (c == symbols.getDecimalSeparator() && c != ',') {
                out.append('.');
            } else if (c == symbols.getMinusSign() || c == '−') {
                out.append('-');
            } else if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
                out.append(' ');
            } else if (c == '’' || c == '′') {
                out.append('\'');
            } else if (c == '”' || c == '″') {
                out.append('"');
            } else if (c != '\u200e' && c != '\u200f' && c != '\u061c') {
                out.append(c);
            }
        }
        return out.toString().replaceAll(" +", " ").strip();
    }

    private static Source trailingSource(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        return Arrays.stream(Source.values()).filter(s -> s != Source.UNSTATED && lower.endsWith(" " + s.word())).findFirst()
                .orElse(Source.UNSTATED);
    }

    private double uncertainty(String text) {
        double value = decimal(text);
        if (value < 0) {
            throw new QuantityFormatException("the uncertainty " + quote(text) + " is below zero", "leave out the minus sign");
        }
        return value;
    }

    private Measured amount(String text) {
        if (dimension == Dimension.LENGTH) {
            Matcher feet = FEET_AND_INCHES.matcher(text);
            if (feet.matches()) {
                return feetAndInches(feet);
            }
        }
        Matcher fraction = LEADING_FRACTION.matcher(text);
        if (fraction.matches()) {
            return signed(fraction.group(1), fraction(fraction, 2), unit(fraction.group(5), text));
        }
        Matcher number = LEADING_NUMBER.matcher(text);
        if (!number.matches()) {
            throw new QuantityFormatException(quote(text) + " does not begin with a number",
                    "write the number first, then its unit, " + units());
        }
        return Measured.of(decimal(number.group(1).replace(" ", "")), unit(number.group(2), text));
    }

    private Measured feetAndInches(Matcher feet) {
        double inches = feet.group(6) != null ? decimal(feet.group(6)) : fraction(feet, 3);
        if (inches >= INCHES_PER_FOOT) {
            throw new QuantityFormatException(quote(feet.group()) + " has twelve inches or more beside the feet",
                    "write inches only, or carry them into the feet");
        }
        return signed(feet.group(1), Double.parseDouble(feet.group(2)) * INCHES_PER_FOOT + inches, Unit.INCH);
    }

    private static Measured signed(String sign, double size, Unit unit) {
        return Measured.of(sign.equals("-") ? -size : size, unit);
    }

    /** Reads whole part (may be missing), numerator and denominator from three groups that follow each other. */
    private static double fraction(Matcher match, int first) {
        double whole = match.group(first) == null ? 0 : Double.parseDouble(match.group(first));
        double numerator = Double.parseDouble(match.group(first + 1));
        double denominator = Double.parseDouble(match.group(first + 2));
        if (denominator == 0) {
            throw new QuantityFormatException(quote(match.group()) + " divides by zero", "write another number below the stroke");
        }
        return (whole * denominator + numerator) / denominator;
    }

    private double decimal(String number) {
        boolean commaLocale = symbols.getDecimalSeparator() == ',';
        boolean hasComma = number.indexOf(',') >= 0;
        if (number.chars().filter(c -> c == ',' || c == '.').count() > 1 || hasComma && !commaLocale) {
            throw new QuantityFormatException(quote(number) + " has signs that could group its digits",
                    "write it without grouping, and decimals after a " + (commaLocale ? "comma" : "dot"));
        }
        if (commaLocale && MAYBE_GROUPED.matcher(number).matches()) {
            throw new QuantityFormatException(quote(number) + " may mean thousands or decimals",
                    "write " + quote(number.replace(".", "")) + " or " + quote(number.replace('.', ',')));
        }
        return Numbers.parse(number.replace(',', '.'));
    }

    private Unit unit(String typed, String text) {
        String name = typed.strip();
        if (name.isEmpty()) {
            if (defaultUnit == null) {
                throw new QuantityFormatException(quote(text) + " has no unit, " + dimension.one() + " is wanted",
                        "add " + units());
            }
            return defaultUnit;
        }
        if (Character.isDigit(name.charAt(0))) {
            throw new QuantityFormatException(quote(text) + " holds more than one number",
                    "write the digits without gaps, then " + units());
        }
        Unit unit = Unit.ofTyped(name).orElseThrow(() -> new QuantityFormatException(
                quote(name) + " is not a known unit, " + dimension.one() + " is wanted", "use " + units()));
        if (unit.dimension() != dimension) {
            throw FileText.foreign(unit, dimension);
        }
        return unit;
    }

    private String units() {
        return Unit.list(dimension);
    }
}
