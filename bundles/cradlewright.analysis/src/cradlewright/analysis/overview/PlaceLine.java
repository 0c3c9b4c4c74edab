package cradlewright.analysis.overview;

import java.util.List;

/**
 * A place and who stands there on the day of the answers.
 *
 * @param placeId the place
 * @param name what people call it
 * @param cars names of the cars that stand there, none when it is free
 */
public record PlaceLine(String placeId, String name, List<String> cars) {

    /** Copies the list. */
    public PlaceLine {
        cars = List.copyOf(cars);
    }
}
