package cradlewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files and messages stay the same whatever the machine's own locale is. */
final class LocaleIndependenceTest {

    private final Locale before = Locale.getDefault();

    @AfterEach
    void restore() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en-US", "de-DE", "ar-EG", "tr-TR", "fa-IR-u-nu-arabext", "th-TH-u-nu-thai"})
    void filesDoNotDependOnTheDefaultLocale(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        Measured mass = Measured.parse("1234.5 kg u 0.25 weighed", Dimension.MASS);
        assertEquals(1234.5, mass.value());
        assertEquals("1234.5 kg u 0.25 weighed", mass.text());
        assertEquals("1250.5 -450 300 mm u 0.5 measured", Position.parse("1250.5 -450 300 mm u 0.5 measured").text());
        assertEquals("0.5 0 1", Direction.parse("0.5 0 1").text());
        assertEquals("\"12,5\" has a comma, a number with a dot is wanted; write a dot if the comma was the decimal sign, "
                + "leave it out otherwise",
                assertThrows(QuantityFormatException.class, () -> Measured.parse("12,5 kg", Dimension.MASS)).getMessage());
        assertEquals(Unit.INCH, Unit.ofTyped("IN").orElseThrow());
        assertEquals(Unit.MINUTE, Unit.ofTyped("MIN").orElseThrow());
        assertEquals("12.5 in", Measured.parseTyped("12.5 IN", Dimension.LENGTH, null, Locale.ENGLISH).text());
        assertEquals("12.5 kg", Measured.of(12.5, Unit.KILOGRAM).format(Unit.KILOGRAM, 1, Locale.ENGLISH));
        assertEquals("457.2 mm", new UnitConverter(Locale.ENGLISH).convert("18 in", "mm"));
    }
}
