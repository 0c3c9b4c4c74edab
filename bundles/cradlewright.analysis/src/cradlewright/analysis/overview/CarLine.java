package cradlewright.analysis.overview;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A car on the day of the answers.
 *
 * @param carId the car
 * @param name what people call it
 * @param stands where it stands, one for each visit that is on; none when no visit covers the day
 * @param waiting what it waits for or what is next, in words
 */
public record CarLine(String carId, String name, List<CarStand> stands, String waiting) {

    /** Copies the list. */
    public CarLine {
        stands = List.copyOf(stands);
    }

    /** Returns where it stands and on what, for example {@code middle bay (on dolly 3)}. */
    public String standing() {
        return stands.isEmpty() ? "no visit covers this day"
                : stands.stream().map(stand -> stand.where() + " (" + stand.on() + ")").distinct().collect(Collectors.joining("; "));
    }
}
