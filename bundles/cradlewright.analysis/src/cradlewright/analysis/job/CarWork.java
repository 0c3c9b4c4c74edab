package cradlewright.analysis.job;

import cradlewright.analysis.facts.BookingFacts;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.HoldPointFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.facts.WaitFacts;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * All work on one car.
 *
 * @param operations the steps of its jobs, in file order
 * @param holdPoints where somebody has to sign before one of them begins
 * @param waits what they wait for
 * @param bookings who does them when
 */
public record CarWork(List<OperationFacts> operations, List<HoldPointFacts> holdPoints, List<WaitFacts> waits,
        List<BookingFacts> bookings) {

    /** Copies the lists. */
    public CarWork {
        operations = List.copyOf(operations);
        holdPoints = List.copyOf(holdPoints);
        waits = List.copyOf(waits);
        bookings = List.copyOf(bookings);
    }

    /** Returns the operation of that id. */
    public Optional<OperationFacts> operation(String id) {
        return CarFacts.find(operations, id);
    }

    /** Returns the operation that a hold point stands before. */
    public OperationFacts held(HoldPointFacts point) {
        return point.operationId().flatMap(this::operation).orElseThrow();
    }

    /** Returns the hold points before an operation. */
    public List<HoldPointFacts> before(OperationFacts operation) {
        return holdPoints.stream().filter(point -> held(point).equals(operation)).toList();
    }

    /** Returns the bookings of an operation. */
    public List<BookingFacts> bookings(OperationFacts operation) {
        return bookings.stream().filter(booking -> booking.operationId().filter(operation.id()::equals).isPresent()).toList();
    }

    /** Returns what somebody waits for on that day; a wait of an operation that is done is over. */
    public List<WaitFacts> openWaits(LocalDate day) {
        return waits.stream().filter(wait -> wait.open(day) && !wait.operationId().flatMap(this::operation).orElseThrow().done()).toList();
    }

    /** Tells whether everything that has to be done before is done; an operation that is not among this work counts as not done. */
    public boolean ready(OperationFacts operation) {
        return operation.afterIds().stream().allMatch(id -> operation(id).map(OperationFacts::done).orElse(false));
    }

    /** Returns the steps that are not done, those that somebody is at on that day first, then those that can begin, in file order. */
    public List<OperationFacts> next(LocalDate day) {
        List<OperationFacts> next = new ArrayList<>(operations.stream().filter(operation -> operation.running(day)).toList());
        operations.stream().filter(operation -> !operation.begun(day) && ready(operation)).forEach(next::add);
        return next;
    }

    /** Returns an operation and all that come after it, whether directly or not, in that order. */
    public List<OperationFacts> from(OperationFacts first) {
        Set<OperationFacts> found = new LinkedHashSet<>();
        Deque<OperationFacts> open = new ArrayDeque<>(List.of(first));
        while (!open.isEmpty()) {
            OperationFacts operation = open.poll();
            if (found.add(operation)) {
                operations.stream().filter(other -> other.afterIds().contains(operation.id())).forEach(open::add);
            }
        }
        return List.copyOf(found);
    }
}
