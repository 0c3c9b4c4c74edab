package cradlewright.quantity;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Positions and directions in files. */
final class PositionTest {

    @ParameterizedTest
    @ValueSource(strings = {"1250 -450 300 mm", "1250 -450 300 mm u 5 measured", "0 0 0 mm drawing", "0.5 1E-9 -3 mm u 0.25"})
    void canonicalPositionsReadBack(String text) {
        assertEquals(text, Position.parse(text).text());
        assertEquals(text, Position.parse(text).toString());
    }

    @Test
    void mechanicsGetsMetres() {
        Position mount = Position.parse("1250 -450 300 mm u 5 measured");
        assertArrayEquals(new double[] {1.25, -0.45, 0.3}, mount.si());
        assertEquals(OptionalDouble.of(0.005), mount.uncertaintySi());
        assertEquals(Source.MEASURED, mount.source());
        assertTrue(Position.of(1, 2, 3).uncertaintySi().isEmpty());
        assertEquals(Position.of(0, 0, 0), Position.of(-0.0, -0.0, -0.0));
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(strings = {"", "1250", "1250 mm", "1250 -450 mm", "1250 -450 300", "1250 -450 300 in", "1250 -450 300 kg",
        "1250,-450,300 mm", "1250 mm -450 mm 300 mm", "NaN 0 0 mm", "1e999 0 0 mm", "1 2 3 4 mm", "1 2 3 mm u", "1 2 3 mm u -1",
        "1 2 3 mm 4", "1 2  3 mm"})
    void otherPositionsAreRefused(String hostile) {
        assertThrows(QuantityFormatException.class, () -> Position.parse(hostile));
    }

    @Test
    void positionsInInchesAreNamedAsSuch() {
        assertEquals("a position in in was found, files hold positions in mm; convert the three numbers and write mm",
                assertThrows(QuantityFormatException.class, () -> Position.parse("1 2 3 in")).getMessage());
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(strings = {"", "0 0", "0 0 0", "-0 0 0.0", "0 0 1 mm", "0 0 1 1", "0 0 x", "0 0 NaN", "0,0,1"})
    void otherDirectionsAreRefused(String hostile) {
        assertThrows(QuantityFormatException.class, () -> Direction.parse(hostile));
    }

    @Test
    void directionsHaveLengthOneAtAnySize() {
        assertEquals("0 0 1", Direction.UP.text());
        assertEquals("0 3 4", Direction.parse("0 3 4").toString());
        for (String scale : new String[] {"1e-300", "1", "1e300"}) {
            double s = Double.parseDouble(scale);
            assertArrayEquals(new double[] {0, 0.6, -0.8}, new Direction(0, 3 * s, -4 * s).unit(), 1e-15);
        }
        assertThrows(IllegalArgumentException.class, () -> new Direction(0, -0.0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Direction(0, Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> Position.of(0, Double.POSITIVE_INFINITY, 1));
    }
}
