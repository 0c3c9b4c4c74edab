package cradlewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Conversion from text to text. Expected numbers follow from the exact definitions in check-values/units.tsv. */
final class UnitConverterTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "18 in|mm|457.2 mm|en", "1 lb|kg|0.45359237 kg|en", "18 in|mm|457,2 mm|de", "3'6\"|mm|1066.8 mm|en",
        "1,5 t|KG|1500 kg|de",
        "100 lb u 2 weighed|kg|45.359237 kg u 0.90718474 weighed|en", "0.35|%|35 %|en", "35 %|1|0.35|en",
        "1 mm|in|0.0393700787 in|en",
        "212 degF|°C|100 °C|en", "1e-12 mm|m|0.000000000000001 m|en", "18 in|mm|٤٥٧٫٢ mm|ar-EG"})
    void textInTextOut(String quantity, String target, String expected, String locale) {
        assertEquals(expected, new UnitConverter(Locale.forLanguageTag(locale)).convert(quantity, target));
    }

    @Test
    void refusalsNameTheReason() {
        UnitConverter english = new UnitConverter(Locale.ENGLISH);
        assertEquals("\"ell\" is not a known unit; use mm, cm, m, in or ft", message(english, "18 in", "ell"));
        assertEquals("\"ell\" is not a known unit; use kg, g, t or lb", message(english, "18 kg u 1 weighed", "ell"));
        assertTrue(message(english, "18 cubits", "ell").startsWith("\"ell\" is not a known unit; use one like kg, mm, N, "));
        assertEquals("kg is a unit of mass, a force is wanted; use N, daN, kN, kgf or lbf; mass and force are never turned into "
                + "each other here", message(english, "18 kg", "N"));
        assertEquals("\"18\" has no unit, a length is wanted; add mm, cm, m, in or ft", message(english, "18", "mm"));
    }

    private static String message(UnitConverter converter, String quantity, String target) {
        return assertThrows(QuantityFormatException.class, () -> converter.convert(quantity, target)).getMessage();
    }

    @Test
    void unitsOfADimensionAreListedWithThePreferredOneFirst() {
        assertEquals(List.of("mm", "cm", "m", "in", "ft"), UnitConverter.units(Dimension.LENGTH));
        for (Dimension dimension : Dimension.values()) {
            assertEquals(dimension.stored().symbol(), UnitConverter.units(dimension).get(0));
        }
    }
}
