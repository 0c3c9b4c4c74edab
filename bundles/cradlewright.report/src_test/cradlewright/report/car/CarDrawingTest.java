package cradlewright.report.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.Loads.Outcome;
import cradlewright.analysis.load.Situation;
import cradlewright.report.UnitSystem;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Item;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.Palette;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Scene;
import cradlewright.report.scene.Shape;
import cradlewright.report.scene.SvgPainter;
import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

/** Places and heights worked out by hand from the numbers in the files of the demo shop. */
class CarDrawingTest {

    private static final String RED = "Pellow Siskin coupe, red, door gaps and filling";
    private static final String GREY = "Ostrel Dorrit estate, grey, left sill";
    /** Contact ids of the red coupe on dolly 3. */
    private static final String C2L = "z54y43w7d0n5h";
    private static final String C4R = "thj2xsxnpbqmf";

    private static Scene draw(VisitSight sight) {
        return new CarDrawing(UnitSystem.METRIC).draw(sight);
    }

    private static Item item(Scene scene, String id, Kind kind, Projection projection) {
        return scene.items().stream().filter(item -> item.key().equals(new Item.Key(id, kind, Optional.of(projection)))).findFirst()
                .orElseThrow();
    }

    private static List<Shape> shapes(Item item, Role role) {
        return item.shapes().stream().filter(shape -> shape.role() == role).toList();
    }

    private static double down(Scene scene, Projection projection) {
        return scene.view(projection).orElseThrow().down();
    }

    @Test
    void everyVisitOfTheDemoShopIsDrawnWithoutTwoTextsOverEachOther() {
        Map<String, VisitSight> sights = Demo.sights();
        assertEquals(8, sights.keySet().stream().map(label -> label.substring(0, label.indexOf(',', label.indexOf(',') + 1))).distinct()
                .count(), "eight cars");
        for (Map.Entry<String, VisitSight> sight : sights.entrySet()) {
            for (UnitSystem units : UnitSystem.values()) {
                Scene scene = new CarDrawing(units).draw(sight.getValue());
                List<Shape> texts = scene.shapes().stream().filter(Shape.Label.class::isInstance).toList();
                for (int i = 0; i < texts.size(); i++) {
                    for (int j = 0; j < i; j++) {
                        assertFalse(texts.get(i).box().intersects(texts.get(j).box()), sight.getKey() + ": " + texts.get(i) + texts.get(j));
                    }
                }
            }
        }
    }

    @Test
    void everythingLiesOnTheSheetAndCanBeToldApart() throws Exception {
        for (VisitSight sight : Demo.sights().values()) {
            Scene scene = draw(sight);
            HashSet<Item.Key> keys = new HashSet<>();
            for (Item item : scene.items()) {
                assertTrue(keys.add(item.key()), item.key().toString());
                assertFalse(item.name().isBlank(), item.key().toString());
                Box box = item.box();
                assertTrue(box.isEmpty() || box.union(scene.sheet()).equals(scene.sheet()), scene.title() + ": " + item);
            }
            String svg = new SvgPainter().document(scene, Palette.DARK);
            DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
            assertFalse(svg.contains("NaN") || svg.contains("Infinity"));
        }
    }

    /** 2L lies at x 1420 - 560 = 860 and y -480 mm on the dolly: left is down on the sheet. Its face is 425.5 + 60 = 485.5 mm up. */
    @Test
    void bothViewsShowASupportAtItsPlace() {
        Scene scene = draw(Demo.sights().get(RED));
        Box plan = shapes(item(scene, C2L, Kind.SUPPORT, Projection.PLAN), Role.PAD).get(0).box();
        assertEquals(860 - 35, plan.left(), 1e-6, "pad 70 x 70");
        assertEquals(860 + 35, plan.right(), 1e-6);
        assertEquals(480 - 35, plan.top() - down(scene, Projection.PLAN), 1e-6);
        assertEquals(480 + 35, plan.bottom() - down(scene, Projection.PLAN), 1e-6);
        Box pad = shapes(item(scene, C2L, Kind.SUPPORT, Projection.SIDE), Role.PAD).get(0).box();
        assertEquals(-482, pad.top() - down(scene, Projection.SIDE), 1e-6, "node 280 + fixture 177 + pad 25");
        assertEquals(25, pad.height(), 1e-6);
        assertTrue(down(scene, Projection.SIDE) > down(scene, Projection.PLAN), "from the left stands below");
    }

    /** Under 2L lie shims of 2, 1 and 0.5 mm up to the face at 485.5; under 4R 280 + 176 + 25 + 2 = 483 are 1.2 short of 424.2 + 60. */
    @Test
    void shimsAreToScaleOneByOne() {
        Scene scene = draw(Demo.sights().get(RED));
        double floor = down(scene, Projection.SIDE);
        List<Shape> shims = shapes(item(scene, C2L, Kind.SUPPORT, Projection.SIDE), Role.SHIM);
        assertEquals(List.of(2.0, 1.0, 0.5), shims.stream().map(shim -> Math.round(1e6 * shim.box().height()) / 1e6).toList());
        assertEquals(-485.5, shims.get(2).box().top() - floor, 1e-6);
        assertEquals(60, shims.get(2).box().width(), 1e-6);
        List<Shape> under4r = shapes(item(scene, C4R, Kind.SUPPORT, Projection.SIDE), Role.SHIM);
        assertEquals(1, under4r.size());
        assertEquals(-484.2 + 1.2, under4r.get(0).box().top() - floor, 1e-6);
    }

    @Test
    void barsAreAsLongAsTheLoadsAndNumberedWithThem() {
        VisitSight sight = Demo.sights().get(RED);
        Scene scene = draw(sight);
        double per = -1;
        for (var support : sight.standing().supports()) {
            double force = sight.loads().support(support.contactId()).orElseThrow().force();
            for (Projection projection : Projection.values()) {
                Item item = item(scene, support.contactId(), Kind.LOAD, projection);
                double length = item.shapes().get(0).box().height();
                per = per < 0 ? length / force : per;
                assertEquals(per, length / force, 1e-9, support.name());
                String number = Math.round(force) + " N";
                assertTrue(item.shapes().stream().anyMatch(s -> s instanceof Shape.Label l && l.text().equals(number)), number);
            }
        }
    }

    @Test
    void theAnswerStandsAsAWordAndAPatternAndAMark() {
        VisitSight sight = Demo.answered(GREY);
        var stopped = sight.standing().supports().stream().filter(s -> sight.verdict(s).equals(Optional.of(Verdict.STOP))).findFirst()
                .orElseThrow();
        assertEquals("2L", stopped.name(), "it rests where the sill is to be cut");
        Item bar = item(draw(sight), stopped.contactId(), Kind.LOAD, Projection.PLAN);
        assertEquals(Role.LOAD_STOP, bar.shapes().get(0).role());
        assertEquals(2, shapes(bar, Role.MARK).size(), "a cross");
        assertTrue(bar.shapes().stream().anyMatch(s -> s instanceof Shape.Label l && l.text().equals("2L STOP")));
    }

    @Test
    void whatIsNotKnownOrOldIsSaid() {
        VisitSight sight = Demo.sights().get(RED);
        VisitSight unknown = new VisitSight(sight.standing(), sight.weight(), Loads.none(Situation.atRest(), Outcome.MISSING, "mass"),
                sight.tipping(), List.of(), sight.stock(), false, false);
        Item bar = item(draw(unknown), C2L, Kind.LOAD, Projection.PLAN);
        assertEquals(Role.LOAD_OPEN, bar.shapes().get(0).role());
        assertTrue(bar.value().contains("load not known"), bar.value());
        Item old = item(draw(sight.withNumbersOf(sight)), C2L, Kind.LOAD, Projection.PLAN);
        assertTrue(old.value().endsWith("being worked out again"), old.value());
        assertTrue(old.shapes().stream().anyMatch(s -> s instanceof Shape.Label l && l.text().endsWith("(old)")));
        assertNotEquals(draw(sight), draw(sight.withNumbersOf(sight)));
        assertEquals(draw(sight), draw(Demo.sights().get(RED)), "the same records give the same drawing");
    }

    /** Wheels of 160 mm stand on the floor, z = 0; a swivel lead of the type moves the wheel rearward of the plate. */
    @Test
    void wheelsStandOnTheFloorLine() {
        VisitSight sight = Demo.sights().get(RED);
        Scene scene = draw(sight);
        Item floor = item(scene, "floor", Kind.FLOOR, Projection.SIDE);
        assertEquals(0, floor.box().top() - down(scene, Projection.SIDE), 1e-6);
        var castor = sight.standing().dolly().orElseThrow().castors().get(0);
        Box wheel = shapes(item(scene, castor.id(), Kind.CASTOR, Projection.SIDE), Role.CASTOR).get(0).box();
        assertEquals(0, wheel.bottom() - down(scene, Projection.SIDE), 1e-6);
    }
}
