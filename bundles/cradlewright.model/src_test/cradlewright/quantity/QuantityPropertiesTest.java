package cradlewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What holds for every number, unit and locale. */
final class QuantityPropertiesTest {

    private static final List<Locale> LOCALES = List.of(Locale.ROOT, Locale.US, Locale.GERMANY, Locale.FRANCE,
            Locale.forLanguageTag("de-CH"), Locale.forLanguageTag("sv"), Locale.forLanguageTag("ar-EG"),
            Locale.forLanguageTag("fa-IR"), Locale.forLanguageTag("tr-TR"), Locale.forLanguageTag("th-TH-u-nu-thai"));

    @Provide
    Arbitrary<Double> anyFinite() {
        return Arbitraries.longs().map(Double::longBitsToDouble).filter(Double::isFinite);
    }

    @Provide
    Arbitrary<Locale> locales() {
        return Arbitraries.of(LOCALES);
    }

    @Property(seed = "1959", tries = 2000)
    void conversionThereAndBackKeepsTheValue(@ForAll @DoubleRange(min = -1e6, max = 1e6) double value, @ForAll Unit from,
            @ForAll Unit to) {
        if (from.dimension() == to.dimension()) {
            double size = Math.max(Math.abs(value), from.dimension().hasNaturalZero() ? 0 : 500);
            assertEquals(value, to.convert(from.convert(value, to), from), 1e-12 * size);
            assertEquals(value, from.fromSi(from.toSi(value)), 1e-12 * size);
            assertEquals(value, to.convertDifference(from.convertDifference(value, to), from), 1e-12 * Math.abs(value));
        }
    }

    @Property(seed = "27", tries = 2000)
    void everyValueReadsBackFromItsText(@ForAll("anyFinite") double value, @ForAll("anyFinite") double u, @ForAll boolean given,
            @ForAll Unit unit, @ForAll Source source) {
        Measured written = new Measured(value, unit, given ? OptionalDouble.of(Math.abs(u)) : OptionalDouble.empty(), source);
        assertEquals(written, Measured.parse(written.text(), unit.dimension()));
        assertEquals(value + 0.0, Double.parseDouble(Numbers.text(value)), "minus zero is written as zero");
    }

    @Property(seed = "31", tries = 1000)
    void textIsNeverLongerThanJavasOwn(@ForAll("anyFinite") double value) {
        assertTrue(Numbers.decimal(value).precision() <= new BigDecimal(Double.toString(value)).stripTrailingZeros()
                .precision());
    }

    @Property(seed = "4130", tries = 500)
    void positionsAndDirectionsReadBack(@ForAll("anyFinite") double x, @ForAll("anyFinite") double y, @ForAll Source source) {
        Position position = new Position(x, y, -x, OptionalDouble.of(Math.abs(y)), source);
        assertEquals(position, Position.parse(position.text()));
        Direction direction = new Direction(x, y, 1);
        assertEquals(direction, Direction.parse(direction.text()));
        double[] unit = direction.unit();
        assertEquals(1, unit[0] * unit[0] + unit[1] * unit[1] + unit[2] * unit[2], 1e-12);
    }

    @Property(seed = "73", tries = 1000)
    void whatAScreenShowsCanBeTypedBack(@ForAll @DoubleRange(min = -1e5, max = 1e5) double value, @ForAll Unit unit,
            @ForAll("locales") Locale locale) {
        String shown = Measured.of(value, unit).format(unit, 4, locale);
        assertEquals(value, Measured.parseTyped(shown, unit.dimension(), null, locale).value(), 0.5001e-4, shown);
    }

    @Property(seed = "99", tries = 2000)
    void typedNonsenseEndsInAMessageOrAFiniteValue(@ForAll("scraps") String text, @ForAll Dimension dimension,
            @ForAll("locales") Locale locale) {
        try {
            assertTrue(Double.isFinite(Measured.parseTyped(text, dimension, dimension.stored(), locale).value()));
        } catch (QuantityFormatException refused) {
            assertTrue(refused.getMessage().contains("; "));
        }
        try {
            assertTrue(Double.isFinite(Measured.parse(text, dimension).value()));
        } catch (QuantityFormatException refused) {
            assertTrue(refused.getMessage().contains("; "));
        }
    }

    @Provide
    Arbitrary<String> scraps() {
        return Arbitraries.of("1", "2", "0", ".", ",", "e", "E", "-", "+", "/", " ", "'", "\"", "kg", "in", "ft", "mm", "u",
        "u 4",
                "weighed", "%", "٢", "٫", "−", "N", "*", "\u200f", "\t", "NaN", "deg", "9".repeat(40)).list().ofMaxSize(8)
                .map(parts -> String.join("", parts));
    }
}
