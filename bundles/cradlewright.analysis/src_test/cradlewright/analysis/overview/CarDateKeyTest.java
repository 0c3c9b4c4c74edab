package cradlewright.analysis.overview;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.facts.JobFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.analysis.testshop.WorkShop;
import cradlewright.analysis.testshop.WorkShop.Progress;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The earliest day that still matters, in an order told by the calendar alone. */
class CarDateKeyTest {

    private static final LocalDate TODAY = VisitShop.TODAY;

    private final WorkShop shop = new WorkShop().operation("cut", null, Progress.OPEN);

    private Optional<CarDate> next() {
        return shop.read(new CarDateKey("car"));
    }

    private void due(String id, LocalDate day, boolean done) {
        shop.shop.with(new JobFacts(id, id, Optional.of("car"), Optional.of(day), List.of(new OperationFacts(id + "-step", "step",
                Optional.empty(), List.of(), List.of(), Optional.empty(), Optional.empty(), done, List.of()))));
    }

    private static Optional<CarDate> date(int days, String what) {
        return Optional.of(new CarDate(TODAY.plusDays(days), what));
    }

    @Test
    void isNothingWhereNoDayIsWrittenDown() {
        assertEquals(Optional.empty(), next());
    }

    @Test
    void theEarliestOfDueWaitAndBookingCounts() {
        due("respray", TODAY.plusDays(30), false);
        assertEquals(date(30, "to be done: respray"), next());
        shop.waiting("blaster", "cut", TODAY.plusDays(9), null);
        assertEquals(date(9, "wait ends"), next());
        shop.booking("b", "cut", null, null, TODAY.plusDays(2).atTime(8, 0), TODAY.plusDays(3).atTime(16, 0));
        assertEquals(date(2, "booked: cut"), next());
    }

    @Test
    void whatSlippedComesFirstButABookingThatIsOverIsGone() {
        shop.booking("b", "cut", null, null, TODAY.minusDays(5).atTime(8, 0), TODAY.minusDays(4).atTime(16, 0));
        assertEquals(Optional.empty(), next());
        shop.waiting("blaster", "cut", TODAY.minusDays(3), null);
        assertEquals(date(-3, "wait ends"), next());
        due("respray", TODAY.minusDays(8), false);
        assertEquals(date(-8, "to be done: respray"), next());
    }

    @Test
    void aBookingThatRunsIsToday() {
        shop.booking("b", "cut", null, null, TODAY.minusDays(1).atTime(8, 0), TODAY.plusDays(1).atTime(16, 0));
        assertEquals(date(0, "booked: cut"), next());
    }

    @Test
    void whatIsDoneHasNoDate() {
        due("respray", TODAY.plusDays(1), true);
        shop.operation("strip", null, Progress.DONE);
        shop.booking("b", "strip", null, null, TODAY.plusDays(1).atTime(8, 0), TODAY.plusDays(1).atTime(9, 0));
        assertEquals(Optional.empty(), next());
    }

    @Test
    void ofAnotherCarNothingIsTold() {
        due("respray", TODAY.plusDays(1), false);
        assertEquals(Optional.empty(), shop.read(new CarDateKey("other")));
    }
}
