package cradlewright.analysis.overview;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.BookingFacts;
import cradlewright.analysis.facts.JobFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.job.CarWork;
import cradlewright.analysis.job.CarWorkKey;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The next day that is written down for a car: the end of a wait, a booking, the day on which a job is to be done. What has slipped
 * comes before everything else, for it is not over; a booking that has gone by is.
 *
 * @param carId the car
 */
public record CarDateKey(String carId) implements Key<Optional<CarDate>> {

    @Override
    public Optional<CarDate> compute(Reader reader) {
        LocalDate today = reader.read(new TodayKey());
        CarWork work = reader.read(new CarWorkKey(carId));
        return Stream.of(waits(work, today), bookings(work, today), jobs(reader)).flatMap(dates -> dates)
                .min(Comparator.comparing(CarDate::day));
    }

    private static Stream<CarDate> waits(CarWork work, LocalDate today) {
        return work.openWaits(today).stream().flatMap(wait -> wait.until().stream().map(day -> new CarDate(day, "wait ends")));
    }

    private static Stream<CarDate> bookings(CarWork work, LocalDate today) {
        return work.operations().stream().filter(operation -> !operation.done()).flatMap(operation -> work.bookings(operation).stream()
                .flatMap(booking -> first(booking, today).map(day -> new CarDate(day, "booked: " + operation.name())).stream()));
    }

    /** Returns the first day of a booking that is not over, today when it has begun. */
    private static Optional<LocalDate> first(BookingFacts booking, LocalDate today) {
        boolean over = booking.to().or(booking::from).map(LocalDateTime::toLocalDate).filter(day -> day.isBefore(today)).isPresent();
        return over ? Optional.empty()
                : booking.from().map(LocalDateTime::toLocalDate).map(day -> day.isBefore(today) ? today : day);
    }

    private Stream<CarDate> jobs(Reader reader) {
        return reader.read(new IdsKey<>(JobFacts.class)).stream().flatMap(id -> reader.read(new FactKey<>(JobFacts.class, id)).stream())
                .filter(job -> job.carId().filter(carId::equals).isPresent())
                .filter(job -> !job.operations().stream().allMatch(OperationFacts::done))
                .flatMap(job -> job.due().stream().map(day -> new CarDate(day, "to be done: " + job.name())));
    }
}
