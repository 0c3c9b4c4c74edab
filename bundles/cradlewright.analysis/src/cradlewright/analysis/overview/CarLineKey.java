package cradlewright.analysis.overview;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.HoldPointFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.facts.WaitFacts;
import cradlewright.analysis.job.CarWork;
import cradlewright.analysis.job.CarWorkKey;
import cradlewright.analysis.job.SignState;
import cradlewright.analysis.job.SignStateKey;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A car on the day of the answers; nothing when there is none of that id.
 *
 * @param carId the car
 */
public record CarLineKey(String carId) implements Key<Optional<CarLine>> {

    @Override
    public Optional<CarLine> compute(Reader reader) {
        LocalDate today = reader.read(new TodayKey());
        return reader.read(new FactKey<>(CarFacts.class, carId)).map(car -> new CarLine(carId, car.name(),
                car.visitsOn(today).stream().map(visit -> reader.read(new StandKey(carId, visit.id()))).toList(),
                waiting(reader.read(new CarWorkKey(carId)), today, reader)));
    }

    private String waiting(CarWork work, LocalDate today, Reader reader) {
        List<WaitFacts> open = work.openWaits(today);
        if (!open.isEmpty()) {
            return open.stream().map(wait -> "waits: " + wait.reason().orElse(wait.name()) + wait.until()
                    .map(day -> (day.isBefore(today) ? ", late: was to end on " : ", until ") + day).orElse(", nobody said until when"))
                    .collect(Collectors.joining("; "));
        }
        if (work.operations().isEmpty()) {
            return "no job is written down";
        }
        if (work.operations().stream().allMatch(OperationFacts::done)) {
            return "all jobs are done";
        }
        List<OperationFacts> next = work.next(today);
        return next.isEmpty() ? "nothing can begin: look at the order of its jobs" : next(next.get(0), work, today, reader);
    }

    private String next(OperationFacts operation, CarWork work, LocalDate today, Reader reader) {
        Optional<HoldPointFacts> unsigned = work.before(operation).stream()
                .filter(point -> reader.read(new SignStateKey(carId, point.id())).kind() != SignState.Kind.SIGNED).findFirst();
        if (operation.running(today)) {
            return "at work: " + operation.name() + unsigned.map(point -> ", not signed: " + point.name()).orElse("");
        }
        return unsigned.map(point -> "waits for a signature: " + point.name()).orElse("next: " + operation.name());
    }
}
