package cradlewright.analysis.facts;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A job on a car.
 *
 * @param carId which car
 * @param due day on which it is to be done
 * @param operations its steps, in file order
 */
public record JobFacts(String id, String name, Optional<String> carId, Optional<LocalDate> due, List<OperationFacts> operations)
        implements Fact {
}
