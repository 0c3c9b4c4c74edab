package cradlewright.analysis.importer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.PieceKind;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShimFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.TemporaryLoadFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.base.Identified;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Fixture;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.Setup;
import cradlewright.model.fixture.SetupKind;
import cradlewright.model.fixture.Stand;
import cradlewright.model.stock.ShimType;
import cradlewright.model.stock.StockFactory;
import cradlewright.model.vehicle.Brace;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.CutZone;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.MountState;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.Shim;
import cradlewright.model.vehicle.ShimStack;
import cradlewright.model.vehicle.Stage;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.model.vehicle.Visit;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Direction;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.InternalEObject;
import org.junit.jupiter.api.Test;

/** Cars, their setups and shims. */
class CarImporterTest {

    private static final VehicleFactory CARS = VehicleFactory.eINSTANCE;
    private static final FixtureFactory FIXTURES = FixtureFactory.eINSTANCE;

    private final Car car = with(CARS.createCar(), "car");

    private static <T extends Identified> T with(T object, String id) {
        object.setId(id);
        return object;
    }

    private static <T extends Identified> T lost(T object, String id) {
        ((InternalEObject) object).eSetProxyURI(URI.createURI("shop:/#" + id));
        return object;
    }

    private static Measured mm(String text) {
        return Measured.parse(text, Dimension.LENGTH);
    }

    private CarFacts imported() {
        return CarImporter.car(car);
    }

    private ContactFacts onlyContact(Contact contact) {
        Setup setup = with(FIXTURES.createSetup(), "setup");
        setup.getContacts().add(with(contact, "contact"));
        car.getSetups().add(setup);
        return imported().setup("setup").orElseThrow().contacts().get(0);
    }

    @Test
    void anEmptyMountHasNothingMadeUp() {
        car.getMounts().add(with(CARS.createMount(), "m"));
        assertEquals(List.of(new MountFacts("m", "mount 1", Optional.empty(), Condition.NOT_LOOKED_AT, Optional.empty(),
                Optional.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty())),
                imported().mounts());
    }

    @Test
    void fastAndFreeMountsAndUnknownOnes() {
        for (MountState state : new MountState[] {MountState.FREE, MountState.FAST, null}) {
            Mount mount = CARS.createMount();
            mount.setState(state);
            car.getMounts().add(mount);
        }
        assertEquals(List.of(Optional.of(false), Optional.of(true), Optional.empty()),
                imported().mounts().stream().map(MountFacts::fast).toList());
    }

    @Test
    void namesFallBackOnKindAndNumberAndOrderIsKept() {
        for (String name : new String[] {"scuttle left", null, "  ", "rear"}) {
            Mount mount = CARS.createMount();
            mount.setName(name);
            car.getMounts().add(mount);
        }
        car.getLiftPoints().add(CARS.createLiftPoint());
        assertEquals(List.of("scuttle left", "mount 2", "mount 3", "rear"),
                imported().mounts().stream().map(MountFacts::name).toList());
        assertEquals("lift point 1", imported().liftPoints().get(0).name());
        assertEquals("car", imported().name());
    }

    @Test
    void objectsWithoutAnIdAreNeitherLostNorMixedUp() {
        car.getMounts().add(CARS.createMount());
        car.getMounts().add(CARS.createMount());
        List<String> ids = imported().mounts().stream().map(MountFacts::id).toList();
        assertNotEquals(ids.get(0), ids.get(1));
        assertTrue(ids.get(0).startsWith("no id: car/"), ids.get(0));
    }

    @Test
    void partsCarryMassWithTheUncertaintyOfTheirSource() {
        Piece piece = with(CARS.createPiece(), "shell");
        piece.setKind(cradlewright.model.vehicle.PieceKind.SHELL);
        Part door = with(CARS.createPart(), "door");
        door.setMass(Measured.parse("25 kg weighed", Dimension.MASS));
        Part glass = with(CARS.createPart(), "glass");
        piece.getParts().addAll(List.of(door, glass));
        car.getPieces().add(piece);
        car.getPieces().add(with(CARS.createPiece(), "unnamed"));
        CarFacts facts = imported();
        assertEquals(PieceKind.SHELL, facts.pieces().get(0).kind());
        assertEquals(PieceKind.OTHER, facts.pieces().get(1).kind());
        assertEquals(List.of(Optional.of(new Value(25, 0.25, Source.WEIGHED)), Optional.empty()),
                facts.parts().map(part -> part.mass()).toList());
    }

    @Test
    void whatAListNamesStaysInItEvenWhenTheShopDoesNotHaveIt() {
        Part on = with(CARS.createPart(), "on");
        Stage stage = with(CARS.createStage(), "stage");
        stage.getOn().addAll(List.of(lost(CARS.createPart(), "gone"), on));
        car.getStages().add(stage);
        CutZone zone = with(CARS.createCutZone(), "zone");
        zone.getBraces().add(lost(CARS.createBrace(), "brace"));
        car.getCutZones().add(zone);
        assertEquals(List.of(new StageFacts("stage", "stage 1", List.of("gone", "on"), List.of())), imported().stages());
        assertEquals(List.of("brace"), imported().cutZones().get(0).braceIds());
    }

    @Test
    void aReferenceThatLeadsNowhereIsAbsent() {
        Visit visit = with(CARS.createVisit(), "visit");
        visit.setStage(lost(CARS.createStage(), "gone"));
        visit.setSetup(with(FIXTURES.createSetup(), "setup"));
        car.getVisits().add(visit);
        assertEquals(Optional.empty(), imported().visits().get(0).stageId());
        assertEquals(Optional.of("setup"), imported().visits().get(0).setupId());
    }

    @Test
    void carrierAndPadOfAContactAreKeptByTheirIdEvenWhenTheShopDoesNotHaveThem() {
        Contact contact = FIXTURES.createContact();
        contact.setStand(lost(FIXTURES.createStand(), "stand-7"));
        contact.setPad(lost(StockFactory.eINSTANCE.createPadType(), "pad"));
        ContactFacts facts = onlyContact(contact);
        assertEquals(Optional.of("stand-7"), facts.carrierId());
        assertEquals(Optional.of("pad"), facts.padId());
    }

    @Test
    void everyCarrierOfAContactIsFound() {
        Fixture fixture = with(FIXTURES.createFixture(), "fixture");
        Stand stand = with(FIXTURES.createStand(), "stand");
        Setup setup = with(FIXTURES.createSetup(), "setup");
        for (int i = 0; i < 7; i++) {
            setup.getContacts().add(FIXTURES.createContact());
        }
        setup.getContacts().get(0).setFixture(fixture);
        setup.getContacts().get(1).setStand(stand);
        setup.getContacts().get(2).setTrestle(with(FIXTURES.createTrestle(), "trestle"));
        setup.getContacts().get(3).setArm(with(FIXTURES.createLiftArm(), "arm"));
        setup.getContacts().get(4).setStrap(with(FIXTURES.createStrap(), "strap"));
        setup.getContacts().get(5).setChassisMount(with(CARS.createMount(), "mount"));
        car.getSetups().add(setup);
        List<Optional<String>> carriers = imported().setups().get(0).contacts().stream().map(ContactFacts::carrierId).toList();
        assertEquals(List.of(Optional.of("fixture"), Optional.of("stand"), Optional.of("trestle"), Optional.of("arm"),
                Optional.of("strap"), Optional.of("mount"), Optional.empty()), carriers);
    }

    @Test
    void aContactPushesUpUnlessStatedAndItsComplianceIsOneOverStiffness() {
        Contact contact = FIXTURES.createContact();
        assertEquals(Vec3.UP, onlyContact(contact).normal());
        contact.setNormal(new Direction(0, 0, -2));
        contact.setStiffness(Measured.parse("4 kN/mm", Dimension.STIFFNESS));
        contact.setGap(mm("1.5 mm u 0.1 measured"));
        contact.setPin(0);
        ContactFacts facts = SetupImporter.setup((Setup) contact.eContainer()).contacts().get(0);
        assertEquals(new Vec3(0, 0, -1), facts.normal());
        assertEquals(2.5e-7, facts.compliance().orElseThrow().si(), 1e-19);
        assertEquals(0.0015, facts.gap().orElseThrow().si(), 1e-15);
        assertEquals(Optional.of(0), facts.pinStep());
    }

    @Test
    void setupsTurnIntoRadiansAndKnowTheirCarrier() {
        Setup setup = with(FIXTURES.createSetup(), "setup");
        setup.setHeading(Measured.parse("90 deg", Dimension.ANGLE));
        setup.setShift(Position.of(100, -200, 300));
        car.getSetups().add(setup);
        SetupFacts facts = imported().setups().get(0);
        assertEquals(Math.PI / 2, facts.heading(), 1e-15);
        assertEquals(new Vec3(0.1, -0.2, 0.3), facts.shift());
        assertEquals(List.of(CarrierKind.FLOOR, CarrierKind.DOLLY, CarrierKind.STANDS, CarrierKind.STRAPS, CarrierKind.LIFT,
                CarrierKind.CHASSIS, CarrierKind.AWAY, CarrierKind.FLOOR, CarrierKind.FLOOR),
                Stream.of(null, SetupKind.ON_DOLLY, SetupKind.ON_STANDS, SetupKind.IN_STRAPS, SetupKind.ON_LIFT,
                        SetupKind.ON_CHASSIS, SetupKind.AWAY, SetupKind.ON_FLOOR, SetupKind.OTHER).map(kind -> {
                            setup.setKind(kind);
                            return SetupImporter.setup(setup).kind();
                        }).toList());
    }

    @Test
    void shimsTakeTheirThicknessFromStockAndKeepTheirOrder() {
        ShimType type = with(StockFactory.eINSTANCE.createShimType(), "half");
        type.setThickness(mm("0.5 mm"));
        Shim stocked = CARS.createShim();
        stocked.setShim(type);
        stocked.setCount(3);
        Shim loose = CARS.createShim();
        loose.setLoose(mm("2 mm"));
        loose.setCount(1);
        ShimStack stack = CARS.createShimStack();
        stack.getShims().addAll(List.of(stocked, loose));
        ShimStackFacts facts = ShimImporter.stack(stack).orElseThrow();
        Value half = new Value(0.0005, 0, Source.UNSTATED);
        Value two = new Value(0.002, 0, Source.UNSTATED);
        assertEquals(List.of(new ShimFacts(Optional.of("half"), Optional.of(half), OptionalInt.of(3)),
                new ShimFacts(Optional.empty(), Optional.of(two), OptionalInt.of(1))), facts.shims());
        assertEquals(0.0035, facts.height().orElseThrow(), 1e-15);
        loose.setCount(null);
        ShimStackFacts uncounted = ShimImporter.stack(stack).orElseThrow();
        assertEquals(Optional.empty(), uncounted.height());
        assertEquals(4, uncounted.pieces());
        stocked.setShim(lost(StockFactory.eINSTANCE.createShimType(), "gone"));
        assertEquals(Optional.empty(), ShimImporter.stack(stack).orElseThrow().shims().get(0).thickness());
    }

    @Test
    void unknownKindsTakeTheStricterRules() {
        car.getTemporaryLoads().add(CARS.createTemporaryLoad());
        car.getWorkPoints().add(CARS.createWorkPoint());
        Brace brace = CARS.createBrace();
        brace.setTo(Position.of(0, 0, 1000));
        car.getBraces().add(brace);
        CarFacts facts = imported();
        assertEquals(TemporaryLoadFacts.Kind.PEOPLE, facts.temporaryLoads().get(0).kind());
        assertEquals(Optional.empty(), facts.workPoints().get(0).kind());
        assertFalse(facts.braces().get(0).fitted());
        assertEquals(Optional.of(new Vec3(0, 0, 1)), facts.braces().get(0).to());
        assertTrue(facts.separateChassis());
    }
}
