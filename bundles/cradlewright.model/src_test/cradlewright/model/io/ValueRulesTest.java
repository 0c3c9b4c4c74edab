package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.base.BasePackage;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.FixturePackage;
import cradlewright.model.fixture.LiftArm;
import cradlewright.model.fixture.Member;
import cradlewright.model.job.JobFactory;
import cradlewright.model.job.Operation;
import cradlewright.model.stock.CastorType;
import cradlewright.model.stock.HollowSection;
import cradlewright.model.vehicle.CutZone;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.Shim;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.model.vehicle.VehiclePackage;
import cradlewright.model.vehicle.Visit;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Values that cannot be true are named with file, line, object and what to do; all others pass. */
class ValueRulesTest {

    @TempDir
    Path directory;

    private ShopFolder shop;

    @BeforeEach
    void begin() throws IOException {
        shop = SampleShop.build(directory);
        RoundTripTest.saveAll(shop);
    }

    private static Measured mm(double value) {
        return Measured.parse(value + " mm", Dimension.LENGTH);
    }

    private void assertOnly(String fragment, Severity severity) {
        List<ReadProblem> problems = ValueRules.check(shop);
        assertEquals(1, problems.size(), problems::toString);
        assertTrue(problems.get(0).text().contains(fragment), problems.get(0)::text);
        assertEquals(severity, problems.get(0).severity());
        assertTrue(problems.get(0).line() > 0, problems.get(0)::text);
    }

    @Test
    void theSampleHasNothingToComplainOf() {
        assertEquals(List.of(), ValueRules.check(shop));
    }

    @Test
    void theWholeMessage() {
        Mount mount = shop.cars().get(0).getMounts().get(0);
        mount.setSheetThickness(mm(-0.8));
        ReadProblem problem = ValueRules.check(shop).get(0);
        assertEquals("cars/green saloon.cwcar:" + problem.line() + ": mount \"1L\" (id " + mount.getId() + "): sheet thickness "
                + "is -0.8 mm, more than 0 is wanted; look it up again, or delete the value: missing means not known",
                problem.text());
    }

    @Test
    void zeroIsTooLittleWhereSomethingMustBeThere() {
        shop.cars().get(0).getMounts().get(0).setSheetThickness(mm(0));
        assertOnly("more than 0 is wanted", Severity.ERROR);
    }

    @Test
    void zeroIsEnoughWhereNothingMayBeThere() {
        shop.cars().get(0).getSetups().get(0).getContacts().get(0).setGap(mm(0));
        assertEquals(List.of(), ValueRules.check(shop));
        shop.cars().get(0).getSetups().get(0).getContacts().get(0).setGap(mm(-0.1));
        assertOnly("0 or more is wanted", Severity.ERROR);
    }

    @Test
    void wheelOfNoSize() {
        CastorType castor = (CastorType) shop.stock().orElseThrow().getItems().get(2);
        castor.setWheelDiameter(mm(0));
        assertOnly("wheel diameter is 0 mm, more than 0 is wanted", Severity.ERROR);
    }

    @Test
    void sizesBeyondAnyShop() {
        Mount mount = shop.cars().get(0).getMounts().get(0);
        mount.setSheetThickness(mm(1_000_000));
        assertEquals(List.of(), ValueRules.check(shop));
        mount.setSheetThickness(mm(1_000_001));
        assertOnly("beyond anything in a shop", Severity.ERROR);
        mount.setSheetThickness(Measured.parse("1 mm u 1e7", Dimension.LENGTH));
        assertOnly("beyond anything in a shop", Severity.ERROR);
        mount.setSheetThickness(null);
        mount.setPosition(Position.of(0, -2_000_000, 0));
        assertOnly("position is 0 -2000000 0 mm, beyond", Severity.ERROR);
    }

    @Test
    void namesThatAreMissing() {
        shop.cars().get(0).getMounts().get(0).setName(" ");
        assertOnly("the name is missing", Severity.WARNING);
    }

    @Test
    void rangesTheWrongWayRound() {
        Operation operation = shop.jobs().orElseThrow().getJobs().get(0).getOperations().get(1);
        operation.setBest(Measured.parse("7 h", Dimension.TIME));
        assertOnly("7 h to 6 h is a range whose end lies before its beginning", Severity.ERROR);
        operation.setBest(null);
        Visit visit = shop.cars().get(0).getVisits().get(0);
        visit.setTo(LocalDate.of(2026, 3, 29));
        assertOnly("2026-03-30 to 2026-03-29 ends before it begins", Severity.ERROR);
    }

    @Test
    void cornersTheWrongWayRound() {
        CutZone zone = new IdSource(new Random(1)).give(VehicleFactory.eINSTANCE.createCutZone());
        zone.setName("sill");
        zone.setLow(Position.of(0, 0, 0));
        zone.setHigh(Position.of(10, -1, 10));
        shop.cars().get(0).getCutZones().add(zone);
        assertOnly("has a smaller number than the low corner", Severity.ERROR);
    }

    @Test
    void reachOfAnArmTheWrongWayRound() {
        var lift = new IdSource(new Random(1)).give(FixtureFactory.eINSTANCE.createLift());
        lift.setName("lift");
        LiftArm arm = new IdSource(new Random(2)).give(FixtureFactory.eINSTANCE.createLiftArm());
        arm.setName("1L");
        arm.setReachMin(mm(900));
        arm.setReachMax(mm(600));
        lift.getArms().add(arm);
        shop.gear().orElseThrow().getItems().add(lift);
        assertOnly("900 mm to 600 mm is a range", Severity.ERROR);
    }

    @Test
    void tubeWithoutHollow() {
        ((HollowSection) shop.stock().orElseThrow().getItems().get(1)).setThickness(mm(20));
        assertOnly("two walls of 20 mm leave no hollow in 40 mm", Severity.ERROR);
    }

    @Test
    void exactlyOneOfSeveral() {
        Contact contact = shop.cars().get(0).getSetups().get(0).getContacts().get(0);
        contact.setPoint(Position.of(0, 0, 0));
        assertOnly("2 are named where there can be only one", Severity.ERROR);
        contact.setPoint(null);
        contact.setMount(null);
        assertOnly("nothing is named where there must be one: a mount, a lift point or a point of the car", Severity.WARNING);
        contact.setPoint(Position.of(0, 0, 0));
        Shim shim = contact.getShims().getShims().get(0);
        shim.setLoose(mm(1));
        assertOnly("a shim or a loose thickness", Severity.ERROR);
    }

    @Test
    void memberWithOneEndOnly() {
        Member member = shop.dollies().get(0).getMembers().get(0);
        member.setTo(member.getFrom());
        assertOnly("begins and ends at the same node", Severity.ERROR);
    }

    @Test
    void timeZoneThatNobodyKnows() {
        shop.shop().orElseThrow().setZone("Shed/Time");
        assertOnly("the time zone \"Shed/Time\" is not known", Severity.ERROR);
    }

    @Test
    void objectsNotYetSavedAreNamedAtTheLineOfWhatIsAroundThem() {
        Operation operation = new IdSource(new Random(1)).give(JobFactory.eINSTANCE.createOperation());
        operation.setName("paint");
        operation.setBest(Measured.parse("-1 h", Dimension.TIME));
        shop.jobs().orElseThrow().getJobs().get(0).getOperations().add(operation);
        assertOnly("operation \"paint\"", Severity.ERROR);
    }

    private List<String> foreseen(EObject object, EStructuralFeature feature, Object value) {
        return ValueRules.foresee(shop.fileOf(object).orElseThrow(), object, feature, value).stream().map(ReadProblem::what).toList();
    }

    @Test
    void aValueIsJudgedBeforeItIsStored() {
        Mount mount = shop.cars().get(0).getMounts().get(0);
        Measured before = mount.getSheetThickness();
        EStructuralFeature thickness = VehiclePackage.Literals.MOUNT__SHEET_THICKNESS;
        assertEquals(List.of("sheet thickness is -0.8 mm, more than 0 is wanted"), foreseen(mount, thickness, mm(-0.8)));
        assertEquals(List.of(), foreseen(mount, thickness, mm(0.8)));
        assertEquals(List.of(), foreseen(mount, thickness, null));
        assertEquals(before, mount.getSheetThickness());
    }

    @Test
    void valuesAreJudgedTogetherBeforeTheyAreStored() {
        Visit visit = VehicleFactory.eINSTANCE.createVisit();
        visit.setFrom(LocalDate.of(2026, 3, 31));
        shop.cars().get(0).getVisits().add(visit);
        assertEquals(List.of("2026-03-31 to 2026-03-30 ends before it begins"),
                foreseen(visit, VehiclePackage.Literals.VISIT__TO, LocalDate.of(2026, 3, 30)));
        assertEquals(List.of(), foreseen(visit, VehiclePackage.Literals.VISIT__TO, LocalDate.of(2026, 3, 31)));
    }

    @Test
    void whatIsWrongAlreadyIsNotHeldAgainstAnotherValue() {
        Mount mount = shop.cars().get(0).getMounts().get(0);
        mount.setSheetThickness(mm(-1));
        assertEquals(List.of(), foreseen(mount, BasePackage.Literals.NAMED__NOTE, "rust"));
        assertEquals(1, foreseen(mount, VehiclePackage.Literals.MOUNT__BOLT_COUNT, -2).size());
    }

    @Test
    void aSecondThingBelowASupportIsForeseen() {
        Contact contact = shop.cars().get(0).getSetups().get(0).getContacts().get(0);
        List<String> what = foreseen(contact, FixturePackage.Literals.CONTACT__STAND, FixtureFactory.eINSTANCE.createStand());
        assertTrue(what.get(0).startsWith("2 are named where there can be only one"), what::toString);
    }
}
