package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.job.Booking;
import cradlewright.model.job.HoldPoint;
import cradlewright.model.job.Job;
import cradlewright.model.job.JobBook;
import cradlewright.model.job.JobFactory;
import cradlewright.model.job.Operation;
import cradlewright.model.job.Wait;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Work that belongs to no car is named, because no answer of a car would ever speak of it. */
class WorkRulesTest {

    @TempDir
    Path directory;

    private final IdSource ids = IdSource.secure();
    private ShopFolder shop;
    private JobBook book;
    private Job job;
    private Operation operation;

    @BeforeEach
    void begin() throws IOException {
        shop = SampleShop.build(directory);
        book = shop.jobs().orElseThrow();
        book.getHoldPoints().clear();
        book.getWaits().clear();
        book.getBookings().clear();
        job = book.getJobs().get(0);
        operation = job.getOperations().get(0);
    }

    private HoldPoint point() {
        HoldPoint point = ids.give(JobFactory.eINSTANCE.createHoldPoint());
        point.setName("before the cut");
        book.getHoldPoints().add(point);
        return point;
    }

    private List<String> texts() throws IOException {
        RoundTripTest.saveAll(shop);
        List<ReadProblem> problems = ValueRules.check(shop);
        assertTrue(problems.stream().allMatch(problem -> problem.severity() == Severity.WARNING && problem.line() > 0), problems::toString);
        return problems.stream().map(problem -> problem.objectName() + ": " + problem.what() + "; " + problem.mend()).toList();
    }

    @Test
    void nothingIsSaidOfWorkOnACar() throws IOException {
        point().setOperation(operation);
        assertEquals(List.of(), texts());
    }

    @Test
    void aJobWithoutACarIsNamedWithAllThatHangsOnIt() throws IOException {
        job.setCar(null);
        point().setOperation(operation);
        Wait wait = ids.give(JobFactory.eINSTANCE.createWait());
        wait.setName("paint");
        wait.setOperation(operation);
        book.getWaits().add(wait);
        Booking booking = ids.give(JobFactory.eINSTANCE.createBooking());
        booking.setName("Monday");
        booking.setOperation(operation);
        book.getBookings().add(booking);
        String end = ": the " + Words.name(operation) + " is of the " + Words.name(job)
                + ", which names no car, so no answer ever speaks of it; refer to the car in that job (id " + job.getId() + ")";
        assertEquals(List.of(Words.name(job) + ": no car is named, so no answer ever speaks of it; refer to the car that is worked on",
                "hold point \"before the cut\"" + end, "wait \"paint\"" + end, "booking \"Monday\"" + end), texts());
    }

    @Test
    void aHoldPointBeforeNothingIsNamed() throws IOException {
        point();
        assertEquals(List.of("hold point \"before the cut\": no operation is named, so no answer ever speaks of it; "
                + "refer to the operation that it belongs to"), texts());
    }
}
