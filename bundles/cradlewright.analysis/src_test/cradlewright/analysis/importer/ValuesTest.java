package cradlewright.analysis.importer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Direction;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Units and uncertainties; expected numbers are exact by the definition of the units (BIPM SI brochure, NIST SP 811, B.8). */
class ValuesTest {

    private static final double TINY = 1e-12;

    private static void check(String text, Dimension dimension, double si, double u, Source source) {
        Value value = Values.si(Measured.parse(text, dimension)).orElseThrow();
        assertEquals(si, value.si(), Math.abs(si) * TINY, text);
        assertEquals(u, value.u(), u * TINY, text);
        assertEquals(source, value.source(), text);
    }

    @Test
    void storedUnitsBecomeSiUnits() {
        check("285 kg", Dimension.MASS, 285, 0, Source.UNSTATED);
        check("100 lb", Dimension.MASS, 45.359237, 0, Source.UNSTATED);
        check("1250 mm", Dimension.LENGTH, 1.25, 0, Source.UNSTATED);
        check("18 in", Dimension.LENGTH, 0.4572, 0, Source.UNSTATED);
        check("5 kN", Dimension.FORCE, 5000, 0, Source.UNSTATED);
        check("235 MPa", Dimension.STRESS, 235e6, 0, Source.UNSTATED);
        check("0.03 N/mm3", Dimension.SUBGRADE_MODULUS, 3e7, 0, Source.UNSTATED);
        check("180 deg", Dimension.ANGLE, Math.PI, 0, Source.UNSTATED);
        check("100 N*m/deg", Dimension.TORSIONAL_STIFFNESS, 18000 / Math.PI, 0, Source.UNSTATED);
        check("400 mm2", Dimension.AREA, 4e-4, 0, Source.UNSTATED);
    }

    @Test
    void aGivenUncertaintyGoesBeforeTheShareOfTheSource() {
        check("285 kg u 4 weighed", Dimension.MASS, 285, 4, Source.WEIGHED);
        check("200 kg weighed", Dimension.MASS, 200, 2, Source.WEIGHED);
        check("200 kg maker's sheet", Dimension.MASS, 200, 10, Source.MAKERS_SHEET);
        check("200 kg like another car", Dimension.MASS, 200, 30, Source.LIKE_ANOTHER_CAR);
        check("200 kg guessed", Dimension.MASS, 200, 80, Source.GUESSED);
        check("1250 mm measured", Dimension.LENGTH, 1.25, 0, Source.MEASURED);
        check("1250 mm u 2 measured", Dimension.LENGTH, 1.25, 0.002, Source.MEASURED);
    }

    @Test
    void aRatingIsALeastValueUnlessItIsBorrowedOrGivenOneOfItsOwn() {
        for (String source : new String[] {"plate", "maker's sheet", "drawing", "weighed", "measured", "derived"}) {
            assertEquals(0, rating("500 kg " + source).u(), source);
        }
        // 15 % and 40 %, common practice, no source; 20 kg as somebody gave it.
        assertEquals(75, rating("500 kg like another car").u(), 500 * TINY);
        assertEquals(200, rating("500 kg guessed").u(), 500 * TINY);
        assertEquals(20, rating("500 kg u 20 maker's sheet").u(), 500 * TINY);
        assertEquals(20, rating("500 kg u 20 plate").u(), 500 * TINY);
        assertEquals(Optional.empty(), Values.rating(null));
    }

    private static Value rating(String text) {
        return Values.rating(Measured.parse(text, Dimension.MASS)).orElseThrow();
    }

    @Test
    void temperaturesStayInDegreesCelsius() {
        assertEquals(Optional.of(new Value(60, 0, Source.UNSTATED)),
                Values.celsius(Measured.parse("60 degC", Dimension.TEMPERATURE)));
        Value value = Values.celsius(Measured.parse("212 degF u 9", Dimension.TEMPERATURE)).orElseThrow();
        assertEquals(100, value.si(), 1e-9);
        assertEquals(5, value.u(), 1e-9);
    }

    @Test
    void complianceIsOneOverStiffness() {
        Value value = Values.compliance(Measured.parse("2 kN/mm u 0.2 measured", Dimension.STIFFNESS)).orElseThrow();
        assertEquals(5e-7, value.si(), 5e-7 * TINY);
        // Independent route: half the width between 1/(k - u) and 1/(k + u) agrees to the order (u/k)2 = 1 %.
        assertEquals((1 / 1.8e6 - 1 / 2.2e6) / 2, value.u(), 0.011 * value.u());
        assertEquals(Source.MEASURED, value.source());
        assertEquals(Optional.empty(), Values.compliance(Measured.parse("0 N/m", Dimension.STIFFNESS)));
        assertEquals(Optional.empty(), Values.compliance(null));
    }

    @Test
    void placesKeepTheirAxesAndGetTheUncertaintyOfCommonPractice() {
        assertEquals(Optional.of(new Spot(new Vec3(1.25, -0.45, 0.3), 0.005, false)),
                Values.spot(Position.parse("1250 -450 300 mm")));
        assertEquals(Optional.of(new Spot(new Vec3(1.25, -0.45, 0.3), 0.005, false)),
                Values.spot(Position.parse("1250 -450 300 mm measured")));
        assertEquals(Optional.of(new Spot(new Vec3(1.25, -0.45, 0.3), 0.012)),
                Values.spot(Position.parse("1250 -450 300 mm u 12 guessed")));
        assertEquals(Optional.of(new Vec3(0, 0.6, 0.8)), Values.direction(new Direction(0, 3, 4)));
    }

    @Test
    void whatNobodySaidStaysEmpty() {
        assertEquals(Optional.empty(), Values.si(null));
        assertEquals(Optional.empty(), Values.celsius(null));
        assertEquals(Optional.empty(), Values.spot(null));
        assertEquals(Optional.empty(), Values.point(null));
        assertEquals(Optional.empty(), Values.direction(null));
        assertEquals(Optional.empty(), Values.text(" \t"));
        assertEquals(true, Values.count(null).isEmpty());
        assertEquals(0, Values.si(Measured.parse("0 kg", Dimension.MASS)).orElseThrow().si());
    }

    @Test
    void aPlaceIsOffByWhatItsSourceIsWorth() {
        assertEquals(0.1, Values.spot(Position.parse("1250 -450 300 mm guessed")).orElseThrow().u());
        assertEquals(0.03, Values.spot(Position.parse("1250 -450 300 mm like another car")).orElseThrow().u());
        assertEquals(0.005, Values.spot(Position.parse("1250 -450 300 mm drawing")).orElseThrow().u());
    }
}
