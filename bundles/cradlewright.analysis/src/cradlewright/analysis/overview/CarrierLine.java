package cradlewright.analysis.overview;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A dolly or a piece of lifting gear on the day of the answers.
 *
 * @param id dolly or gear
 * @param name what people call it
 * @param dolly whether it is a dolly
 * @param cars names of the cars that stand or hang on it, none when it is free
 * @param due day on which its next examination is due; nothing when nobody wrote it down
 */
public record CarrierLine(String id, String name, boolean dolly, List<String> cars, Optional<LocalDate> due) {

    /** Copies the list. */
    public CarrierLine {
        cars = List.copyOf(cars);
    }
}
