package cradlewright.analysis.dolly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.FrameShop;
import cradlewright.mechanics.section.SectionPoint;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Areas inside the drawn edges against sums of rectangles by hand. */
class SectionOutlineTest {

    private static final Optional<Value> NONE = Optional.empty();

    private static Optional<Value> mm(double mm) {
        return Optional.of(FrameShop.measured(mm / 1000));
    }

    /** Area by the rule of the shoelace, mm2. */
    private static double area(List<SectionPoint> points) {
        double twice = 0;
        for (int i = 0; i < points.size(); i++) {
            SectionPoint a = points.get(i);
            SectionPoint b = points.get((i + 1) % points.size());
            twice += a.y() * b.z() - b.y() * a.z();
        }
        return Math.abs(twice) / 2 * 1e6;
    }

    private static StockFacts.Folded folded(StockFacts.Shape shape, double height, double width, Optional<Value> lip, double t) {
        return new StockFacts.Folded("s", "s", shape, mm(height), mm(width), lip, mm(t), mm(t), List.of());
    }

    private static double area(StockFacts.Section section) {
        SectionOutline outline = SectionOutline.of(section).orElseThrow();
        return area(outline.steel()) - (outline.hollow().isEmpty() ? 0 : area(outline.hollow()));
    }

    /** Sheet with sharp corners: the length of its midline times its thickness. */
    @Test
    void sheetIsAsThickAsItIs() {
        assertEquals(6 * (74 + 2 * 37), area(folded(StockFacts.Shape.CHANNEL, 80, 40, NONE, 6)), 1e-6);
        assertEquals(2 * (58 + 2 * 28 + 2 * 14), area(folded(StockFacts.Shape.LIPPED_CHANNEL, 60, 30, mm(15), 2)), 1e-6);
        assertEquals(3 * (58.5 + 38.5), area(folded(StockFacts.Shape.ANGLE, 60, 40, NONE, 3)), 1e-6);
        assertEquals(2 * (58 + 2 * 29), area(folded(StockFacts.Shape.ZED, 60, 30, NONE, 2)), 1e-6);
        assertEquals(2 * (48 + 2 * 38 + 2 * 21), area(folded(StockFacts.Shape.HAT, 40, 50, mm(20), 2)), 1e-6,
                "top 50 less a thickness, webs 40 less a thickness, brims 20 and a thickness less half of one");
    }

    @Test
    void theOuterMeasuresAreThoseOfTheRecord() {
        List<SectionPoint> steel = SectionOutline.of(folded(StockFacts.Shape.CHANNEL, 80, 40, NONE, 6)).orElseThrow().steel();
        assertEquals(0.080, steel.stream().mapToDouble(SectionPoint::z).max().orElseThrow(), 1e-12);
        assertEquals(0, steel.stream().mapToDouble(SectionPoint::z).min().orElseThrow(), 1e-12);
        assertEquals(0.040, steel.stream().mapToDouble(SectionPoint::y).max().orElseThrow(), 1e-12);
        assertEquals(0, steel.stream().mapToDouble(SectionPoint::y).min().orElseThrow(), 1e-12);
    }

    @Test
    void theOthersAreRectanglesAndCircles() {
        assertEquals(80 * 60 - 72 * 52, area(FrameShop.box("b", 0.08, 0.06, 0.004)), 1e-6);
        assertEquals(60 * 10, area(FrameShop.flat("f", 0.06, 0.01)), 1e-6);
        assertEquals(50 * 6 + 44 * 5, area(new StockFacts.Tee("t", "t", mm(50), mm(6), mm(44), mm(5))), 1e-6);
        assertEquals(Math.PI * (30 * 30 - 27 * 27), area(new StockFacts.Tube("t", "t", mm(60), mm(3))), 2, "48 corners, not a circle");
        assertEquals(90 * 45, area(new StockFacts.TimberRail("w", "w", mm(90), mm(45), Optional.empty())), 1e-6);
    }

    @Test
    void whatIsNotKnownIsNotDrawn() {
        assertTrue(SectionOutline.of(new StockFacts.Tube("t", "t", mm(60), NONE)).isEmpty());
        assertTrue(SectionOutline.of(new StockFacts.Tee("t", "t", mm(50), mm(6), NONE, mm(5))).isEmpty());
        assertTrue(SectionOutline.of(folded(StockFacts.Shape.CHANNEL, 10, 5, NONE, 6)).isEmpty(), "flanges thinner than the sheet");
    }
}
