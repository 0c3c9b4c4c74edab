package cradlewright.analysis.overview;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.VisitFacts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where a car stands at a visit and on what, in words.
 *
 * @param carId the car
 * @param visitId the visit
 */
record StandKey(String carId, String visitId) implements Key<CarStand> {

    private static final List<String> NUMBERS = List.of("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
            "eleven", "twelve");

    @Override
    public CarStand compute(Reader reader) {
        Optional<SetupFacts> setup = reader.read(new FactKey<>(CarFacts.class, carId)).flatMap(car -> CarFacts.find(car.visits(), visitId)
                .flatMap(VisitFacts::setupId).flatMap(car::setup));
        return new CarStand(visitId, where(reader).orElse("nobody wrote down where"),
                setup.map(given -> on(given, reader)).orElse("nobody wrote down on what"));
    }

    private Optional<String> where(Reader reader) {
        return reader.read(new IdsKey<>(PlacementFacts.class)).stream()
                .flatMap(id -> reader.read(new FactKey<>(PlacementFacts.class, id)).stream())
                .filter(placement -> placement.visitId().filter(visitId::equals).isPresent())
                .flatMap(placement -> placement.placeId().stream())
                .flatMap(id -> reader.read(new FactKey<>(PlaceFacts.class, id)).stream()).map(PlaceFacts::name).findFirst();
    }

    private static String on(SetupFacts setup, Reader reader) {
        return switch (setup.kind()) {
            case DOLLY -> "on " + setup.dollyId().flatMap(id -> reader.read(new FactKey<>(DollyFacts.class, id))).map(DollyFacts::name)
                    .orElse("a dolly that nobody named");
            case STANDS -> "on " + stands(setup, reader);
            case STRAPS -> "in straps" + above(setup, reader).map(name -> " from " + name).orElse("");
            case LIFT -> "on " + above(setup, reader).orElse("a lift that nobody named");
            case CHASSIS -> "on its chassis";
            case FLOOR -> "on the floor";
            case AWAY -> "away from the shop";
        };
    }

    private static Optional<String> above(SetupFacts setup, Reader reader) {
        return Stream.of(setup.liftId(), setup.hoistId()).flatMap(Optional::stream)
                .flatMap(id -> reader.read(new FactKey<>(GearFacts.class, id)).stream()).map(GearFacts::name).findFirst();
    }

    private static String stands(SetupFacts setup, Reader reader) {
        List<GearFacts> gear = setup.contacts().stream().map(ContactFacts::carrierId).flatMap(Optional::stream).distinct()
                .flatMap(id -> reader.read(new FactKey<>(GearFacts.class, id)).stream()).toList();
        List<String> words = new ArrayList<>();
        count(gear, GearFacts.Stand.class, "stand").ifPresent(words::add);
        count(gear, GearFacts.Trestle.class, "trestle").ifPresent(words::add);
        count(gear, GearFacts.Trailer.class, "trailer").ifPresent(words::add);
        return words.isEmpty() ? "stands that nobody named" : String.join(" and ", words);
    }

    private static Optional<String> count(List<GearFacts> gear, Class<? extends GearFacts> type, String word) {
        int count = (int) gear.stream().filter(type::isInstance).count();
        String number = count < NUMBERS.size() ? NUMBERS.get(count) : Integer.toString(count);
        return count == 0 ? Optional.empty() : Optional.of(number + " " + word + (count == 1 ? "" : "s"));
    }
}
