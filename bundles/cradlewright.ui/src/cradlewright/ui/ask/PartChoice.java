package cradlewright.ui.ask;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;

/**
 * A part that somebody may ask about.
 *
 * @param carId its car
 * @param partId the part
 * @param label part, piece and car as people read them
 * @param name the part alone
 */
record PartChoice(String carId, String partId, String label, String name) {

    /** Returns all parts of a shop, in the order of the files. */
    static List<PartChoice> all(ShopSnapshot shop) {
        List<PartChoice> all = new ArrayList<>();
        for (CarFacts car : shop.all(CarFacts.class)) {
            car.pieces().forEach(piece -> piece.parts().forEach(part -> all.add(new PartChoice(car.id(), part.id(),
                    NLS.bind(Messages.Part_label, new Object[] {part.name(), piece.name(), car.name()}), part.name()))));
        }
        return List.copyOf(all);
    }

    /**
     * Returns the parts that somebody may mean: the one of that whole label, else those of that whole name, else those whose label has
     * all the words in it.
     */
    static List<PartChoice> matching(List<PartChoice> all, String text) {
        String wanted = text.strip();
        List<PartChoice> found = all.stream().filter(choice -> choice.label().equalsIgnoreCase(wanted)).toList();
        if (found.isEmpty()) {
            found = all.stream().filter(choice -> choice.name().equalsIgnoreCase(wanted)).toList();
        }
        return found.isEmpty() ? all.stream().filter(choice -> Words.in(choice.label(), wanted)).toList() : found;
    }

    /** Finds car and part in a snapshot; nothing when one of them is not there any more. */
    Optional<Found> in(ShopSnapshot shop) {
        return shop.find(CarFacts.class, carId).flatMap(car -> car.parts().filter(part -> part.id().equals(partId)).findFirst()
                .map(part -> new Found(car, part)));
    }

    /**
     * Records of a choice.
     *
     * @param car the car
     * @param part the part
     */
    record Found(CarFacts car, PartFacts part) {
    }
}
