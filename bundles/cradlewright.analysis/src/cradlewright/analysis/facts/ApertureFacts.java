package cradlewright.analysis.facts;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * The readings of the openings of a car, in the order in which they were taken.
 *
 * @param carId the car
 * @param readings one for each time somebody measured an opening
 */
public record ApertureFacts(String id, String name, String carId, List<Reading> readings) implements Fact {

    /**
     * What somebody measured at one opening.
     *
     * @param aperture which opening
     * @param at when
     * @param by who measured
     * @param diagonals in m, in the order of the sheet
     * @param gaps in m, in the order of the sheet
     */
    public record Reading(String id, Optional<String> aperture, Optional<LocalDateTime> at, Optional<String> by, List<Value> diagonals,
            List<Value> gaps) {
    }

    /** Returns the id under which the readings of a car stand. */
    public static String idFor(String carId) {
        return "readings: " + carId;
    }
}
