package cradlewright.analysis.overview;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.VisitFacts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Who stands where and on what on the day of the answers, what each car waits for, and which days come next. */
public record ShopDayKey() implements Key<ShopDay> {

    @Override
    public ShopDay compute(Reader reader) {
        LocalDate today = reader.read(new TodayKey());
        List<CarLine> lines = new ArrayList<>();
        Map<String, CarDate> dates = new HashMap<>();
        Map<String, Set<String>> users = new LinkedHashMap<>();
        List<PlacementFacts> placements = all(PlacementFacts.class, reader).toList();
        for (CarFacts car : all(CarFacts.class, reader).toList()) {
            reader.read(new CarLineKey(car.id())).ifPresent(lines::add);
            reader.read(new CarDateKey(car.id())).ifPresent(date -> dates.put(car.id(), date));
            car.visitsOn(today).stream().flatMap(visit -> used(car, visit, placements))
                    .forEach(id -> users.computeIfAbsent(id, used -> new LinkedHashSet<>()).add(car.name()));
        }
        return new ShopDay(today, lines, dates, carriers(users, reader), all(PlaceFacts.class, reader)
                .map(place -> new PlaceLine(place.id(), place.name(), names(users, Set.of(place.id())))).toList());
    }

    /** Returns the ids of everything that a visit takes up: its dolly, lifting gear and place. */
    private static Stream<String> used(CarFacts car, VisitFacts visit, List<PlacementFacts> placements) {
        Stream<String> carriers = visit.setupId().flatMap(car::setup).map(SetupFacts::carrierIds).orElse(Set.of()).stream();
        Stream<String> places = placements.stream().filter(placement -> placement.visitId().filter(visit.id()::equals).isPresent())
                .flatMap(placement -> placement.placeId().stream());
        return Stream.concat(carriers, places);
    }

    private static List<CarrierLine> carriers(Map<String, Set<String>> users, Reader reader) {
        Stream<CarrierLine> dollies = all(DollyFacts.class, reader)
                .map(dolly -> line(dolly, true, names(users, Set.of(dolly.id())), dolly.examination()));
        Stream<CarrierLine> gear = all(GearFacts.class, reader).map(one -> line(one, false, names(users, parts(one)), one.examination()));
        return Stream.concat(dollies, gear).toList();
    }

    private static CarrierLine line(Fact carrier, boolean dolly, List<String> cars, Examination examination) {
        return new CarrierLine(carrier.id(), carrier.name(), dolly, cars, examination.due());
    }

    /** Contacts name the arms of a lift, not the lift. */
    private static Set<String> parts(GearFacts gear) {
        Set<String> ids = new LinkedHashSet<>(Set.of(gear.id()));
        if (gear instanceof GearFacts.Lift lift) {
            lift.arms().forEach(arm -> ids.add(arm.id()));
        }
        return ids;
    }

    private static List<String> names(Map<String, Set<String>> users, Set<String> ids) {
        return ids.stream().flatMap(id -> users.getOrDefault(id, Set.of()).stream()).distinct().toList();
    }

    private static <T extends Fact> Stream<T> all(Class<T> type, Reader reader) {
        return reader.read(new IdsKey<>(type)).stream().map(id -> reader.read(new FactKey<>(type, id))).flatMap(Optional::stream);
    }
}
