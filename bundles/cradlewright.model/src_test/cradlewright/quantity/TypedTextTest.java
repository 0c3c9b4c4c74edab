package cradlewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people type into fields, in several locales. The second column is the same quantity in the form of the files. */
final class TypedTextTest {

    private static Measured typed(String text, Dimension dimension, Unit bare, String locale) {
        return Measured.parseTyped(text, dimension, bare, Locale.forLanguageTag(locale));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "18 in|18 in|en", "18\"|18 in|en", "18”|18 in|en", "18 inches|18 in|en", "1250|1250 mm|en", "-12|-12 mm|en",
        "+ 12|12 mm|en",
        "1.25 m|1.25 m|en", "1,25 m|1.25 m|de", "1.25 m|1.25 m|de", "0.125 in|0.125 in|de", "1.2505 m|1.2505 m|de",
        "1250,5|1250.5 mm|fr", "12 MM|12 mm|en", "1/2 in|0.5 in|en", "1 1/2\"|1.5 in|en", "-1 1/2 in|-1.5 in|en",
        "3/8|0.375 mm|en", "3'6\"|42 in|en", "3' 6 1/2\"|42.5 in|en", "3 ft 6 in|42 in|en", "3' 6.5|42.5 in|en",
        "-3'6\"|-42 in|en",
        "3'|3 ft|en", "3’ 6”|42 in|en", "1e3 mm|1000 mm|en", "18 in u 1/2|x|none", "18 in u 0.5 measured|18 in u 0.5 measured|en",
        "18 in u 0,5 Measured|18 in u 0.5 measured|de", "1250 u 5|1250 mm u 5|en", "1250 guessed|1250 mm guessed|en",
        "1250 mm maker’s sheet|1250 mm maker's sheet|en", "١٢٫٥ mm|12.5 mm|ar-EG", "12.5 mm|12.5 mm|ar-EG",
        "\u061c-١٢ mm|-12 mm|ar-EG",
        "−12 mm|-12 mm|sv", "12\u00a0mm|12 mm|en", "12\u202fmm|12 mm|fr", "१२.५ mm|12.5 mm|hi-IN-u-nu-deva"})
    void lengthsAsPeopleTypeThem(String text, String file, String locale) {
        if (locale.equals("none")) {
            assertThrows(QuantityFormatException.class, () -> typed(text, Dimension.LENGTH, Unit.MILLIMETRE, "en"));
        } else {
            assertEquals(file, typed(text, Dimension.LENGTH, Unit.MILLIMETRE, locale).text());
        }
    }

    @ParameterizedTest
    @CsvSource({"MASS, 12.5kg, 12.5 kg", "MASS, 30 lbs, 30 lb", "MASS, 1.2 T, 1.2 t", "FORCE, 300n, 300 N", "MOMENT, 5 Nm, 5 N*m",
        "MOMENT, 5 N·m, 5 N*m", "MOMENT, 5 N m, 5 N*m", "MOMENT, 5 N.m, 5 N*m", "MOMENT, 40 ft-lbf, 40 lbf*ft",
        "MOMENT, 40 lbf ft, 40 lbf*ft", "STRESS, 355 N/mm², 355 MPa", "STRESS, 355 n/mm2, 355 MPa", "ANGLE, 3°, 3 deg",
        "TEMPERATURE, 60 °C, 60 degC", "TEMPERATURE, 60 C, 60 degC", "TEMPERATURE, 140F, 140 degF", "RATIO, 0.35, 0.35",
        "RATIO, 35%, 35 %", "RATIO, 1/40, 0.025", "AREA, 12 mm², 12 mm2", "AREA, 12 mm^2, 12 mm2", "TIME, 3 hours, 3 h",
        "SUBGRADE_MODULUS, 100 pci, 100 lbf/in3", "BENDING_STIFFNESS, 3 kNm2, 3 kN*m2",
        "TORSIONAL_STIFFNESS, 900 Nm/deg, 900 N*m/deg"})
    void freeSpellingOfUnits(Dimension dimension, String text, String file) {
        assertEquals(file, typed(text, dimension, null, "en").text());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "mm", "1,250 mm", "1,250.5 mm", "12,5 mm", "1 250 mm", "1'250 mm", "1..5 mm", "1/0 in",
        "1/2/3 in",
        "1.5/2 in", "1.5 1/2 in", "3'14\"", "3'12\"", "3'1/0\"", "12 kg", "12 N", "12 parsec", "NaN", "Infinity mm", "1e999 mm",
        "1e-999 mm",
        "12 mm u -1", "12 mm u", "12 mm u x", "12 mm mm", "12 ± 1 mm", "12 mm heavy", "0x10 mm", "12 % mm", "/2 mm", "1/ mm",
        ".", "-",
        "12 mm u 1 u 1", "1234567890123/2 mm", "3'6\"7"})
    void whatCannotBeReadInOneWayIsRefused(String text) {
        QuantityFormatException refused = assertThrows(QuantityFormatException.class,
                () -> typed(text, Dimension.LENGTH, Unit.MILLIMETRE, "en"));
        assertFalse(refused.what().isBlank());
        assertFalse(refused.mend().isBlank());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "1.250 mm|\"1.250\" may mean thousands or decimals; write \"1250\" or \"1,250\"",
        "1.250,5 mm|\"1.250,5\" has signs that could group its digits; write it without grouping, and decimals after a comma",
        "12 kg|kg is a unit of mass, a length is wanted; use mm, cm, m, in or ft",
        "1 250 mm|\"1 250 mm\" holds more than one number; write the digits without gaps, then mm, cm, m, in or ft",
        "12 ell|\"ell\" is not a known unit, a length is wanted; use mm, cm, m, in or ft",
        "long|\"long\" does not begin with a number; write the number first, then its unit, mm, cm, m, in or ft"})
    void aLoadIsNeverOffByAThousand(String text, String message) {
        assertEquals(message, assertThrows(QuantityFormatException.class,
                () -> typed(text, Dimension.LENGTH, Unit.MILLIMETRE, "de")).getMessage());
    }

    @Test
    void aBareNumberNeedsADefaultUnitOfTheSameDimension() {
        assertThrows(QuantityFormatException.class, () -> typed("12", Dimension.LENGTH, null, "en"));
        assertThrows(IllegalArgumentException.class, () -> typed("12", Dimension.LENGTH, Unit.KILOGRAM, "en"));
        assertThrows(QuantityFormatException.class, () -> typed(null, Dimension.LENGTH, null, "en"));
        assertThrows(QuantityFormatException.class, () -> typed("9".repeat(1_000_000), Dimension.LENGTH, null, "en"));
    }
}
