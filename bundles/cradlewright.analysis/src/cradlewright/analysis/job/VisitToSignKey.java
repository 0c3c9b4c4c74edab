package cradlewright.analysis.job;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.HoldPointFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.facts.VisitFacts;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The visits that somebody who signs a hold point may mean: those in the setup of the operation behind it that are not over, or, when it
 * names no setup that is visited, those of the day.
 *
 * @param carId the car
 * @param holdPointId the hold point
 */
public record VisitToSignKey(String carId, String holdPointId) implements Key<List<VisitFacts>> {

    @Override
    public List<VisitFacts> compute(Reader reader) {
        Optional<CarFacts> car = reader.read(new FactKey<>(CarFacts.class, carId));
        LocalDate today = reader.read(new TodayKey());
        List<VisitFacts> visits = car.map(CarFacts::visits).orElse(List.of()).stream().filter(visit -> !visit.over(today)).toList();
        List<VisitFacts> inSetup = setup(reader).map(setup -> visits.stream().filter(visit -> visit.setupId().equals(Optional.of(setup)))
                .toList()).orElse(List.of());
        return inSetup.isEmpty() ? visits.stream().filter(visit -> visit.on(today)).toList() : inSetup;
    }

    private Optional<String> setup(Reader reader) {
        CarWork work = reader.read(new CarWorkKey(carId));
        return CarFacts.find(work.holdPoints(), holdPointId).map(HoldPointFacts::operationId).flatMap(id -> id.flatMap(work::operation))
                .flatMap(OperationFacts::setupId);
    }
}
