package cradlewright.analysis.checks.lift;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.GearFacts.HoleFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.Value;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a lift or hoist is rated for as it is used: a boom with holes is rated for the hole that the hook is in, and never beyond the plate.
 *
 * @param value rated load, kg; what it is rated for at most while something is missing
 * @param of what the value is the rating of
 * @param missing what must be known before the value can be relied upon
 */
record RatingInUse(Optional<Value> value, String of, List<String> missing) {

    /** Copies the list. */
    RatingInUse {
        missing = List.copyOf(missing);
    }

    /** Returns the rating of gear in a setup. */
    static RatingInUse of(GearFacts gear, SetupFacts setup) {
        if (gear instanceof GearFacts.Hoist hoist && !hoist.holes().isEmpty()) {
            return of(hoist, setup);
        }
        return new RatingInUse(gear.ratedLoad(), "rated load of " + gear.name(), gear.ratedLoad().isPresent() ? List.of()
                : List.of("rated load of " + gear.name() + ": read it off its plate"));
    }

    private static RatingInUse of(GearFacts.Hoist hoist, SetupFacts setup) {
        // Beside a lift some straps may hang from its arms, and name no hole.
        List<ContactFacts> hanging = setup.contacts().stream().filter(contact -> setup.liftId().isEmpty() || contact.holeId().isPresent())
                .toList();
        List<Optional<HoleFacts>> named = hanging.stream().map(contact -> contact.holeId().flatMap(id -> CarFacts.find(hoist.holes(), id)))
                .toList();
        if (named.isEmpty() || named.stream().anyMatch(Optional::isEmpty)) {
            return new RatingInUse(atMost(hoist), "rated load of " + hoist.name() + " at its best hole",
                    List.of("which hole of " + hoist.name() + " the hook is in: name it at each support of " + setup.name()));
        }
        List<HoleFacts> used = named.stream().flatMap(Optional::stream).distinct().toList();
        List<String> missing = new ArrayList<>();
        used.stream().filter(hole -> hole.ratedLoad().isEmpty())
                .forEach(hole -> missing.add("rated load of " + hoist.name() + " at " + hole.name() + ": read it off the boom"));
        HoleFacts weakest = used.stream().filter(hole -> hole.ratedLoad().isPresent())
                .min(Comparator.comparingDouble(hole -> hole.ratedLoad().orElseThrow().low())).orElse(used.get(0));
        return new RatingInUse(lower(hoist.ratedLoad(), weakest.ratedLoad()), "rated load of " + hoist.name() + " at " + weakest.name(),
                missing);
    }

    private static Optional<Value> atMost(GearFacts.Hoist hoist) {
        if (hoist.holes().stream().anyMatch(hole -> hole.ratedLoad().isEmpty())) {
            return hoist.ratedLoad();
        }
        return lower(hoist.ratedLoad(), hoist.holes().stream().flatMap(hole -> hole.ratedLoad().stream())
                .max(Comparator.comparingDouble(Value::low)));
    }

    private static Optional<Value> lower(Optional<Value> plate, Optional<Value> hole) {
        return Stream.of(hole, plate).flatMap(Optional::stream).min(Comparator.comparingDouble(Value::low));
    }
}
