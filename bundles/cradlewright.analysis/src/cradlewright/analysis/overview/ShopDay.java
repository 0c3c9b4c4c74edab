package cradlewright.analysis.overview;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * The shop on the day of the answers, apart from the answers.
 *
 * @param day the day
 * @param cars one line a car, in the order of the files
 * @param dates the next day that is written down for a car, by its id; none where nothing is
 * @param carriers dollies, then lifting gear
 * @param places the places of the shop
 */
public record ShopDay(LocalDate day, List<CarLine> cars, Map<String, CarDate> dates, List<CarrierLine> carriers, List<PlaceLine> places) {

    /** Copies the collections. */
    public ShopDay {
        cars = List.copyOf(cars);
        dates = Map.copyOf(dates);
        carriers = List.copyOf(carriers);
        places = List.copyOf(places);
    }
}
