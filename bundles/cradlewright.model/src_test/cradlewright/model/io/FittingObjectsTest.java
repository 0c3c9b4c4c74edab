package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.DollyNode;
import cradlewright.model.fixture.Fixture;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.FixturePackage;
import cradlewright.model.fixture.Setup;
import cradlewright.model.job.Job;
import cradlewright.model.job.JobBook;
import cradlewright.model.job.JobFactory;
import cradlewright.model.job.JobPackage;
import cradlewright.model.job.Operation;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.VehicleFactory;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A reference is offered what belongs to the thing, and nothing that would close a circle. */
class FittingObjectsTest {

    private final ShopFolder shop = new ShopFolder(Path.of("nowhere"));
    private final IdSource ids = new IdSource(new Random(5));
    private final Dolly first = dolly("first");
    private final Dolly second = dolly("second");

    private Dolly dolly(String name) {
        Dolly dolly = FixtureFactory.eINSTANCE.createDolly();
        dolly.setId(ids.next());
        DollyNode node = FixtureFactory.eINSTANCE.createDollyNode();
        Fixture fixture = FixtureFactory.eINSTANCE.createFixture();
        dolly.getNodes().add(node);
        dolly.getFixtures().add(fixture);
        shop.add(FileKind.DOLLY, name, dolly);
        return dolly;
    }

    private Car car(String name) {
        Car car = VehicleFactory.eINSTANCE.createCar();
        car.setId(ids.next());
        Piece shell = VehicleFactory.eINSTANCE.createPiece();
        shell.getParts().add(VehicleFactory.eINSTANCE.createPart());
        car.getPieces().add(shell);
        Setup setup = FixtureFactory.eINSTANCE.createSetup();
        setup.getContacts().add(FixtureFactory.eINSTANCE.createContact());
        car.getSetups().add(setup);
        shop.add(FileKind.CAR, name, car);
        return car;
    }

    @Test
    void cornersAreThoseOfTheSameDolly() {
        assertEquals(first.getNodes(), FittingObjects.of(shop, first.getFixtures().get(0), FixturePackage.Literals.FIXTURE__NODE));
    }

    @Test
    void aSupportStandsOnTheDollyOfItsSetup() {
        Setup setup = car("red").getSetups().get(0);
        Contact contact = setup.getContacts().get(0);
        assertEquals(List.of(first.getFixtures().get(0), second.getFixtures().get(0)),
                FittingObjects.of(shop, contact, FixturePackage.Literals.CONTACT__FIXTURE), "no dolly is named yet");
        setup.setDolly(second);
        assertEquals(second.getFixtures(), FittingObjects.of(shop, contact, FixturePackage.Literals.CONTACT__FIXTURE));
    }

    @Test
    void aStepIsAboutTheCarOfItsJob() {
        Car red = car("red");
        Part other = car("white").getPieces().get(0).getParts().get(0);
        Job job = JobFactory.eINSTANCE.createJob();
        Operation step = JobFactory.eINSTANCE.createOperation();
        job.getOperations().add(step);
        JobBook book = JobFactory.eINSTANCE.createJobBook();
        book.getJobs().add(job);
        shop.add(FileKind.JOBS, "", book);
        assertTrue(FittingObjects.of(shop, step, JobPackage.Literals.OPERATION__TAKES_OFF).contains(other), "no car is named yet");
        job.setCar(red);
        assertEquals(red.getPieces().get(0).getParts(), FittingObjects.of(shop, step, JobPackage.Literals.OPERATION__TAKES_OFF));
    }

    @Test
    void noStepComesAfterItselfByAnyWay() {
        Job job = JobFactory.eINSTANCE.createJob();
        for (int i = 0; i < 4; i++) {
            job.getOperations().add(JobFactory.eINSTANCE.createOperation());
        }
        JobBook book = JobFactory.eINSTANCE.createJobBook();
        book.getJobs().add(job);
        shop.add(FileKind.JOBS, "", book);
        List<Operation> steps = job.getOperations();
        steps.get(1).getAfter().add(steps.get(0));
        steps.get(2).getAfter().add(steps.get(1));
        assertEquals(List.of(steps.get(3)), FittingObjects.of(shop, steps.get(0), JobPackage.Literals.OPERATION__AFTER));
        assertFalse(FittingObjects.of(shop, steps.get(2), JobPackage.Literals.OPERATION__AFTER).contains(steps.get(2)));
    }
}
