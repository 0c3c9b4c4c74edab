package cradlewright.quantity;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Conversion from text to text, for people who ask at the command line or in a field. */
public final class UnitConverter {

    private static final int SHOWN = 9;

    private final Locale locale;

    /** Reads and writes numbers as people of {@code locale} do. */
    public UnitConverter(Locale locale) {
        this.locale = locale;
    }

    /**
     * Converts a typed quantity into the unit named by {@code target} and returns number and label with at most nine
     * significant digits, for example {@code 18 in} to {@code mm} gives {@code 457.2 mm}. Uncertainty and source go along.
     *
     * @throws QuantityFormatException when one of the texts cannot be read, or the two do not measure the same
     */
    public String convert(String quantity, String target) {
        Unit to = Unit.ofTyped(target).orElseThrow(() -> new QuantityFormatException(
                QuantityFormatException.quote(target) + " is not a known unit", "use " + fitting(quantity)));
        Measured converted = Measured.parseTyped(quantity, to.dimension(), null, locale).to(to);
        StringBuilder text = new StringBuilder(number(converted.value()));
        if (!to.label().isEmpty()) {
            text.append(' ').append(to.label());
        }
        converted.uncertainty().ifPresent(u -> text.append(" u ").append(number(u)));
        if (converted.source() != Source.UNSTATED) {
            text.append(' ').append(converted.source().word());
        }
        return text.toString();
    }

    private String number(double value) {
        return Numbers.typed(value, SHOWN, locale);
    }

    /** Names the units into which a quantity can be turned; one of each dimension when it cannot be read itself. */
    private String fitting(String quantity) {
        for (Dimension dimension : Dimension.values()) {
            try {
                Measured.parseTyped(quantity, dimension, null, locale);
                return Unit.list(dimension);
            } catch (QuantityFormatException other) {
                continue;
            }
        }
        return "one like " + Stream.of(Dimension.values()).map(dimension -> dimension.stored().symbol()).collect(Collectors.joining(", "));
    }

    /** Returns the symbols of all units of a dimension, the preferred one of files first. */
    public static List<String> units(Dimension dimension) {
        return Unit.of(dimension).stream().sorted((a, b) -> Boolean.compare(b == dimension.stored(), a == dimension.stored()))
                .map(Unit::symbol).toList();
    }
}
