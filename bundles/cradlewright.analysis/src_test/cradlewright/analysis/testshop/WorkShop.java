package cradlewright.analysis.testshop;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.facts.BookingFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.HoldPointFacts;
import cradlewright.analysis.facts.JobFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.facts.SignOffFacts;
import cradlewright.analysis.facts.WaitFacts;
import cradlewright.analysis.job.VisitDigestKey;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A car on two trestles with one job; operations are added in file order and named by their ids. */
public final class WorkShop {

    /** The car itself. */
    public static final Subject CAR = new Subject(Scope.CAR, "car", Optional.empty(), "Car");

    /** Noon of the day of the answers. */
    public static final LocalDateTime NOON = VisitShop.TODAY.atTime(12, 0);

    public final VisitShop shop = new VisitShop(CarrierKind.STANDS).part("tub", 200, 1, 0, 0.5);
    private final List<OperationFacts> operations = new ArrayList<>();

    /** How far an operation is. */
    public enum Progress {
        OPEN, RUNNING, DONE
    }

    /** Starts with two supports. */
    public WorkShop() {
        shop.touch("1L").at(0, -0.5, 0).on("trestle");
        shop.touch("1R").at(0, 0.5, 0).on("trestle");
    }

    /** Adds an operation that comes after others; one that runs began yesterday. */
    public WorkShop operation(String id, OperationFacts.Kind kind, Progress progress, String... after) {
        return operation(new OperationFacts(id, id, Optional.ofNullable(kind), List.of(), List.of(), Optional.empty(),
                progress == Progress.OPEN ? Optional.empty() : Optional.of(VisitShop.TODAY.minusDays(1)), progress == Progress.DONE,
                List.of(after)));
    }

    /** Adds an operation. */
    public WorkShop operation(OperationFacts operation) {
        operations.add(operation);
        return this;
    }

    /** Adds a hold point before an operation. */
    public WorkShop hold(String id, String operation, SignOffFacts... signOffs) {
        shop.with(new HoldPointFacts(id, id, Optional.of(operation), Optional.empty(), List.of(signOffs)));
        return this;
    }

    /** Adds what an operation waits for, since long ago. */
    public WorkShop waiting(String id, String operation, LocalDate until, LocalDate ended) {
        shop.with(new WaitFacts(id, id, Optional.of(operation), Optional.of("away at the " + id), Optional.of(LocalDate.of(2025, 1, 6)),
                Optional.ofNullable(until), Optional.ofNullable(ended)));
        return this;
    }

    /** Adds a booking; null for what nobody said. */
    public WorkShop booking(String id, String operation, String person, String gear, LocalDateTime from, LocalDateTime to) {
        shop.with(new BookingFacts(id, id, Optional.of(operation), Optional.ofNullable(person), Optional.empty(),
                Optional.ofNullable(gear), Optional.ofNullable(from), Optional.ofNullable(to)));
        return this;
    }

    /** Returns a sign-off of the visit as it is now. */
    public SignOffFacts signed(String by, LocalDateTime at) {
        return new SignOffFacts("sign-off of " + by, Optional.of(by), Optional.of(at), digest(), Optional.of("visit"));
    }

    /** Returns the fingerprint of the visit as it is now. */
    public Optional<String> digest() {
        return read(new VisitDigestKey("car", "visit", NOON));
    }

    /** Answers a key. */
    public <T> T read(Key<T> key) {
        return built().read(key);
    }

    /** Asks a check about the car. */
    public List<Finding> ask(Check check) {
        return built().ask(check, CAR);
    }

    /** Asks a check about the car and returns the verdicts. */
    public List<Verdict> verdicts(Check check) {
        return ask(check).stream().map(Finding::verdict).toList();
    }

    private VisitShop built() {
        return shop.with(new JobFacts("job", "job", Optional.of("car"), Optional.empty(), operations));
    }
}
