package cradlewright.analysis.importer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.JobFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.SlabFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.model.base.BaseFactory;
import cradlewright.model.base.Identified;
import cradlewright.model.base.Shop;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.floor.FloorFactory;
import cradlewright.model.floor.Place;
import cradlewright.model.floor.PlaceKind;
import cradlewright.model.floor.Slab;
import cradlewright.model.job.Job;
import cradlewright.model.job.JobBook;
import cradlewright.model.job.JobFactory;
import cradlewright.model.job.Operation;
import cradlewright.model.job.OperationKind;
import cradlewright.model.stock.BoltType;
import cradlewright.model.stock.FoldedSection;
import cradlewright.model.stock.ShimType;
import cradlewright.model.stock.Steel;
import cradlewright.model.stock.Stock;
import cradlewright.model.stock.StockFactory;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.model.vehicle.Visit;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;

/** Stock, floor, jobs and the shop as a whole. */
class StockFloorJobTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 1);
    private static final StockFactory STOCK = StockFactory.eINSTANCE;

    private static <T extends Identified> T with(T object, String id) {
        object.setId(id);
        return object;
    }

    private static Optional<Value> meshArea(String fabric) {
        Slab slab = with(FloorFactory.eINSTANCE.createSlab(), "slab");
        slab.setFabric(fabric);
        return FloorImporter.slab(slab).meshArea();
    }

    @Test
    void eachKindOfStockBecomesItsRecordInOrder() {
        Stock stock = STOCK.createStock();
        stock.getItems().addAll(List.of(with(STOCK.createSheet(), "0"), with(STOCK.createSteel(), "1"),
                with(STOCK.createTimber(), "2"), with(STOCK.createFoldedSection(), "3"), with(STOCK.createHollowSection(), "4"),
                with(STOCK.createRoundTube(), "5"), with(STOCK.createFlatBar(), "6"), with(STOCK.createTeeSection(), "7"),
                with(STOCK.createTimberRail(), "8"), with(STOCK.createBoltType(), "9"), with(STOCK.createCastorType(), "10"),
                with(STOCK.createPadType(), "11"), with(STOCK.createShimType(), "12")));
        List<Class<?>> types = List.of(StockFacts.Steel.class, StockFacts.Timber.class, StockFacts.Folded.class,
                StockFacts.Hollow.class, StockFacts.Tube.class, StockFacts.Flat.class, StockFacts.Tee.class,
                StockFacts.TimberRail.class, StockFacts.Bolt.class, StockFacts.CastorType.class, StockFacts.Pad.class,
                StockFacts.Shim.class);
        List<Fact> facts = ShopImporter.importRoot(stock);
        assertEquals(types, facts.stream().map(Object::getClass).toList());
        assertEquals(List.of("1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12"),
                facts.stream().map(Fact::id).toList());
        assertEquals("flat bar 1", facts.get(5).name());
    }

    @Test
    void steelBoltsAndFoldedSections() {
        Steel steel = with(STOCK.createSteel(), "s");
        steel.setName("plate");
        steel.setFy(Measured.parse("235 MPa", Dimension.STRESS));
        assertEquals(Optional.of(new StockFacts.Steel("s", "plate", Optional.of(new Value(235e6, 0, Source.UNSTATED)),
                Optional.empty())), StockImporter.item(steel));
        BoltType bolt = with(STOCK.createBoltType(), "b");
        assertEquals(true, ((StockFacts.Bolt) StockImporter.item(bolt).orElseThrow()).threadsInShear());
        bolt.setThreadsInShear(false);
        assertEquals(false, ((StockFacts.Bolt) StockImporter.item(bolt).orElseThrow()).threadsInShear());
        FoldedSection folded = with(STOCK.createFoldedSection(), "f");
        folded.getPoints().addAll(List.of(Position.of(0, 30, 50), Position.of(0, 0, 50)));
        StockFacts.Folded facts = (StockFacts.Folded) StockImporter.item(folded).orElseThrow();
        assertEquals(List.of(new StockFacts.SheetCorner(0.03, 0.05), new StockFacts.SheetCorner(0, 0.05)), facts.points());
        assertEquals(facts, StockImporter.item(folded).orElseThrow());
    }

    /** A193 has 193 mm2 per m each way (BS 4483; from memory), Q188 has 188 mm2 per m (DIN 488-4; from memory). */
    @Test
    void onlyNamesOfSquareFabricTellTheSteelAreaEachWay() {
        assertEquals(193e-6, meshArea("A193").orElseThrow().si(), 1e-18);
        assertEquals(193e-6, meshArea(" a 193 ").orElseThrow().si(), 1e-18);
        assertEquals(188e-6, meshArea("Q188").orElseThrow().si(), 1e-18);
        for (String text : new String[] {null, "", "B785", "C283", "R188", "A", "193", "A0193", "A193 in the bay only", "mesh"}) {
            assertEquals(Optional.empty(), meshArea(text), text);
        }
    }

    @Test
    void slabsAndPlaces() {
        Slab slab = with(FloorFactory.eINSTANCE.createSlab(), "slab");
        slab.setFck(Measured.parse("25 MPa", Dimension.STRESS));
        slab.setThickness(Measured.parse("150 mm", Dimension.LENGTH));
        assertEquals(new SlabFacts("slab", "slab", Optional.of(new Value(0.15, 0, Source.UNSTATED)),
                Optional.of(new Value(25e6, 0, Source.UNSTATED)), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty()), FloorImporter.slab(slab));
        Place place = with(FloorFactory.eINSTANCE.createPlace(), "place");
        place.setSlab(slab);
        place.setTemperature(Measured.parse("80 degC", Dimension.TEMPERATURE));
        place.setFall(Measured.parse("1.5 %", Dimension.RATIO));
        assertEquals(new PlaceFacts("place", "place", PlaceFacts.Kind.BAY, Optional.of("slab"), false,
                Optional.of(new Value(0.015, 0, Source.UNSTATED)), Optional.of(new Value(80, 0, Source.UNSTATED)),
                Optional.empty()), FloorImporter.place(place));
        place.setKind(PlaceKind.YARD);
        assertEquals(true, FloorImporter.place(place).outdoors());
        place.setOutdoors(false);
        assertEquals(false, FloorImporter.place(place).outdoors());
    }

    @Test
    void jobsKeepTheirStepsInOrder() {
        Part wing = with(VehicleFactory.eINSTANCE.createPart(), "wing");
        Part door = with(VehicleFactory.eINSTANCE.createPart(), "door");
        Operation strip = with(JobFactory.eINSTANCE.createOperation(), "o1");
        strip.getTakesOff().addAll(List.of(wing, door));
        strip.setDone(true);
        Operation fit = with(JobFactory.eINSTANCE.createOperation(), "o2");
        fit.getPutsOn().add(door);
        fit.setKind(OperationKind.ROLL);
        fit.setStarted(TODAY);
        fit.getAfter().add(strip);
        fit.setSetup(with(FixtureFactory.eINSTANCE.createSetup(), "setup"));
        Job job = with(JobFactory.eINSTANCE.createJob(), "job");
        job.setDue(TODAY);
        job.setCar(with(VehicleFactory.eINSTANCE.createCar(), "car"));
        job.getOperations().addAll(List.of(strip, fit));
        JobBook book = JobFactory.eINSTANCE.createJobBook();
        book.getJobs().add(job);
        assertEquals(List.of(new JobFacts("job", "job 1", Optional.of("car"), Optional.of(TODAY), List.of(
                new OperationFacts("o1", "operation 1", Optional.empty(), List.of("wing", "door"), List.of(), Optional.empty(),
                        Optional.empty(), true, List.of()),
                new OperationFacts("o2", "operation 2", Optional.of(OperationFacts.Kind.ROLL), List.of(), List.of("door"),
                        Optional.of("setup"), Optional.of(TODAY), false, List.of("o1"))))),
                ShopImporter.importRoot(book));
    }

    @Test
    void theSnapshotHoldsTheShopAndTheFirstOfTwoRecordsWithOneId() {
        Shop shop = with(BaseFactory.eINSTANCE.createShop(), "shop");
        shop.setName("Lower yard");
        Car first = with(VehicleFactory.eINSTANCE.createCar(), "car");
        first.setName("first");
        Car second = with(VehicleFactory.eINSTANCE.createCar(), "car");
        second.setName("second");
        ShopSnapshot snapshot = ShopImporter.importShop(List.of(first, shop, second), TODAY, 7);
        assertEquals("Lower yard", snapshot.name());
        assertEquals(7, snapshot.number());
        assertEquals(TODAY, snapshot.today());
        assertEquals(SettingsFacts.commonPractice(), snapshot.settings());
        assertEquals(List.of("first"), snapshot.all(Fact.class).stream().map(Fact::name).toList());
        assertEquals("shop", ShopImporter.importShop(List.of(), TODAY, 1).name());
    }

    @Test
    void whatStandsThereNowIsNotTakenForAnotherDay() {
        Car car = with(VehicleFactory.eINSTANCE.createCar(), "car");
        Visit visit = with(VehicleFactory.eINSTANCE.createVisit(), "visit");
        visit.setFrom(TODAY.minusDays(5));
        visit.setTo(TODAY.minusDays(1));
        visit.setCurrent(true);
        car.getVisits().add(visit);
        assertTrue(only(car, TODAY, TODAY).on(TODAY));
        assertFalse(only(car, TODAY.plusDays(1), TODAY).on(TODAY.plusDays(1)));
        assertTrue(only(car, TODAY.plusDays(1), TODAY.plusDays(1)).on(TODAY.plusDays(1)), "asked tomorrow it is still said to stand there");
    }

    private static VisitFacts only(Car car, LocalDate asked, LocalDate clock) {
        return ShopImporter.importShop(List.of(car), asked, clock, 1).find(CarFacts.class, "car").orElseThrow().visits().get(0);
    }

    @Test
    void onlyRootsOfAShopAreTaken() {
        Part part = VehicleFactory.eINSTANCE.createPart();
        assertThrows(IllegalArgumentException.class, () -> ShopImporter.importRoot(part));
    }

    @Test
    void anEditInTheStockAlsoReadsTheCarsAgain() {
        ShimType shim = STOCK.createShimType();
        Stock stock = STOCK.createStock();
        stock.getItems().add(shim);
        Car car = VehicleFactory.eINSTANCE.createCar();
        EObject dolly = FixtureFactory.eINSTANCE.createDolly();
        List<EObject> roots = List.of(stock, car, dolly);
        assertEquals(List.of(stock, car), ShopImporter.toReadAgain(stock, roots));
        assertEquals(List.of(dolly), ShopImporter.toReadAgain(dolly, roots));
        assertEquals(List.of(car), ShopImporter.toReadAgain(car, roots));
    }
}
