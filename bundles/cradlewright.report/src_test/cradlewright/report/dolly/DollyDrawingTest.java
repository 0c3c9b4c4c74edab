package cradlewright.report.dolly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.load.DollyShape;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.Situation;
import cradlewright.mechanics.geometry.Vec3;
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

/** Places and measures worked out by hand from the numbers in the files of the demo shop. */
class DollyDrawingTest {

    private static final String RED = "Dolly 3, bolted; Pellow Siskin coupe, red, door gaps and filling";
    private static final String THIN = "Dolly 4, thin sheet; Ostrel Linnet coupe, white, engine trial fit";

    private static Scene draw(DollySight sight) {
        return new DollyDrawing(UnitSystem.METRIC).draw(sight);
    }

    private static DollySight red() {
        return DemoDollies.all().get(RED);
    }

    private static Item item(Scene scene, String id, Kind kind, Projection projection) {
        return scene.items().stream().filter(item -> item.key().equals(new Item.Key(id, kind, Optional.of(projection)))).findFirst()
                .orElseThrow(() -> new AssertionError(kind + " " + id));
    }

    private static List<String> texts(Item item) {
        return item.shapes().stream().filter(Shape.Label.class::isInstance).map(shape -> ((Shape.Label) shape).text()).toList();
    }

    private static MemberFacts member(DollySight sight, String name) {
        return sight.dolly().members().stream().filter(member -> member.name().equals(name)).findFirst().orElseThrow();
    }

    /** Where everything lies that is no text, in the order of drawing. */
    private static List<String> places(Scene scene) {
        return scene.items().stream().flatMap(item -> item.shapes().stream().filter(shape -> !(shape instanceof Shape.Label)).limit(1)
                .map(shape -> item.key() + " " + shape.box())).toList();
    }

    private static Box first(Item item) {
        return item.shapes().get(0).box();
    }

    @Test
    void everyDollyIsDrawnWithoutTwoTextsOverEachOther() {
        assertEquals(6, DemoDollies.all().values().stream().map(sight -> sight.dolly().id()).distinct().count(), "six dollies");
        for (Map.Entry<String, DollySight> sight : DemoDollies.all().entrySet()) {
            for (UnitSystem units : UnitSystem.values()) {
                List<Shape> texts = new DollyDrawing(units).draw(sight.getValue()).shapes().stream().filter(Shape.Label.class::isInstance)
                        .toList();
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
        for (DollySight sight : DemoDollies.all().values()) {
            Scene scene = draw(sight);
            HashSet<Item.Key> keys = new HashSet<>();
            for (Item item : scene.items()) {
                assertTrue(keys.add(item.key()), item.key().toString());
                assertFalse(item.name().isBlank(), item.key().toString());
                assertTrue(item.box().isEmpty() || item.box().union(scene.sheet()).equals(scene.sheet()), scene.title() + ": " + item);
            }
            String svg = new SvgPainter().document(scene, Palette.DARK);
            DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
            assertFalse(svg.contains("NaN") || svg.contains("Infinity"));
        }
    }

    /** The left rail lies 480 mm to the left, 280 mm up; its channel is 80 high and 40 wide. */
    @Test
    void aMemberIsAsBroadAsItsSection() {
        Scene scene = draw(red());
        MemberFacts rail = member(red(), "left rail 2");
        Box plan = first(item(scene, rail.id(), Kind.RAIL, Projection.PLAN)).moved(0, -scene.view(Projection.PLAN).orElseThrow().down());
        assertEquals(480 - 20, plan.top(), 1e-6);
        assertEquals(480 + 20, plan.bottom(), 1e-6);
        Box side = first(item(scene, rail.id(), Kind.RAIL, Projection.SIDE)).moved(0, -scene.view(Projection.SIDE).orElseThrow().down());
        assertEquals(-280 - 40, side.top(), 1e-6);
        assertEquals(-280 + 40, side.bottom(), 1e-6);
    }

    /** Lead 56 mm, wheel 200 mm, drawn 60 mm broad: the farthest corner of the wheel is 156 by 30 mm from the axis. */
    @Test
    void aCastorSweepsItsCircle() {
        CastorFacts castor = red().dolly().castors().get(0);
        Box circle = first(item(draw(red()), castor.id(), Kind.CASTOR, Projection.PLAN));
        assertEquals(2 * Math.hypot(156, 30), circle.width(), 1e-6);
    }

    @Test
    void theUseThatIsPrintedIsThatOfTheChecks() {
        DollySight sight = red();
        Scene scene = draw(sight);
        MemberFacts rail = member(sight, "left rail 2");
        double most = sight.stand().orElseThrow().uses().stream().filter(finding -> finding.objectId().equals(rail.id()))
                .mapToDouble(finding -> finding.use().orElseThrow()).max().orElseThrow();
        assertEquals(List.of("use " + Math.round(100 * most) + " %"), texts(item(scene, rail.id(), Kind.RAIL, Projection.PLAN)));
    }

    /** The worst of all situations is the largest of those of each by itself: two ways to the same number. */
    @Test
    void theWorstIsTheLargestOfAllSituations() {
        DollySight worst = red();
        DollyStand stand = worst.stand().orElseThrow();
        List<DollyStand> each = stand.situations().stream().map(situation -> DemoDollies.in(worst, situation.id()).stand().orElseThrow())
                .toList();
        assertTrue(each.size() > 5);
        for (Finding finding : stand.uses()) {
            double largest = each.stream().flatMap(one -> one.uses().stream())
                    .filter(other -> other.check().equals(finding.check()) && other.objectId().equals(finding.objectId()))
                    .mapToDouble(other -> other.use().orElse(0.0)).max().orElse(0);
            assertEquals(finding.use().orElse(0.0), largest, 1e-12, finding.check() + " " + finding.objectName());
        }
        assertEquals(stand.shape().orElseThrow().largest(), each.stream().mapToDouble(one -> one.shape().orElseThrow().largest()).max()
                .orElseThrow(), 0);
    }

    @Test
    void inOneSituationABarShowsTheLoadWithTheMassesAsListed() {
        DollySight rest = DemoDollies.in(red(), "rest");
        Scene scene = draw(rest);
        Loads loads = rest.stand().orElseThrow().loads().get(0);
        assertEquals(1, rest.stand().orElseThrow().loads().size());
        double sum = 0;
        for (CastorFacts castor : rest.dolly().castors()) {
            double force = loads.castors().stream().filter(carried -> carried.id().equals(castor.id())).findFirst().orElseThrow().force();
            sum += force;
            assertEquals(List.of(castor.name(), Math.round(force) + " N"), texts(item(scene, castor.id(), Kind.CASTOR, Projection.PLAN)));
        }
        assertTrue(sum > 0);
        String rail = member(rest, "left rail 2").id();
        assertTrue(rest.stand().orElseThrow().use(rail).ratio().orElseThrow()
                < 0.95 * red().stand().orElseThrow().use(rail).ratio().orElseThrow(), "people on it use more of it");
        assertTrue(texts(scene.items().stream().filter(item -> item.id().equals("foot")).findFirst().orElseThrow()).get(0)
                .endsWith("at rest"));
    }

    @Test
    void whatStopsIsSaidInAWordAndAPattern() {
        DollySight thin = DemoDollies.all().get(THIN);
        Scene scene = draw(thin);
        MemberFacts rail = member(thin, "left rail 1");
        assertEquals(Verdict.STOP, thin.stand().orElseThrow().use(rail.id()).verdict());
        Item drawn = item(scene, rail.id(), Kind.RAIL, Projection.PLAN);
        assertEquals(Role.LOAD_STOP, drawn.shapes().get(0).role());
        assertTrue(drawn.shapes().stream().anyMatch(shape -> shape.role() == Role.MARK), "light bars");
        assertTrue(texts(drawn).get(0).endsWith("% STOP"), texts(drawn).toString());
    }

    @Test
    void theWeakestJointIsNamedOnce() {
        Scene scene = draw(red());
        List<String> heads = scene.items().stream().filter(item -> item.kind() == Kind.JOINT).flatMap(item -> texts(item).stream())
                .filter(text -> text.startsWith("weakest joint: use ")).toList();
        assertEquals(1, heads.size());
        DollyStand stand = red().stand().orElseThrow();
        double most = red().dolly().joints().stream().mapToDouble(joint -> stand.use(joint.id()).ratio().orElse(0.0)).max().orElseThrow();
        assertEquals("weakest joint: use " + Math.round(100 * most) + " %", heads.get(0));
    }

    /** 1 mm on a rail of 2 m: a hundred times as much takes 0.1 of the 0.12 m that the drawing has for it, 200 times would take 0.2. */
    @Test
    void theDeflectionIsDrawnSoManyTimesAsLarge() {
        DollyShape shape = new DollyShape(Situation.atRest(), List.of(new DollyShape.Bent("rail", List.of(
                new DollyShape.Moved(Vec3.ZERO, Vec3.ZERO), new DollyShape.Moved(new Vec3(2, 0, 0), Vec3.UP.times(-0.001))))));
        assertEquals(100, Deflection.times(shape));
        Scene scene = draw(red());
        Item bent = item(scene, "deflection", Kind.BENT, Projection.SIDE);
        DollyShape of = red().stand().orElseThrow().shape().orElseThrow();
        assertEquals("deflection x" + Deflection.times(of), texts(bent).get(0));
        double down = scene.view(Projection.SIDE).orElseThrow().down();
        double lowest = bent.shapes().stream().filter(Shape.Line.class::isInstance).mapToDouble(line -> line.box().bottom() - down).max()
                .orElseThrow();
        double expected = of.members().stream().flatMap(member -> member.points().stream())
                .mapToDouble(point -> -1000 * (point.at().z() + Deflection.times(of) * point.by().z())).max().orElseThrow();
        assertEquals(expected, lowest, 1e-6);
    }

    @Test
    void aBoughtDollyShowsItsPlate() {
        Map<String, DollySight> all = DemoDollies.all();
        DollySight bought = all.get("Dolly 1, bought");
        Item plate = item(draw(bought), bought.dolly().id(), Kind.CARRIER, Projection.PLAN);
        assertEquals(List.of("plate: 900 kg", "no members are known"), texts(plate));
        assertEquals(1300, first(plate).height(), 1e-6, "castors 650 mm to either side");
        DollySight under = all.get("Dolly 1, bought; Cardle Plover van, maroon, waiting for the chassis");
        assertTrue(texts(item(draw(under), under.dolly().id(), Kind.CARRIER, Projection.PLAN)).get(1).startsWith("use "));
    }

    @Test
    void untilAnythingIsWorkedOutTheDollyIsDrawnAsItIs() {
        DollyStand stand = red().stand().orElseThrow();
        DollySight sketch = new DollySight(red().dolly(), red().stock(), Optional.of(new DollyStand(stand.standing(), stand.situations(),
                stand.chosen(), List.of(), Optional.empty(), List.of(), true)));
        Scene scene = draw(sketch);
        Item rail = item(scene, member(sketch, "left rail 2").id(), Kind.RAIL, Projection.PLAN);
        assertEquals(List.of(), texts(rail));
        assertEquals(Role.STRUCTURE, rail.shapes().get(0).role());
        assertTrue(scene.title().endsWith("being worked out again"), scene.title());
    }

    /** Where no check has an answer about a member, word and broken edge say so. */
    @Test
    void whatIsNotKnownIsSaid() {
        DollyStand stand = red().stand().orElseThrow();
        DollySight sight = new DollySight(red().dolly(), red().stock(), Optional.of(new DollyStand(stand.standing(), stand.situations(),
                stand.chosen(), stand.loads(), Optional.empty(), List.of(), false)));
        Item rail = item(draw(sight), member(sight, "left rail 2").id(), Kind.RAIL, Projection.PLAN);
        assertEquals(List.of("CAN'T SAY"), texts(rail));
        assertEquals(Role.LOAD_OPEN, rail.shapes().get(0).role());
    }

    @Test
    void oldNumbersAreMarkedAndNothingMovesBecauseOfThat() {
        DollySight sight = red();
        Scene old = draw(sight.withNumbersOf(sight));
        assertEquals(places(draw(sight)), places(old));
        Item rail = item(old, member(sight, "left rail 2").id(), Kind.RAIL, Projection.PLAN);
        assertTrue(texts(rail).get(0).endsWith("(old)"));
        assertTrue(old.title().endsWith("being worked out again"), old.title());
    }

    @Test
    void sectionsStandUnderTheDollySoManyTimesAsLarge() {
        Scene scene = draw(red());
        Item section = scene.items().stream().filter(item -> item.kind() == Kind.SECTION).findFirst().orElseThrow();
        String drawn = texts(section).get(1);
        int times = Integer.parseInt(drawn.substring(drawn.indexOf("drawn x") + "drawn x".length()));
        assertEquals(80.0 * times, first(section).height(), 1e-6, "Folded channel 80 x 40 x 6");
        assertEquals(40.0 * times, first(section).width(), 1e-6);
    }
}
