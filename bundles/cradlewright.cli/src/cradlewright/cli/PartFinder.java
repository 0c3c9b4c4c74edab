package cradlewright.cli;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Finds the one part that somebody means. */
final class PartFinder {

    /** A part with its piece and car. */
    record Found(CarFacts car, PieceFacts piece, PartFacts part) {
        String words() {
            return part.name() + " (" + piece.name() + " of " + car.name() + ", id " + part.id() + ")";
        }
    }

    private static final int SHOWN = 8;

    private PartFinder() {
    }

    /**
     * Finds a part by its id, its whole name or a piece of its name, in that order.
     *
     * @param car id or piece of the name of the car, or null for all cars
     * @throws BadInputException when none or several fit
     */
    static Found find(ShopSnapshot shop, String car, String part) {
        List<Found> all = cars(shop, car).stream().flatMap(c -> c.pieces().stream()
                .flatMap(piece -> piece.parts().stream().map(p -> new Found(c, piece, p)))).toList();
        List<Found> found = all.stream().filter(f -> f.part.id().equals(part)).toList();
        if (found.isEmpty()) {
            found = all.stream().filter(f -> f.part.name().equalsIgnoreCase(part.strip())).toList();
        }
        if (found.isEmpty()) {
            found = all.stream().filter(f -> contains(f.part, part)).toList();
        }
        if (found.isEmpty()) {
            throw new BadInputException("no part is called " + part + (car == null ? " in this shop" : " on that car")
                    + Near.hint(part, all.stream().map(f -> f.part.name()).toList(),
                            "the names of the parts stand in the files of the cars"));
        }
        if (found.size() > 1) {
            throw new BadInputException("several parts fit " + part + ": " + names(found)
                    + "; name the car with --car, write more of the name, or give the id");
        }
        return found.get(0);
    }

    private static List<CarFacts> cars(ShopSnapshot shop, String wanted) {
        List<CarFacts> all = shop.all(CarFacts.class);
        if (wanted == null) {
            return all;
        }
        List<CarFacts> found = all.stream().filter(car -> car.id().equals(wanted)).toList();
        if (found.isEmpty()) {
            found = all.stream().filter(car -> contains(car, wanted)).toList();
        }
        if (found.size() != 1) {
            List<String> names = (found.isEmpty() ? all : found).stream().map(CarFacts::name).toList();
            String there = "there are " + (names.isEmpty() ? "no cars" : String.join("; ", names));
            throw new BadInputException(found.isEmpty() ? "no car is called " + wanted + Near.hint(wanted, names, there)
                    : "several cars fit " + wanted + ": " + there);
        }
        return found;
    }

    private static boolean contains(Fact fact, String text) {
        return fact.name().toLowerCase(Locale.ROOT).contains(text.strip().toLowerCase(Locale.ROOT));
    }

    private static String names(List<Found> found) {
        return found.stream().limit(SHOWN).map(Found::words).collect(Collectors.joining("; "))
                + (found.size() > SHOWN ? " and " + (found.size() - SHOWN) + " more" : "");
    }
}
