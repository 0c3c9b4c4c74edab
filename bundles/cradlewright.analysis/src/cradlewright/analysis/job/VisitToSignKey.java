package cradlewright.analysis.job;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.facts.VisitFacts;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The visits that a hold point is about: those in the setup in which the operation behind it is done or, when it names none, in that of
 * what has to be done before it. Where several are planned in that setup, or no setup is named, the day for which the operation is booked
 * tells which; without a booking it is the day of the answers. Nothing when a setup is named and no visit in it is planned: whatever
 * stands there today is not what the hold point is about. Visits that are over never are.
 *
 * @param carId the car
 * @param holdPointId the hold point
 */
public record VisitToSignKey(String carId, String holdPointId) implements Key<List<VisitFacts>> {

    @Override
    public List<VisitFacts> compute(Reader reader) {
        LocalDate today = reader.read(new TodayKey());
        CarWork work = reader.read(new CarWorkKey(carId));
        List<VisitFacts> planned = reader.read(new FactKey<>(CarFacts.class, carId)).stream()
                .flatMap(car -> car.visits().stream().filter(visit -> !car.over(visit, today))).toList();
        return CarFacts.find(work.holdPoints(), holdPointId).map(work::held).map(held -> about(held, work, planned, today))
                .orElse(List.of());
    }

    private static List<VisitFacts> about(OperationFacts held, CarWork work, List<VisitFacts> planned, LocalDate today) {
        Optional<LocalDate> booked = work.bookings(held).stream().flatMap(booking -> booking.from().stream())
                .map(LocalDateTime::toLocalDate).filter(day -> day.isAfter(today)).min(Comparator.naturalOrder());
        Set<String> setups = new HashSet<>();
        collectSetups(held, work, setups, new HashSet<>());
        if (setups.isEmpty()) {
            return booked.map(day -> plannedFor(day, planned))
                    .orElseGet(() -> planned.stream().filter(visit -> visit.on(today)).toList());
        }
        List<VisitFacts> inSetup = planned.stream().filter(visit -> visit.setupId().filter(setups::contains).isPresent()).toList();
        List<VisitFacts> thatDay = booked.map(day -> plannedFor(day, inSetup)).orElse(List.of());
        return inSetup.size() < 2 || thatDay.isEmpty() ? inSetup : thatDay;
    }

    private static void collectSetups(OperationFacts operation, CarWork work, Set<String> setups, Set<String> seen) {
        if (!seen.add(operation.id())) {
            return;
        }
        if (operation.setupId().isPresent()) {
            setups.add(operation.setupId().get());
            return;
        }
        operation.afterIds().stream().flatMap(id -> work.operation(id).stream()).filter(before -> !before.done())
                .forEach(before -> collectSetups(before, work, setups, seen));
    }

    /** Returns the visits whose days hold a day to come; of several those that begin last, since a visit ends when the next begins. */
    private static List<VisitFacts> plannedFor(LocalDate day, List<VisitFacts> visits) {
        List<VisitFacts> begun = visits.stream().filter(visit -> visit.from().filter(day::isBefore).isEmpty()
                && visit.to().filter(day::isAfter).isEmpty()).toList();
        Optional<LocalDate> last = begun.stream().flatMap(visit -> visit.from().stream()).max(Comparator.naturalOrder());
        return begun.stream().filter(visit -> visit.from().equals(last)).toList();
    }
}
