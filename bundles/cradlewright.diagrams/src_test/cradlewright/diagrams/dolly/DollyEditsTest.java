package cradlewright.diagrams.dolly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.importer.ShopImporter;
import cradlewright.diagrams.car.RedCoupe;
import cradlewright.diagrams.dolly.DollyAdditions.Sort;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.base.FileRoot;
import cradlewright.model.base.Identified;
import cradlewright.model.base.Named;
import cradlewright.model.fixture.Castor;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.DollyNode;
import cradlewright.model.fixture.Fixture;
import cradlewright.model.fixture.Member;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.stock.FoldedSection;
import cradlewright.quantity.Position;
import cradlewright.quantity.QuantityFormatException;
import cradlewright.quantity.Unit;
import cradlewright.report.UnitSystem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;

/** Every edit of the diagram there and back, on dolly 3 of the demo shop; places worked out by hand from its file. */
class DollyEditsTest {

    private final RedCoupe red = new RedCoupe();
    private final Dolly dolly = red.setup().getDolly();
    private final DollyEdits edits = new DollyEdits(red.folder(), dolly, new IdSource(new Random(3)));

    private static <T extends Named> T named(List<T> all, String name) {
        return all.stream().filter(each -> name.equals(each.getName())).findFirst().orElseThrow(() -> new AssertionError(name));
    }

    private static String text(EObject thing) {
        Position at = DollyPlace.of(thing).orElseThrow();
        return at.x() + " " + at.y() + " " + at.z();
    }

    private Member member(String name) {
        return named(dolly.getMembers(), name);
    }

    private Fixture fixture(String name) {
        return named(dolly.getFixtures(), name);
    }

    @Test
    void aCastorTakesItsCornerAlong() {
        Castor castor = dolly.getCastors().get(0);
        Position before = castor.getNode().getPosition();
        red.thereAndBack(edits.move(castor, new Vec3(0.031, 0, 0), 5).orElseThrow(), () -> {
            assertEquals(Math.rint((before.x() + 31) / 5) * 5, castor.getNode().getPosition().x(), 0);
            assertEquals(before.y(), castor.getNode().getPosition().y(), 0, "what does not move does not snap");
        });
    }

    /** Its head lies over a corner: the offset takes up a move, the height one upwards. */
    @Test
    void aFixtureOnACornerMovesItsHead() {
        Fixture fixture = fixture("2L");
        String before = text(fixture);
        double height = fixture.getHeight().in(Unit.MILLIMETRE);
        red.thereAndBack(edits.move(fixture, new Vec3(0.02, -0.01, 0.005), 0).orElseThrow(), () -> {
            assertEquals(height + 5, fixture.getHeight().in(Unit.MILLIMETRE), 1e-9);
            assertNotEquals(before, text(fixture));
            Vec3 foot = DollyPlace.place(fixture.getNode()).orElseThrow();
            assertEquals(1000 * foot.x() + 20, DollyPlace.of(fixture).orElseThrow().x(), 1e-6);
        });
        assertEquals(before, text(fixture));
    }

    /** Along its rail a fixture goes along, beyond the end of the rail its head leans over; across, only the head moves. */
    @Test
    void aFixtureOnARailGoesAlongIt() {
        FixtureSeat seat = new FixtureSeat(Vec3.ZERO, Optional.of(new FixtureSeat.Rail(new Vec3(1, 0, 0), 1)), 0.4, Vec3.ZERO, 0.2);
        FixtureSeat moved = seat.headAt(new Vec3(0.5, 0.03, 0.21));
        assertEquals(0.5, moved.distance(), 1e-12);
        assertEquals(0.03, moved.offset().y(), 1e-12);
        assertEquals(0, moved.offset().x(), 1e-12);
        assertEquals(0.21, moved.height(), 1e-12);
        FixtureSeat beyond = seat.headAt(new Vec3(1.1, 0, 0.2));
        assertEquals(1, beyond.distance(), 1e-12);
        assertEquals(0.1, beyond.offset().x(), 1e-12);
        assertEquals(0, beyond.head().minus(new Vec3(1.1, 0, 0.2)).norm(), 1e-12);
    }

    @Test
    void thicknessOfTheSheetIsTypedForAllThatIsMadeOfIt() {
        Member rail = member("left rail 2");
        FoldedSection section = (FoldedSection) rail.getSection();
        assertEquals("6 mm", edits.shown(rail, UnitSystem.METRIC).orElseThrow());
        assertEquals("0.236 in", edits.shown(section, UnitSystem.INCH).orElseThrow(), "6 over 25.4");
        red.thereAndBack(edits.typed(rail, "5", UnitSystem.METRIC).orElseThrow(),
                () -> assertEquals(5, section.getThickness().in(Unit.MILLIMETRE), 1e-9));
        for (String wrong : new String[] {"-1", "51", "thick", "5 kg"}) {
            assertThrows(QuantityFormatException.class, () -> edits.typed(rail, wrong, UnitSystem.METRIC), wrong);
        }
    }

    @Test
    void aPlaceIsTyped() {
        DollyNode node = dolly.getCastors().get(0).getNode();
        red.thereAndBack(edits.typed(node, "10; -500; 270 mm", UnitSystem.METRIC).orElseThrow(),
                () -> assertEquals("10.0 -500.0 270.0", text(node)));
    }

    @Test
    void thingsArePutBesideTheFirst() {
        Fixture first = fixture("2L");
        Fixture other = fixture("4R");
        double x = DollyPlace.of(first).orElseThrow().x();
        red.thereAndBack(edits.align(List.of(first, other)).orElseThrow(),
                () -> assertEquals(x, DollyPlace.of(other).orElseThrow().x(), 1e-6));
        assertFalse(edits.align(List.of(first)).isPresent());
    }

    /** The left rail runs at y = -480, z = 280: a fixture put beside it stands on it, there. */
    @Test
    void aFixtureIsPutOnTheNearestRail() {
        red.thereAndBack(edits.add(Sort.FIXTURE, new Vec3(0.5, -0.46, 0.28), Optional.empty()).orElseThrow(), () -> {
            Fixture fixture = dolly.getFixtures().get(dolly.getFixtures().size() - 1);
            Vec3 foot = DollyPlace.seat(fixture).orElseThrow().head();
            assertEquals(0.5, foot.x(), 1e-4);
            assertEquals(-0.48, foot.y(), 1e-4);
            assertNull(fixture.getNode());
        });
        assertFalse(edits.add(Sort.FIXTURE, new Vec3(0.5, 2, 0.28), Optional.empty()).isPresent(), "nothing is there");
        assertFalse(edits.add("something else", Vec3.ZERO, Optional.empty()).isPresent());
    }

    /** A rail from rail to rail parts both where it meets them; what stood beyond stands on the second half. */
    @Test
    void aRailJoinsTheRailsThatItMeets() {
        int members = dolly.getMembers().size();
        Member met = Corner.foot(dolly, new Vec3(0.5, -0.48, 0.28), 0.01).orElseThrow().member();
        double length = DollyPlace.place(met.getTo()).orElseThrow().minus(DollyPlace.place(met.getFrom()).orElseThrow()).norm();
        DollyNode end = met.getTo();
        red.thereAndBack(edits.add(Sort.MEMBER, new Vec3(0.5, -0.47, 0.28), Optional.of(new Vec3(0.52, 0.49, 0.28))).orElseThrow(), () -> {
            assertEquals(members + 3, dolly.getMembers().size(), "the rail and two second halves");
            Member rail = dolly.getMembers().get(dolly.getMembers().size() - 1);
            assertSame(met.getSection(), rail.getSection());
            assertSame(rail.getFrom(), met.getTo());
            Member second = dolly.getMembers().get(dolly.getMembers().indexOf(met) + 1);
            assertSame(met.getTo(), second.getFrom());
            assertSame(end, second.getTo());
            assertNotEquals(met.getId(), second.getId());
            double halves = DollyPlace.place(second.getTo()).orElseThrow().minus(DollyPlace.place(met.getFrom()).orElseThrow()).norm();
            assertEquals(length, halves, 1e-9);
            assertEquals(0.5, DollyPlace.place(rail.getTo()).orElseThrow().x(), 1e-4, "drawn almost straight, it is straight");
        });
        assertSame(end, met.getTo());
        assertFalse(edits.add(Sort.MEMBER, Vec3.ZERO, Optional.empty()).isPresent());
        assertFalse(edits.add(Sort.MEMBER, Vec3.ZERO, Optional.of(new Vec3(0.01, 0, 0))).isPresent(), "too short");
    }

    @Test
    void castorsAndFeetTakeTheCornerThatIsThere() {
        DollyNode corner = dolly.getCastors().get(0).getNode();
        Vec3 at = DollyPlace.place(corner).orElseThrow();
        red.thereAndBack(edits.add(Sort.FOOT, at.plus(new Vec3(0.02, 0, 0)), Optional.empty()).orElseThrow(),
                () -> assertSame(corner, dolly.getFeet().get(dolly.getFeet().size() - 1).getNode()));
        red.thereAndBack(edits.add(Sort.CASTOR, new Vec3(1.3, -0.48, 0.28), Optional.empty()).orElseThrow(), () -> {
            Castor castor = dolly.getCastors().get(dolly.getCastors().size() - 1);
            assertSame(dolly.getCastors().get(0).getType(), castor.getType());
            assertTrue(dolly.getMembers().stream().anyMatch(member -> member.getTo() == castor.getNode()), "the rail is parted there");
        });
    }

    @Test
    void aTwinStandsOnTheOtherSide() {
        assertFalse(edits.mirror(List.of(fixture("2L"), dolly.getCastors().get(0))).isPresent(), "they have their twins");
        red.stack().execute(edits.add(Sort.FIXTURE, new Vec3(0.5, -0.48, 0.28), Optional.empty()).orElseThrow());
        red.stack().execute(edits.add(Sort.CASTOR, new Vec3(1.3, -0.48, 0.28), Optional.empty()).orElseThrow());
        Fixture fixture = dolly.getFixtures().get(dolly.getFixtures().size() - 1);
        Castor castor = dolly.getCastors().get(dolly.getCastors().size() - 1);
        red.thereAndBack(edits.mirror(List.of(fixture, castor)).orElseThrow(), () -> {
            Fixture twin = dolly.getFixtures().get(dolly.getFixtures().size() - 1);
            assertNotSame(fixture, twin);
            assertEquals("500.0 480.0 430.0", text(twin), "150 mm over the rail");
            assertEquals(fixture.getPad(), twin.getPad());
            assertEquals("1300.0 480.0 280.0", text(dolly.getCastors().get(dolly.getCastors().size() - 1)));
        });
        red.stack().undo();
        red.stack().undo();
    }

    /** What is foreseen while something is dragged is what its file says afterwards: two ways to the same record. */
    @Test
    void theForesightIsWhatTheEditMakesOfIt() {
        for (EObject thing : List.of(dolly.getCastors().get(1), fixture("2L"), fixture("4R"), dolly.getNodes().get(2))) {
            Position to = edits.moved(thing, new Vec3(0.04, 0.02, 0), 0).orElseThrow();
            String id = ((Identified) thing).getId();
            DollyFacts foreseen = DollyForesight.moved(snapshot(), dolly.getId(), id, DollyPlace.metres(to)).orElseThrow();
            red.stack().execute(edits.move(thing, new Vec3(0.04, 0.02, 0), 0).orElseThrow());
            DollyFacts made = snapshot().find(DollyFacts.class, dolly.getId()).orElseThrow();
            for (var node : made.nodes()) {
                assertEquals(0, node.at().orElseThrow().minus(foreseen.node(node.id()).orElseThrow().at().orElseThrow()).norm(), 1e-4);
            }
            for (var fixture : made.fixtures()) {
                var other = foreseen.fixture(fixture.id()).orElseThrow();
                assertEquals(0, fixture.offset().minus(other.offset()).norm(), 1e-4);
                assertEquals(fixture.height().orElseThrow().si(), other.height().orElseThrow().si(), 1e-4);
            }
            red.stack().undo();
        }
        assertFalse(DollyForesight.moved(snapshot(), dolly.getId(), "nobody", Vec3.ZERO).isPresent());
    }

    private ShopSnapshot snapshot() {
        List<FileRoot> roots = red.folder().files().stream().map(ShopFile::root).flatMap(Optional::stream).toList();
        return ShopImporter.importShop(roots, LocalDate.of(2026, 11, 25), 1);
    }
}
