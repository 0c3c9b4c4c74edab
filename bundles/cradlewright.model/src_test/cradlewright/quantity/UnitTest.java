package cradlewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Factors against the published definitions in check-values/units.tsv, and the look-up of units. */
final class UnitTest {

    record Row(String id, Measured given, double expected, String target, double allowed, String source) {

        static Row of(String line) {
            String[] c = line.split("\t", -1);
            assertEquals(9, c.length, line);
            assertTrue(Set.of("published", "closed-form").contains(c[7]) && !c[8].isBlank(), line);
            double expected = Double.parseDouble(c[4]);
            String[] tolerance = c[6].split(" ");
            double size = tolerance[0].equals("rel") ? Math.abs(expected) : 1;
            return new Row(c[0], Measured.parse(c[2], Dimension.valueOf(c[3])), expected, c[5],
                    Double.parseDouble(tolerance[1]) * size, c[8]);
        }

        @Override
        public String toString() {
            return id + ": " + given + " [" + source + "]";
        }
    }

    static List<Row> rows() throws IOException {
        try (InputStream in = UnitTest.class.getResourceAsStream("/check-values/units.tsv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("row\t")).map(Row::of).toList();
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void factorsMeetThePublishedDefinitions(Row row) {
        double actual = row.target.equals("SI") ? row.given.si() : row.given.in(Unit.ofSymbol(row.target).orElseThrow());
        assertEquals(row.expected, actual, row.allowed, row.toString());
    }

    @Test
    void everyUnitHasARowOfItsOwn() throws IOException {
        Set<Unit> missing = EnumSet.allOf(Unit.class);
        rows().forEach(row -> missing.remove(row.given.unit()));
        assertEquals(Set.of(), missing);
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void storedUnitBelongsToItsDimension(Dimension dimension) {
        assertSame(dimension, dimension.stored().dimension());
        assertTrue(Unit.of(dimension).contains(dimension.stored()));
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void unitIsFoundByEverythingAPersonMayType(Unit unit) {
        assertSame(unit, Unit.ofTyped(unit.symbol()).orElseThrow());
        assertSame(unit, Unit.ofTyped(" " + unit.symbol().toUpperCase(Locale.ROOT)).orElseThrow());
        if (unit != Unit.ONE) {
            assertSame(unit, Unit.ofTyped(unit.label()).orElseThrow());
            assertSame(unit, Unit.ofSymbol(unit.symbol()).orElseThrow());
        }
        unit.aliases().forEach(alias -> assertSame(unit, Unit.ofTyped(alias).orElseThrow(), alias));
    }

    @Test
    void aKilogramIsNeverAForce() {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> Unit.KILOGRAM.convert(1, Unit.NEWTON));
        assertEquals("kg is a unit of mass and does not convert to N, a unit of force", refused.getMessage());
        assertThrows(IllegalArgumentException.class, () -> Unit.POUND_FORCE.convertDifference(1, Unit.POUND));
    }

    @Test
    void conversionToTheSameUnitChangesNothing() {
        for (double value : new double[] {0.1, 1.0 / 3, -1e-300, Double.MAX_VALUE, Double.MIN_VALUE}) {
            for (Unit unit : Unit.values()) {
                assertEquals(value, unit.convert(value, unit));
                assertEquals(value, unit.convertDifference(value, unit));
            }
        }
    }

    @Test
    void differencesOfTemperatureKnowNoZeroPoint() {
        assertEquals(5, Unit.DEGREE_FAHRENHEIT.convertDifference(9, Unit.DEGREE_CELSIUS));
        assertEquals(5, Unit.DEGREE_FAHRENHEIT.differenceToSi(9));
        assertEquals(20, Unit.DEGREE_CELSIUS.fromSi(293.15));
        assertEquals(68, Unit.DEGREE_FAHRENHEIT.fromSi(293.15));
    }

    @Test
    void nonsenseIsRefused() {
        for (double value : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> Unit.INCH.convert(value, Unit.FOOT));
            assertThrows(IllegalArgumentException.class, () -> Unit.INCH.convertDifference(value, Unit.FOOT));
            assertThrows(IllegalArgumentException.class, () -> Unit.INCH.toSi(value));
            assertThrows(IllegalArgumentException.class, () -> Unit.INCH.differenceToSi(value));
            assertThrows(IllegalArgumentException.class, () -> Unit.INCH.fromSi(value));
        }
        assertThrows(IllegalArgumentException.class, () -> Unit.METRE.convert(1e307, Unit.MILLIMETRE));
        assertThrows(IllegalArgumentException.class, () -> Unit.GIGAPASCAL.toSi(1e300));
        assertFalse(Unit.ofSymbol("1").isPresent());
        assertFalse(Unit.ofSymbol("KG").isPresent());
        assertFalse(Unit.ofTyped("").isPresent());
        assertFalse(Unit.ofTyped("stone").isPresent());
    }
}
