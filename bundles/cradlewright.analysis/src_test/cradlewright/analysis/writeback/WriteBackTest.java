package cradlewright.analysis.writeback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.JointFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShimFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.importer.ShopImporter;
import cradlewright.analysis.testshop.FullShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.base.Named;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.Foot;
import cradlewright.model.fixture.GearStore;
import cradlewright.model.fixture.Prop;
import cradlewright.model.fixture.Stand;
import cradlewright.model.stock.CastorType;
import cradlewright.model.stock.PadType;
import cradlewright.model.stock.ShimType;
import cradlewright.model.stock.Stock;
import cradlewright.model.stock.StockFactory;
import cradlewright.model.stock.StockItem;
import cradlewright.model.vehicle.Brace;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.MountState;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Source;
import cradlewright.quantity.Unit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each place that a remedy changes is written into the objects of a shop that has everything, and the shop is read anew: it must say what
 * was wanted there and what it said before everywhere else. The oracle is the importer, which has tests of its own.
 */
class WriteBackTest {

    private final List<EObject> roots = new FullShop().roots();

    /** What to change in a shop. */
    private record Case(String name, Function<ShopSnapshot, Fact> change) {
        @Override
        public String toString() {
            return name;
        }
    }

    WriteBackTest() {
        roots.stream().flatMap(WriteBackTest::stream).forEach(WriteBackTest::notYet);
        Stock stock = roots.stream().filter(Stock.class::isInstance).map(Stock.class::cast).findFirst().orElseThrow();
        StockFactory factory = StockFactory.eINSTANCE;
        PadType pad = item(stock, factory.createPadType(), "pad");
        pad.setThickness(Measured.of(20, Unit.MILLIMETRE));
        CastorType castor = item(stock, factory.createCastorType(), "castor");
        castor.setWheelDiameter(Measured.of(200, Unit.MILLIMETRE));
        ShimType shim = item(stock, factory.createShimType(), "shim");
        shim.setThickness(Measured.of(1.5, Unit.MILLIMETRE));
        item(stock, factory.createBoltType(), "bolt");
        item(stock, factory.createFlatBar(), "flat");
        Stand stand = FixtureFactory.eINSTANCE.createStand();
        stand.setId("other stand");
        GearStore gear = roots.stream().filter(GearStore.class::isInstance).map(GearStore.class::cast).findFirst().orElseThrow();
        gear.getItems().add(stand);
    }

    private static void notYet(EObject object) {
        if (object instanceof Foot foot) {
            foot.setDown(false);
        } else if (object instanceof Prop prop) {
            prop.setFitted(false);
        } else if (object instanceof Brace brace) {
            brace.setFitted(false);
        } else if (object instanceof Mount mount) {
            mount.setState(MountState.FAST);
        }
    }

    private static <T extends StockItem> T item(Stock stock, T item, String kind) {
        item.setId("other " + kind);
        ((Named) item).setName("other " + kind);
        stock.getItems().add(item);
        return item;
    }

    static List<Case> cases() {
        return List.of(
                contact("pad", contact -> contact.withPad("other pad")),
                contact("hold", contact -> contact.withHold(Hold.PINNED)),
                contact("gap", contact -> contact.withGap(new Value(0.0037, 0.0002, Source.MEASURED))),
                contact("gap that is a share of itself", contact -> contact.withGap(new Value(0.0037, 0.4 * 0.0037, Source.GUESSED))),
                contact("shims", contact -> contact.withShims(new ShimStackFacts(List.of(
                        new ShimFacts(Optional.of("other shim"), Optional.of(new Value(0.0015, 0, Source.UNSTATED)), OptionalInt.of(3)),
                        new ShimFacts(Optional.empty(), Optional.of(new Value(0.0007, 0.00001, Source.MEASURED)), OptionalInt.empty()))))),
                dolly("castor type", dolly -> dolly.withCastors(each(dolly.castors(), castor -> castor.withType("other castor")))),
                dolly("brake", dolly -> dolly.withCastors(each(dolly.castors(),
                        castor -> castor.withBrake(CastorFacts.Brake.WHEEL_AND_SWIVEL)))),
                dolly("another height", dolly -> dolly.raised(0.0123)),
                dolly("section", dolly -> dolly.withMembers(each(dolly.members(), member -> member.withSection("other flat")))),
                dolly("bolt", dolly -> dolly.with(((JointFacts.Bolted) dolly.joints().get(0)).withBolt("other bolt"))),
                dolly("weld", dolly -> dolly.with(dolly.joints().stream().filter(JointFacts.Welded.class::isInstance)
                        .map(JointFacts.Welded.class::cast).findFirst().orElseThrow().withThroat(new Value(0.005, 0, Source.DRAWING)))),
                setup("shift", setup -> setup.moved(new Vec3(0.1, -0.2, 0.3))),
                new Case("slung another way", shop -> first(GearFacts.Strap.class, shop).slung(GearFacts.Mode.BASKET)));
    }

    private static <T> List<T> each(List<T> list, UnaryOperator<T> how) {
        return list.stream().map(how).toList();
    }

    private static Case contact(String name, UnaryOperator<ContactFacts> how) {
        return setup(name, setup -> setup.with(how.apply(setup.contacts().get(0))));
    }

    private static Case setup(String name, UnaryOperator<SetupFacts> how) {
        return new Case(name, shop -> first(CarFacts.class, shop).with(how.apply(first(CarFacts.class, shop).setups().get(0))));
    }

    private static Case dolly(String name, UnaryOperator<DollyFacts> how) {
        return new Case(name, shop -> how.apply(first(DollyFacts.class, shop)));
    }

    private static <T extends Fact> T first(Class<T> kind, ShopSnapshot shop) {
        return shop.facts().values().stream().filter(kind::isInstance).map(kind::cast).findFirst().orElseThrow();
    }

    private ShopSnapshot read() {
        return ShopImporter.importShop(roots, LocalDate.of(2026, 4, 1), 1);
    }

    private Optional<EObject> find(String id) {
        return roots.stream().flatMap(root -> Stream.concat(Stream.of(root), stream(root)))
                .filter(object -> object instanceof cradlewright.model.base.Identified identified && id.equals(identified.getId()))
                .findFirst();
    }

    private static Stream<EObject> stream(EObject root) {
        Stream.Builder<EObject> all = Stream.builder();
        root.eAllContents().forEachRemaining(all::add);
        return all.build();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void readsAsItWasWanted(Case one) {
        ShopSnapshot before = read();
        Fact wanted = one.change().apply(before);
        Change change = Change.of(wanted);
        assertNotEquals(before.facts().get(wanted.id()), wanted, "the case changes something");
        assertFalse(WriteBack.reached(before, change));

        WriteBack.of(before, change).orElseThrow().apply(this::find);

        ShopSnapshot after = read();
        assertTrue(WriteBack.reached(after, change), () -> Difference.between(after.facts().get(wanted.id()), wanted).toString());
        before.facts().forEach((id, fact) -> {
            if (!id.equals(wanted.id())) {
                assertEquals(fact, after.facts().get(id), "nothing else changes");
            }
        });
    }

    @Test
    void feetDownPropsAndBracesFittedMountsFreed() {
        ShopSnapshot before = read();
        DollyFacts dolly = first(DollyFacts.class, before);
        CarFacts car = first(CarFacts.class, before);
        Change change = Change.of(dolly.feetDown().with(dolly.props().get(0).inPlace()),
                car.with(car.braces().get(0).inPlace()).with(car.mounts().get(0).freed()));

        WriteBack.of(before, change).orElseThrow().apply(this::find);

        assertTrue(WriteBack.reached(read(), change));
        assertTrue(first(DollyFacts.class, read()).feet().get(0).down());
        assertEquals(Optional.of(false), first(CarFacts.class, read()).mounts().get(0).fast());
    }

    @Test
    void anotherStandTakesThePlaceOfTheOldOne() {
        Contact contact = roots.stream().flatMap(WriteBackTest::stream).filter(Contact.class::isInstance).map(Contact.class::cast)
                .findFirst().orElseThrow();
        contact.setFixture(null);
        contact.setTrestle(null);
        contact.setArm(null);
        contact.setStrap(null);
        contact.setChassisMount(null);
        ShopSnapshot before = read();
        SetupFacts setup = first(CarFacts.class, before).setups().get(0);
        Change change = Change.of(first(CarFacts.class, before).with(setup.with(setup.contacts().get(0).withCarrier("other stand"))));

        WriteBack.of(before, change).orElseThrow().apply(this::find);

        assertTrue(WriteBack.reached(read(), change));
        assertEquals("other stand", contact.getStand().getId());
    }

    @Test
    void whatHasNoPlaceIsNotWrittenInPart() {
        ShopSnapshot shop = read();
        CarFacts car = first(CarFacts.class, shop);
        DollyFacts dolly = first(DollyFacts.class, shop);
        assertEquals(Optional.empty(), WriteBack.of(shop, Change.of(car.withWorkPoints(List.of()))), "nobody leans there");
        assertEquals(Optional.empty(), WriteBack.of(shop, Change.of(SettingsFacts.commonPractice().withWalkingSpeed(0.5))),
                "half the pace");
        assertEquals(Optional.empty(), WriteBack.of(shop, Change.of(dolly.feetDown(), car.withWorkPoints(List.of()))), "one of two");
        assertEquals(Optional.empty(), WriteBack.of(shop, Change.of(dolly)), "nothing differs");
        assertEquals(Optional.empty(), WriteBack.of(shop, Change.of(
                new StockFacts.Steel("new", "new", Optional.empty(), Optional.empty()))),
                "the shop does not have it");
    }

    @Test
    void namesTheObjectThatIsGone() {
        ShopSnapshot shop = read();
        WriteBack back = WriteBack.of(shop, Change.of(first(DollyFacts.class, shop).feetDown())).orElseThrow();
        IllegalArgumentException gone = assertThrows(IllegalArgumentException.class, () -> back.apply(id -> Optional.empty()));
        assertTrue(gone.getMessage().contains(back.objectIds().iterator().next()), gone.getMessage());
    }

    @Test
    void everyPlaceIsTried() {
        ShopSnapshot shop = read();
        Set<String> tried = cases().stream().flatMap(one -> {
            Fact wanted = one.change().apply(shop);
            return Difference.between(shop.facts().get(wanted.id()), wanted).stream().map(Difference::place);
        }).collect(Collectors.toCollection(TreeSet::new));
        tried.addAll(Set.of("FootFacts.down", "PropFacts.fitted", "BraceFacts.fitted", "MountFacts.fast", "ContactFacts.carrierId"));
        assertEquals(Places.all(), tried);
    }
}
