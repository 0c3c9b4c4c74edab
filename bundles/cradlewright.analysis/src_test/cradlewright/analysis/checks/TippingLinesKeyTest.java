package cradlewright.analysis.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.load.TipAnswer.Question;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Corners worked out by hand: plane geometry. */
class TippingLinesKeyTest {

    private static final List<Vec3> RECTANGLE = List.of(new Vec3(0, -0.6, 0.28), new Vec3(2.8, -0.6, 0.28), new Vec3(2.8, 0.6, 0.28),
            new Vec3(0, 0.6, 0.28));

    @Test
    void theLinesOfARectangleLieInwardByTheLead() {
        List<TippingLine> lines = TippingLinesKey.lines(Question.ON_FLOOR, RECTANGLE, 0.05);
        assertEquals(4, lines.size());
        for (TippingLine line : lines) {
            for (Vec3 end : List.of(line.from(), line.to())) {
                assertEquals(1.35, Math.abs(end.x() - 1.4), 1e-12, "0.05 m from either end of 2.8 m");
                assertEquals(0.55, Math.abs(end.y()), 1e-12, "0.05 m from either side of 1.2 m");
                assertEquals(0.28, end.z(), 0);
            }
        }
        assertEquals(2 * (2.7 + 1.1), lines.stream().mapToDouble(line -> line.to().minus(line.from()).norm()).sum(), 1e-12, "once round");
    }

    /** A triangle with sides 3, 4, 5 has an inscribed circle of radius 1: every corner comes in by half of what is left of the sides. */
    @Test
    void aTriangleShrinksTowardsItsInscribedCircle() {
        List<Vec3> triangle = List.of(new Vec3(0, 0, 0), new Vec3(4, 0, 0), new Vec3(0, 3, 0));
        double round = TippingLinesKey.lines(Question.ON_SUPPORTS, triangle, 0.5).stream()
                .mapToDouble(line -> line.to().minus(line.from()).norm()).sum();
        assertEquals(6, round, 1e-12, "half the size, so half of 3 + 4 + 5");
        assertEquals(List.of(), TippingLinesKey.lines(Question.ON_SUPPORTS, triangle, 1.01), "nothing is left between the lines");
    }

    @Test
    void twoPointsHoldNothing() {
        assertEquals(List.of(), TippingLinesKey.lines(Question.ON_SUPPORTS, RECTANGLE.subList(0, 2), 0));
    }
}
