package cradlewright.analysis.job;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.BookingFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.HoldPointFacts;
import cradlewright.analysis.facts.JobFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.facts.WaitFacts;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * All work on one car. What belongs to no operation of a job of the car is not among it.
 *
 * @param carId the car
 */
public record CarWorkKey(String carId) implements Key<CarWork> {

    @Override
    public CarWork compute(Reader reader) {
        List<OperationFacts> operations = all(JobFacts.class, reader).stream().filter(job -> job.carId().filter(carId::equals).isPresent())
                .flatMap(job -> job.operations().stream()).toList();
        Set<String> ids = operations.stream().map(OperationFacts::id).collect(Collectors.toSet());
        return new CarWork(operations, of(ids, HoldPointFacts.class, HoldPointFacts::operationId, reader),
                of(ids, WaitFacts.class, WaitFacts::operationId, reader), of(ids, BookingFacts.class, BookingFacts::operationId, reader));
    }

    private static <T extends Fact> List<T> of(Set<String> operations, Class<T> type, Function<T, Optional<String>> operation,
            Reader reader) {
        return all(type, reader).stream().filter(fact -> operation.apply(fact).filter(operations::contains).isPresent()).toList();
    }

    private static <T extends Fact> List<T> all(Class<T> type, Reader reader) {
        return reader.read(new IdsKey<>(type)).stream().flatMap(id -> reader.read(new FactKey<>(type, id)).stream()).toList();
    }
}
