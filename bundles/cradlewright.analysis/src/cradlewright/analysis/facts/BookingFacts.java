package cradlewright.analysis.facts;

import java.time.LocalDateTime;
import java.util.Optional;

/**
 * Who does what where, from when to when.
 *
 * @param operationId what is done
 * @param personId who does it
 * @param placeId where
 * @param gearId the lifting gear or dolly that is used
 * @param from when it begins
 * @param to when it ends
 */
public record BookingFacts(String id, String name, Optional<String> operationId, Optional<String> personId, Optional<String> placeId,
        Optional<String> gearId, Optional<LocalDateTime> from, Optional<LocalDateTime> to) implements Fact {
}
