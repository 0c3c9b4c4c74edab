package cradlewright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Amount;
import cradlewright.quantity.Dimension;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Numbers as people read them. Factors: 1 in = 25.4 mm and 1 lb = 0.45359237 kg exactly (international yard and pound agreement, 1959);
 * 1 lbf = 1 lb times 9.80665 m/s2 = 4.4482216 N; degrees Fahrenheit = 1.8 degrees Celsius + 32 (NIST SP 811, appendix B; from memory).
 */
class UnitSystemTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "99.94   | MASS        | 99.9 kg     | 220 lb",
        "100     | MASS        | 100 kg      | 220 lb",
        "20      | MASS        | 20.0 kg     | 44.1 lb",
        "0.0254  | LENGTH      | 25.4 mm     | 1.000 in",
        "1.23456 | LENGTH      | 1234.6 mm   | 48.605 in",
        "9.994   | FORCE       | 9.99 N      | 2.25 lbf",
        "4448.22 | FORCE       | 4448 N      | 1000 lbf",
        "1000000 | STRESS      | 1.0 MPa     | 145 psi",
        "0.12345 | RATIO       | 0.12        | 0.12",
        "333.15  | TEMPERATURE | 60          | 140"})
    void digitsFitWhatPeopleCanMeasure(double si, Dimension dimension, String metric, String inch) {
        assertBegins(metric, UnitSystem.METRIC.text(new Amount(si, dimension)));
        assertBegins(inch, UnitSystem.INCH.text(new Amount(si, dimension)));
    }

    private static void assertBegins(String expected, String text) {
        assertEquals(expected, text.substring(0, Math.min(expected.length(), text.length())), text);
    }

    @Test
    void noLimitAndUnknownAreWordsAndNeverNumbers() {
        for (UnitSystem units : UnitSystem.values()) {
            assertEquals("no limit", units.text(Amount.force(Double.POSITIVE_INFINITY)));
            assertEquals("unknown", units.text(Amount.force(Double.NaN)));
        }
    }

    @Test
    void theLanguageOfTheMachineChangesNothing() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals("12.3 kg", UnitSystem.METRIC.text(Amount.mass(12.34)));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void everyDimensionHasAUnitOfItsOwnInBothSystems() {
        for (Dimension dimension : Dimension.values()) {
            for (UnitSystem units : UnitSystem.values()) {
                assertEquals(dimension, units.unit(dimension).dimension());
            }
        }
    }
}
