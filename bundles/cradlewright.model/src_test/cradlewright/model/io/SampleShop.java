package cradlewright.model.io;

import cradlewright.model.base.BaseFactory;
import cradlewright.model.base.Condition;
import cradlewright.model.base.Hold;
import cradlewright.model.base.Shop;
import cradlewright.model.base.Units;
import cradlewright.model.fixture.Castor;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.DollyBuild;
import cradlewright.model.fixture.DollyNode;
import cradlewright.model.fixture.Fixture;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.GearStore;
import cradlewright.model.fixture.Member;
import cradlewright.model.fixture.MemberRole;
import cradlewright.model.fixture.Setup;
import cradlewright.model.fixture.SetupKind;
import cradlewright.model.fixture.Strap;
import cradlewright.model.floor.Floor;
import cradlewright.model.floor.FloorFactory;
import cradlewright.model.floor.Place;
import cradlewright.model.floor.Placement;
import cradlewright.model.floor.Slab;
import cradlewright.model.job.Job;
import cradlewright.model.job.JobBook;
import cradlewright.model.job.JobFactory;
import cradlewright.model.job.Operation;
import cradlewright.model.job.Person;
import cradlewright.model.stock.CastorType;
import cradlewright.model.stock.HollowSection;
import cradlewright.model.stock.PadType;
import cradlewright.model.stock.ShimType;
import cradlewright.model.stock.Steel;
import cradlewright.model.stock.Stock;
import cradlewright.model.stock.StockFactory;
import cradlewright.model.vehicle.ApertureReading;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.PieceKind;
import cradlewright.model.vehicle.Shim;
import cradlewright.model.vehicle.ShimStack;
import cradlewright.model.vehicle.Stage;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.model.vehicle.Visit;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Direction;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Random;

/** A small invented shop with one file of each kind and references between all of them. */
final class SampleShop {

    private final IdSource ids = new IdSource(new Random(20260331));
    private final ShopFolder folder;

    private Steel steel;
    private HollowSection section;
    private CastorType castorType;
    private PadType pad;
    private ShimType shimType;
    private Dolly dolly;
    private Fixture fixture;
    private Part bonnet;
    private Visit visit;
    private Setup setup;
    private Car car;

    private SampleShop(Path directory) {
        folder = new ShopFolder(directory);
    }

    /** Returns the shop in memory; nothing is on disk. */
    static ShopFolder build(Path directory) {
        SampleShop sample = new SampleShop(directory);
        sample.addShop();
        sample.addStock();
        sample.addDolly();
        sample.addCar();
        sample.addGear();
        sample.addFloor();
        sample.addJobs();
        return sample.folder;
    }

    private static Measured q(String text, Dimension dimension) {
        return Measured.parse(text, dimension);
    }

    private void addShop() {
        Shop shop = ids.give(BaseFactory.eINSTANCE.createShop());
        shop.setName("Shed behind the mill");
        shop.setNote("Two bays & a booth <cold in winter>\n\"ask first\"\tor 'wait'");
        shop.setZone("Etc/UTC");
        shop.setUnits(Units.METRIC);
        shop.setSettings(BaseFactory.eINSTANCE.createSettings());
        shop.getSettings().setPersonMass(q("120 kg", Dimension.MASS));
        shop.getSettings().setWalkingSpeed(q("1.1 m/s", Dimension.SPEED));
        folder.add(FileKind.SHOP, "", shop);
    }

    private void addStock() {
        Stock stock = StockFactory.eINSTANCE.createStock();
        steel = ids.give(StockFactory.eINSTANCE.createSteel());
        steel.setName("S235");
        steel.setFy(q("235 MPa", Dimension.STRESS));
        section = ids.give(StockFactory.eINSTANCE.createHollowSection());
        section.setName("Tube 60 x 40 x 3");
        section.setHeight(q("60 mm", Dimension.LENGTH));
        section.setWidth(q("40 mm", Dimension.LENGTH));
        section.setThickness(q("3 mm u 0.1", Dimension.LENGTH));
        castorType = ids.give(StockFactory.eINSTANCE.createCastorType());
        castorType.setName("Castor 160");
        castorType.setRatedLoad(q("300 kg maker's sheet", Dimension.MASS));
        pad = ids.give(StockFactory.eINSTANCE.createPadType());
        pad.setName("Cork 10");
        shimType = ids.give(StockFactory.eINSTANCE.createShimType());
        shimType.setName("Shim 1.5");
        shimType.setThickness(q("1.5 mm", Dimension.LENGTH));
        shimType.setOnHand(14);
        stock.getItems().addAll(List.of(steel, section, castorType, pad, shimType));
        folder.add(FileKind.STOCK, "", stock);
    }

    private void addDolly() {
        dolly = ids.give(FixtureFactory.eINSTANCE.createDolly());
        dolly.setName("Dolly 1");
        dolly.setBuild(DollyBuild.OWN);
        dolly.setTag("D-01");
        DollyNode front = node("1L", "0 -400 200 mm");
        DollyNode rear = node("2L", "1800 -400 200 mm");
        Member rail = ids.give(FixtureFactory.eINSTANCE.createMember());
        rail.setName("left rail");
        rail.setFrom(front);
        rail.setTo(rear);
        rail.setSection(section);
        rail.setSteel(steel);
        rail.setRole(MemberRole.RAIL);
        rail.setUp(Direction.parse("0 0 1"));
        dolly.getMembers().add(rail);
        Castor castor = ids.give(FixtureFactory.eINSTANCE.createCastor());
        castor.setName("1L");
        castor.setNode(front);
        castor.setType(castorType);
        castor.setSwivel(true);
        dolly.getCastors().add(castor);
        fixture = ids.give(FixtureFactory.eINSTANCE.createFixture());
        fixture.setName("1L");
        fixture.setMember(rail);
        fixture.setDistance(q("250 mm", Dimension.LENGTH));
        fixture.setPad(pad);
        fixture.setHold(Hold.RESTS);
        dolly.getFixtures().add(fixture);
        folder.add(FileKind.DOLLY, "dolly 1", dolly);
    }

    private DollyNode node(String name, String position) {
        DollyNode node = ids.give(FixtureFactory.eINSTANCE.createDollyNode());
        node.setName(name);
        node.setPosition(Position.parse(position));
        dolly.getNodes().add(node);
        return node;
    }

    private void addCar() {
        car = ids.give(VehicleFactory.eINSTANCE.createCar());
        car.setName("Green saloon");
        Piece shell = ids.give(VehicleFactory.eINSTANCE.createPiece());
        shell.setName("shell");
        shell.setKind(PieceKind.SHELL);
        shell.setTorsionalStiffness(q("200 N*m/deg guessed", Dimension.TORSIONAL_STIFFNESS));
        shell.getOutline().addAll(List.of(Position.parse("0 -600 0 mm"), Position.parse("3200 -600 0 mm"),
                Position.parse("0 -600 0 mm")));
        bonnet = part(shell, "bonnet", "17.5 kg weighed", "150 0 820 mm u 10 measured");
        Part boot = part(shell, "boot lid", "12 kg u 2 guessed", "3000 0 850 mm");
        car.getPieces().add(shell);
        Mount mount = ids.give(VehicleFactory.eINSTANCE.createMount());
        mount.setName("1L");
        mount.setPosition(Position.parse("100 -450 300 mm"));
        mount.setCondition(Condition.NOT_LOOKED_AT);
        mount.setAsFound(stack(2));
        mount.setOnDolly(stack(1));
        car.getMounts().add(mount);
        ApertureReading reading = ids.give(VehicleFactory.eINSTANCE.createApertureReading());
        reading.setAperture("left door");
        reading.setAt(LocalDateTime.of(2026, 3, 31, 14, 5));
        reading.getGaps().addAll(List.of(q("4 mm", Dimension.LENGTH), q("4 mm", Dimension.LENGTH),
                q("5.5 mm", Dimension.LENGTH)));
        car.getApertureReadings().add(reading);
        Stage stage = ids.give(VehicleFactory.eINSTANCE.createStage());
        stage.setName("as it came");
        stage.getOn().addAll(List.of(boot, bonnet));
        car.getStages().add(stage);
        addSetup(shell, mount);
        visit = ids.give(VehicleFactory.eINSTANCE.createVisit());
        visit.setName("spring");
        visit.setStage(stage);
        visit.setSetup(setup);
        visit.setFrom(LocalDate.of(2026, 3, 30));
        visit.setCurrent(Boolean.TRUE);
        car.getVisits().add(visit);
        folder.add(FileKind.CAR, "green saloon", car);
    }

    private void addSetup(Piece shell, Mount mount) {
        setup = ids.give(FixtureFactory.eINSTANCE.createSetup());
        setup.setName("on dolly 1");
        setup.setKind(SetupKind.ON_DOLLY);
        setup.getCarried().add(shell);
        setup.setDolly(dolly);
        setup.setShift(Position.parse("0 0 150 mm"));
        Contact contact = ids.give(FixtureFactory.eINSTANCE.createContact());
        contact.setName("1L");
        contact.setMount(mount);
        contact.setFixture(fixture);
        contact.setShims(stack(3));
        setup.getContacts().add(contact);
        car.getSetups().add(setup);
    }

    private Part part(Piece piece, String name, String mass, String position) {
        Part part = ids.give(VehicleFactory.eINSTANCE.createPart());
        part.setName(name);
        part.setMass(q(mass, Dimension.MASS));
        part.setPosition(Position.parse(position));
        piece.getParts().add(part);
        return part;
    }

    private ShimStack stack(int count) {
        ShimStack stack = VehicleFactory.eINSTANCE.createShimStack();
        Shim stocked = VehicleFactory.eINSTANCE.createShim();
        stocked.setShim(shimType);
        stocked.setCount(count);
        Shim loose = VehicleFactory.eINSTANCE.createShim();
        loose.setLoose(q("0.8 mm", Dimension.LENGTH));
        loose.setCount(1);
        stack.getShims().addAll(List.of(stocked, loose));
        return stack;
    }

    private void addGear() {
        GearStore gear = FixtureFactory.eINSTANCE.createGearStore();
        Strap strap = ids.give(FixtureFactory.eINSTANCE.createStrap());
        strap.setName("Strap 2 m");
        strap.setTag("S-07");
        strap.setWorkingLoadLimit(q("1000 kg", Dimension.MASS));
        gear.getItems().add(strap);
        folder.add(FileKind.GEAR, "", gear);
    }

    private void addFloor() {
        Floor floor = ids.give(FloorFactory.eINSTANCE.createFloor());
        floor.setName("Hall");
        Slab slab = ids.give(FloorFactory.eINSTANCE.createSlab());
        slab.setName("old slab");
        slab.setThickness(q("120 mm guessed", Dimension.LENGTH));
        floor.getSlabs().add(slab);
        Place place = ids.give(FloorFactory.eINSTANCE.createPlace());
        place.setName("Bay 1");
        place.setSlab(slab);
        floor.getPlaces().add(place);
        Placement placement = ids.give(FloorFactory.eINSTANCE.createPlacement());
        placement.setName("green shell");
        placement.setVisit(visit);
        placement.setPlace(place);
        floor.getPlacements().add(placement);
        folder.add(FileKind.FLOOR, "", floor);
    }

    private void addJobs() {
        JobBook book = JobFactory.eINSTANCE.createJobBook();
        Job job = ids.give(JobFactory.eINSTANCE.createJob());
        job.setName("green saloon");
        job.setCar(car);
        Operation off = operation("bonnet off");
        off.getTakesOff().add(bonnet);
        off.setDone(true);
        Operation weld = operation("weld sill");
        weld.setSetup(setup);
        weld.getAfter().add(off);
        weld.setLikely(q("6 h", Dimension.TIME));
        job.getOperations().addAll(List.of(off, weld));
        book.getJobs().add(job);
        Person person = ids.give(JobFactory.eINSTANCE.createPerson());
        person.setName("R.");
        person.getSkills().addAll(List.of("welding", "trim"));
        book.getPeople().add(person);
        folder.add(FileKind.JOBS, "", book);
    }

    private Operation operation(String name) {
        Operation operation = ids.give(JobFactory.eINSTANCE.createOperation());
        operation.setName(name);
        return operation;
    }
}
