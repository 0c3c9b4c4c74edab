package cradlewright.ui.ask;

import cradlewright.analysis.lookup.SupportCard;
import java.util.Comparator;
import java.util.List;

/**
 * What somebody typed to look a support up: its name, and words of the name of the car where several cars have one of that name.
 *
 * @param name name of the support
 * @param car words of the name of the car; empty for all cars
 */
record SupportWish(String name, String car) {

    /** Takes a text apart, such as {@code 4L red}: the longest name that it begins with, then the car. */
    static SupportWish of(String text, List<String> names) {
        String wanted = text.strip();
        return names.stream().filter(name -> begins(wanted, name.strip())).max(Comparator.comparingInt(String::length))
                .map(name -> new SupportWish(name.strip(), wanted.substring(name.strip().length()).strip()))
                .orElse(new SupportWish(wanted, ""));
    }

    private static boolean begins(String text, String name) {
        boolean same = !name.isEmpty() && text.regionMatches(true, 0, name, 0, name.length());
        return same && (text.length() == name.length() || text.charAt(name.length()) == ' ');
    }

    /** Returns the supports of the wanted car; all when none is named. */
    List<SupportCard> among(List<SupportCard> cards) {
        return car.isEmpty() ? cards : cards.stream().filter(card -> Words.in(card.car().name(), car)).toList();
    }
}
