package cradlewright.report.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.report.scene.LabelPlacer.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LabelPlacerTest {

    @Test
    void theWishedSideIsTakenWhenItIsFree() {
        LabelPlacer placer = new LabelPlacer(1);
        assertEquals(new Box(103, 95, 123, 105), placer.place(new Shape.Point(100, 100), 2, 20, 10, Side.RIGHT), "2 and 1 off");
        assertEquals(new Box(77, 95, 97, 105), placer.place(new Shape.Point(100, 100), 2, 20, 10, Side.RIGHT), "then the other side");
    }

    @Test
    void aThingThatMustStayVisibleIsKeptClearOf() {
        LabelPlacer placer = new LabelPlacer(1);
        placer.keepClear(new Box(100, 90, 130, 110));
        assertEquals(new Box(77, 95, 97, 105), placer.place(new Shape.Point(100, 100), 2, 20, 10, Side.RIGHT));
    }

    @Test
    void aTextThatMayBeLeftOutIsWhereThereIsNoRoomNear() {
        LabelPlacer placer = new LabelPlacer(1);
        assertEquals(Optional.of(new Box(103, 95, 123, 105)), placer.placeNear(new Shape.Point(100, 100), 2, 20, 10, Side.RIGHT));
        placer.keepClear(new Box(-1000, -1000, 1000, 1000));
        assertEquals(Optional.empty(), placer.placeNear(new Shape.Point(100, 100), 2, 20, 10, Side.RIGHT));
        assertTrue(placer.place(new Shape.Point(100, 100), 2, 20, 10, Side.RIGHT).width() > 0, "one that must not always finds its place");
    }

    @Test
    void manyTextsAtOnePlaceNeverOverlap() {
        LabelPlacer placer = new LabelPlacer(2);
        Random random = new Random(7);
        placer.keepClear(new Box(-500, -500, 500, 500));
        List<Box> placed = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            Shape.Point at = new Shape.Point(random.nextDouble() * 100, random.nextDouble() * 100);
            placed.add(placer.place(at, 3, 20 + random.nextDouble() * 200, 10 + random.nextDouble() * 30, Side.ABOVE));
        }
        for (int i = 0; i < placed.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertTrue(!placed.get(i).intersects(placed.get(j)));
            }
        }
    }
}
