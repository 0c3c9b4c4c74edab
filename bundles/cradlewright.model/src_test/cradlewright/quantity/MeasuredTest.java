package cradlewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The form of the files, its messages, and the uncertainty by source. */
final class MeasuredTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "MASS|285 kg|285|kg||UNSTATED",
        "MASS|285 kg u 4 weighed|285|kg|4|WEIGHED",
        "MASS|285 kg weighed|285|kg||WEIGHED",
        "MASS|285.5 lb u 0 maker's sheet|285.5|lb|0|MAKERS_SHEET",
        "MASS|90 kg like another car|90|kg||LIKE_ANOTHER_CAR",
        "LENGTH|1250 mm u 5 measured|1250|mm|5|MEASURED",
        "LENGTH|-0.125 in|-0.125|in||UNSTATED",
        "FORCE|2.5 kN plate|2.5|kN||PLATE",
        "STIFFNESS|1E+20 N/m|1e20|N/m||UNSTATED",
        "STRESS|355 MPa drawing|355|MPa||DRAWING",
        "RATIO|0.35|0.35|1||UNSTATED",
        "RATIO|0.35 guessed|0.35|1||GUESSED",
        "RATIO|0.35 u 0.05 derived|0.35|1|0.05|DERIVED",
        "RATIO|2 % u 1|2|%|1|UNSTATED",
        "TEMPERATURE|-40 degF|-40|degF||UNSTATED"})
    void canonicalTextIsReadAndWritten(Dimension dimension, String text, double value, String unit, Double u, Source source) {
        Measured read = Measured.parse(text, dimension);
        assertEquals(value, read.value());
        assertEquals(unit, read.unit().symbol());
        assertEquals(u == null ? OptionalDouble.empty() : OptionalDouble.of(u), read.uncertainty());
        assertEquals(source, read.source());
        assertEquals(text, read.text());
        assertEquals(text, read.toString());
    }

    @ParameterizedTest
    @CsvSource({"+285. kg, 285 kg", ".5 kg, 0.5 kg", "2850e-1 kg, 285 kg", "-0 kg, 0 kg", "007 kg, 7 kg", "1e-6 kg, 0.000001 kg",
        "1e-7 kg, 1E-7 kg", "0.30000000000000004 kg, 0.30000000000000004 kg", "4.9e-324 kg, 5E-324 kg",
        "1.7976931348623157e308 kg, 1.7976931348623157E+308 kg", "2e23 kg, 2E+23 kg",
        "12345678901234567 kg, 12345678901234568 kg"})
    void otherSpellingsOfANumberGetOneText(String written, String canonical) {
        assertEquals(canonical, Measured.parse(written, Dimension.MASS).text());
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(strings = {"", " ", "kg", "285", "285kg", "285  kg", " 285 kg", "285 kg ", "285\tkg", "285\u00a0kg", "NaN kg",
        "Infinity kg", "-Infinity kg", "1e999 kg", "-1e999 kg", "1e-999 kg", "12,5 kg", "1,250.5 kg", "1_000 kg", "0x1p3 kg",
        "1d kg", "1f kg", "285 KG", "285 kgs", "285 N", "285 mm", "285 1", "285 %", "285 kg u", "285 kg u -4", "285 kg u x",
        "285 kg u NaN", "285 kg u 1e999", "285 kg 4", "285 kg u 4 u 4", "285 kg Weighed", "285 kg weighed u 4", "285 kg heavy",
        "285 kg weighed guessed", "٢٨٥ kg", "２８５ kg", "2 85 kg", "e5 kg", ". kg", "+ kg", "1e kg", "1.2.3 kg", "--1 kg",
        "285 kg\n", "285 kg\u0000", "285 <kg>", "1/2 kg"})
    void anythingElseIsRefusedWithAWayToMendIt(String hostile) {
        QuantityFormatException refused = assertThrows(QuantityFormatException.class,
                () -> Measured.parse(hostile, Dimension.MASS));
        assertFalse(refused.what().isBlank());
        assertFalse(refused.mend().isBlank());
        assertEquals(refused.what() + "; " + refused.mend(), refused.getMessage());
        assertTrue(refused.getMessage().chars().noneMatch(Character::isISOControl), refused.getMessage());
    }

    @Test
    void aVeryLongTextIsRefusedAtOnceAndQuotedShort() {
        String message = message("9".repeat(5_000_000) + " kg", Dimension.MASS);
        assertTrue(message.length() < 200, message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "FORCE|285 kg|kg is a unit of mass, a force is wanted; use N, daN, kN, kgf or lbf; mass and force are never turned into "
                + "each other here",
        "MASS|285 lbf|lbf is a unit of force, a mass is wanted; use kg, g, t or lb; mass and force are never turned into each "
                + "other here",
        "ANGLE|5 mm|mm is a unit of length, an angle is wanted; use deg or rad",
        "MASS|285|\"285\" has no unit, a mass is wanted; write one of kg, g, t or lb after the number",
        "STRESS|355 N/mm2|\"N/mm2\" is not how files write this unit; write MPa",
        "MASS|12,5 kg|\"12,5\" has a comma, a number with a dot is wanted; write a dot if the comma was the decimal sign, "
                + "leave it "
                + "out otherwise",
        "MASS|1e999 kg|\"1e999\" is too large a number; check the digits and the exponent",
        "MASS|1e-999 kg|\"1e-999\" is too small a number to be kept; write 0 or check the exponent",
        "MASS|NaN kg|\"NaN\" is not a number; write digits with a dot for decimals, as in 12.5 or 1e-3, and a blank before what "
                + "follows",
        "MASS|285  kg|\"285  kg\" has a blank too many; put one blank between the words and none at the ends",
        "MASS|285 kg u -4|\"285 kg u -4\" has an uncertainty below zero; write it without the minus sign",
        "MASS|285 kg heavy|\"heavy\" is neither an uncertainty nor a known source; use u with a number, then weighed, maker's "
                + "sheet, like another car, guessed, measured, drawing, derived, plate or nothing"})
    void messagesSayWhatWasFoundWhatIsWantedAndHowToMendIt(Dimension dimension, String text, String expected) {
        assertEquals(expected, message(text, dimension));
    }

    private static String message(String text, Dimension dimension) {
        return assertThrows(QuantityFormatException.class, () -> Measured.parse(text, dimension)).getMessage();
    }

    @Test
    void valuesThatAreNoNumbersCannotBeMade() {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> Measured.of(bad, Unit.KILOGRAM));
            assertThrows(IllegalArgumentException.class, () -> Measured.of(1, Unit.KILOGRAM, bad, Source.WEIGHED));
        }
        assertThrows(IllegalArgumentException.class, () -> Measured.of(1, Unit.KILOGRAM, -1e-9, Source.WEIGHED));
        assertThrows(NullPointerException.class, () -> Measured.of(1, null));
        assertThrows(NullPointerException.class, () -> Measured.of(1, Unit.KILOGRAM, null));
        assertEquals(Measured.of(0.0, Unit.KILOGRAM), Measured.of(-0.0, Unit.KILOGRAM));
    }

    @Test
    void conversionTakesTheUncertaintyAlong() {
        Measured boot = Measured.parse("100 lb u 2 weighed", Dimension.MASS);
        assertEquals("45.359237 kg u 0.90718474 weighed", boot.to(Unit.KILOGRAM).text());
        Measured oven = Measured.parse("212 degF u 9", Dimension.TEMPERATURE);
        assertEquals("100 degC u 5", oven.to(Unit.DEGREE_CELSIUS).text());
        assertEquals(5, oven.uncertaintySi(SourceDefaults.COMMON_PRACTICE).orElseThrow());
        assertEquals(Dimension.TEMPERATURE, oven.dimension());
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', value = {"MASS, 200 kg weighed, 2", "MASS, 200 kg maker's sheet, 10",
        "MASS, 200 kg like another car, 30", "MASS, 200 kg guessed, 80", "MASS, 200 kg u 3 guessed, 3",
        "MASS, 200 kg u 0 weighed, 0",
        "LENGTH, -200 mm guessed, 0.08", "MASS, 200 kg,", "MASS, 0 kg guessed,", "MASS, 200 kg plate,", "MASS, 200 kg derived,",
        "LENGTH, 1250 mm measured,", "LENGTH, 1250 mm drawing,", "ANGLE, 3 deg guessed,", "TEMPERATURE, 60 degC guessed,"})
    void uncertaintyComesFromTheSourceOnlyWhereThatMeansSomething(Dimension dimension, String text, Double expected) {
        OptionalDouble actual = Measured.parse(text, dimension).uncertaintySi(SourceDefaults.COMMON_PRACTICE);
        Optional<Double> wanted = Optional.ofNullable(expected);
        assertEquals(wanted.isPresent(), actual.isPresent());
        wanted.ifPresent(u -> assertEquals(u, actual.getAsDouble(), 1e-12));
    }

    @Test
    void sharesBySourceAreSettable() {
        SourceDefaults own = new SourceDefaults(0.02, 0.03, 0.04, 0.5);
        assertEquals(100, Measured.of(200, Unit.KILOGRAM, Source.GUESSED).uncertaintySi(own).orElseThrow(), 1e-12);
        assertEquals(0.03, Measured.of(200, Unit.KILOGRAM, Source.MAKERS_SHEET).relativeDefault(own).orElseThrow());
        assertEquals(0.04, Measured.of(200, Unit.KILOGRAM, Source.LIKE_ANOTHER_CAR).relativeDefault(own).orElseThrow());
        assertThrows(IllegalArgumentException.class, () -> new SourceDefaults(-0.01, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new SourceDefaults(0, Double.NaN, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new SourceDefaults(0, 0, Double.POSITIVE_INFINITY, 0));
        assertThrows(IllegalArgumentException.class, () -> new SourceDefaults(0, 0, 0, -1));
    }

    @Test
    void screensRoundHalfUpWithoutGrouping() {
        Measured mass = Measured.of(1234.565, Unit.KILOGRAM);
        assertEquals("1234.57 kg", mass.format(Unit.KILOGRAM, 2, Locale.ENGLISH));
        assertEquals("1234,57 kg", mass.format(Unit.KILOGRAM, 2, Locale.GERMANY));
        assertEquals("1235 kg", mass.format(Unit.KILOGRAM, 0, Locale.GERMANY));
        assertEquals("2722 lb", mass.format(Unit.POUND, 0, Locale.ENGLISH));
        assertEquals("0.0 kg", Measured.of(-0.04, Unit.KILOGRAM).format(Unit.KILOGRAM, 1, Locale.ENGLISH));
        assertEquals("35 %", Measured.of(0.35, Unit.ONE).format(Unit.PERCENT, 0, Locale.ENGLISH));
        assertEquals("0.35", Measured.of(0.35, Unit.ONE).format(Unit.ONE, 2, Locale.ENGLISH));
        assertEquals("60.0 °C", Measured.of(140, Unit.DEGREE_FAHRENHEIT).format(Unit.DEGREE_CELSIUS, 1, Locale.ENGLISH));
        assertEquals("5 kN·m²", Measured.of(5000, Unit.NEWTON_SQUARE_METRE).format(Unit.KILONEWTON_SQUARE_METRE, 0, Locale.UK));
        assertThrows(IllegalArgumentException.class, () -> mass.format(Unit.KILOGRAM, -1, Locale.ENGLISH));
        assertThrows(IllegalArgumentException.class, () -> mass.format(Unit.KILOGRAM, 16, Locale.ENGLISH));
        assertThrows(IllegalArgumentException.class, () -> mass.format(Unit.NEWTON, 1, Locale.ENGLISH));
    }

    /** An inch is 25.4 mm and a pound 0.45359237 kg exactly (international yard and pound agreement of 1959). */
    @Test
    void fieldsShowTheFewestDigitsThatMayBeTypedBack() {
        assertEquals("18 in", Measured.of(457.2, Unit.MILLIMETRE).typed(Unit.INCH, 6, Locale.ENGLISH));
        assertEquals("2204.62 lb", Measured.of(1, Unit.TONNE).typed(Unit.POUND, 6, Locale.ENGLISH));
        assertEquals("1234567,5 N", Measured.of(1234567.5, Unit.NEWTON).typed(Unit.NEWTON, 9, Locale.GERMANY));
        assertEquals("0.35", Measured.of(0.35, Unit.ONE).typed(Unit.ONE, 6, Locale.ENGLISH));
        assertThrows(IllegalArgumentException.class, () -> Measured.of(1, Unit.TONNE).typed(Unit.POUND, 0, Locale.ENGLISH));
        assertThrows(IllegalArgumentException.class, () -> Measured.of(1, Unit.TONNE).typed(Unit.NEWTON, 6, Locale.ENGLISH));
    }
}
