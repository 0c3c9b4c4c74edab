package cradlewright.analysis.dolly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.StockFacts.Shape;
import cradlewright.analysis.facts.StockFacts.SheetCorner;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.VisitShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Sections of stock by their areas: thickness times the length of the mid line, corners as quarter circles of r + t/2; t 3 mm, r 3 mm
 * unless stated, so that each corner takes 2 * 6 mm from the flats and gives pi/2 * 4.5 mm.
 */
class SectionKeyTest {

    private static final double T = 0.003;
    private static final double CORNER = Math.PI / 2 * 0.0045 - 0.012;

    private static Optional<Value> value(double si) {
        return Optional.of(VisitShop.measured(si));
    }

    private static Optional<SectionShape> read(StockFacts.Section section) {
        return new VisitShop(CarrierKind.FLOOR).with(section).read(new SectionKey("s"));
    }

    private static double area(StockFacts.Section section) {
        return read(section).orElseThrow().properties().area();
    }

    private static StockFacts.Folded folded(Shape shape, Optional<Value> lip, Optional<Value> radius, List<SheetCorner> points) {
        return new StockFacts.Folded("s", "s", shape, value(0.08), value(0.05), lip, value(T), radius, points);
    }

    private static double folded(Shape shape) {
        return area(folded(shape, value(0.02), value(T), List.of()));
    }

    @Test
    void foldedShapesHaveTheLengthOfTheirSheet() {
        assertEquals(T * (0.08 + 2 * 0.05 + 2 * CORNER), folded(Shape.CHANNEL), 1e-10);
        assertEquals(T * (0.08 + 2 * 0.05 + 2 * 0.02 + 4 * CORNER), folded(Shape.LIPPED_CHANNEL), 1e-10);
        assertEquals(T * (0.08 + 0.05 + CORNER), folded(Shape.ANGLE), 1e-10);
        assertEquals(T * (0.08 + 2 * 0.05 + 2 * CORNER), folded(Shape.ZED), 1e-10);
        // Two webs and the top, and brims that reach 20 mm beyond the outside of the webs, 23 mm from their inside.
        assertEquals(T * (2 * 0.08 + 0.05 + 2 * 0.023 + 4 * CORNER), folded(Shape.HAT), 1e-10);
    }

    @Test
    void theRadiusIsOneThicknessWhenNobodySaid() {
        assertEquals(folded(Shape.CHANNEL), area(folded(Shape.CHANNEL, Optional.empty(), Optional.empty(), List.of())), 1e-15);
    }

    @Test
    void aPolylineIsTakenAsDrawn() {
        // Mid lines 40 mm and 60 mm at a right angle: the corner takes 2 * 4.5 mm and gives a quarter circle of 4.5 mm.
        List<SheetCorner> points = List.of(new SheetCorner(0, 0.06), new SheetCorner(0, 0), new SheetCorner(0.04, 0));
        assertEquals(T * (0.1 - 0.009 + Math.PI / 2 * 0.0045), area(folded(Shape.POLYLINE, Optional.empty(), value(T), points)), 1e-10);
    }

    @Test
    void tubesFlatsAndTees() {
        // EN 10219-2, table of 60 x 40 x 3: 5.41 cm2 (from memory).
        assertEquals(5.41e-4, area(new StockFacts.Hollow("s", "s", value(0.06), value(0.04), value(T))), 0.005e-4);
        assertEquals(Math.PI * (0.05 - T) * T, area(new StockFacts.Tube("s", "s", value(0.05), value(T))), 1e-12);
        SectionShape flat = read(new StockFacts.Flat("s", "s", value(0.05), value(0.02))).orElseThrow();
        assertEquals(1e-3, flat.properties().area(), 1e-15);
        assertEquals(0.02 * Math.pow(0.05, 3) / 12, flat.properties().iy(), 1e-15);
        assertEquals(0.02, flat.thickness());
        SectionShape tee = read(new StockFacts.Tee("s", "s", value(0.06), value(0.008), value(0.05), value(0.006))).orElseThrow();
        assertEquals(0.06 * 0.008 + 0.05 * 0.006, tee.properties().area(), 1e-9);
        assertEquals(0.008, tee.thickness());
    }

    @Test
    void timberIsKnownAsTimber() {
        SectionShape rail = read(new StockFacts.TimberRail("s", "s", value(0.1), value(0.05), Optional.empty())).orElseThrow();
        assertTrue(rail.timber());
        assertEquals(0.005, rail.properties().area(), 1e-15);
    }

    @Test
    void nothingWithoutAllMeasuresOrWithMeasuresThatMakeNoSection() {
        assertEquals(Optional.empty(), read(new StockFacts.Flat("s", "s", value(0.05), Optional.empty())));
        assertEquals(Optional.empty(), read(folded(Shape.LIPPED_CHANNEL, Optional.empty(), value(T), List.of())));
        assertEquals(Optional.empty(), read(new StockFacts.Tube("s", "s", value(0.05), value(0.03))));
        assertEquals(Optional.empty(), new VisitShop(CarrierKind.FLOOR).read(new SectionKey("s")));
    }
}
