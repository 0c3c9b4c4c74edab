package cradlewright.report.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two views of a thing 2 m long, 1 m broad and 0.5 m high, text 100 mm high. */
class TwoViewsTest {

    private static Scene draw(UnitSystem units) {
        return new TwoViews(units, 100).draw("a box", projection -> {
            Pen pen = new Pen(projection, 100);
            pen.item("box", Kind.PIECE, "box", "").line(Role.OUTLINE, pen.at(new Vec3(0, -0.5, 0)), pen.at(new Vec3(2, 0.5, 0.5)));
            return pen.finish();
        });
    }

    private static Item item(Scene scene, String id) {
        return scene.items().stream().filter(item -> item.id().equals(id)).findFirst().orElseThrow();
    }

    @Test
    void theViewFromTheLeftLiesBelowWithTheSameX() {
        Scene scene = draw(UnitSystem.METRIC);
        List<Item> boxes = scene.items().stream().filter(item -> item.kind() == Kind.PIECE).toList();
        assertEquals(2, boxes.size());
        assertEquals(boxes.get(0).box().left(), boxes.get(1).box().left(), 0);
        assertEquals(1000, boxes.get(0).box().height(), 1e-9);
        assertEquals(500, boxes.get(1).box().height(), 1e-9);
        assertTrue(boxes.get(0).box().bottom() < boxes.get(1).box().top());
    }

    @Test
    void theArrowToTheFrontIsTheFirstThingOnTheSheetAndPointsToTheLeft() {
        Scene scene = draw(UnitSystem.METRIC);
        Box front = item(scene, "front").box();
        for (Item item : scene.items()) {
            assertTrue(item.id().startsWith("heading") || item.id().equals("front") || front.bottom() <= item.box().top(), item.name());
        }
        Shape.Line shaft = (Shape.Line) item(scene, "front").shapes().get(0);
        assertTrue(shaft.x2() < shaft.x1());
        assertEquals(scene.sheet(), scene.sheet().union(front));
    }

    @Test
    void theMeasureIsAsLongAsItSays() {
        assertEquals(500, item(draw(UnitSystem.METRIC), "scale").shapes().get(0).box().width(), 1e-9);
        assertEquals(2 * 12 * 25.4, item(draw(UnitSystem.INCH), "scale").shapes().get(0).box().width(), 1e-9);
    }

    @Test
    void nothingGivesAnEmptySheet() {
        Scene scene = new TwoViews(UnitSystem.METRIC, 100).draw("nothing", projection -> List.of());
        assertTrue(scene.items().isEmpty() && scene.views().isEmpty());
        assertTrue(scene.sheet().width() > 0);
    }
}
