package cradlewright.analysis.checks.gear;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.VisitFacts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which visits use each dolly and each piece of gear, by its id; visits that are history do not count. */
record GearUsesKey() implements Key<Map<String, List<GearUse>>> {

    @Override
    public Map<String, List<GearUse>> compute(Reader reader) {
        LocalDate today = reader.read(new TodayKey());
        Map<String, List<GearUse>> uses = new HashMap<>();
        for (String id : reader.read(new IdsKey<>(CarFacts.class))) {
            Optional<CarFacts> car = reader.read(new FactKey<>(CarFacts.class, id));
            car.ifPresent(one -> one.visits().stream().filter(visit -> !one.over(visit, today))
                    .forEach(visit -> used(one, visit).forEach(gear -> uses.computeIfAbsent(gear, key -> new ArrayList<>())
                            .add(GearUse.of(one, visit, today)))));
        }
        return Map.copyOf(uses);
    }

    private static Set<String> used(CarFacts car, VisitFacts visit) {
        return visit.setupId().flatMap(car::setup).map(SetupFacts::carrierIds).orElse(Set.of());
    }
}
