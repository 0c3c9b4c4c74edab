package cradlewright.analysis.run;

import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.VisitFacts;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Who uses what: by the id of a car, a dolly or a piece of lifting gear that itself, and the visits of the car or on the thing. */
record UsesKey() implements Key<Map<String, List<Subject>>> {

    /** What the visits of one car stand or hang on, so that an edit of a car that leaves this alone goes no further. */
    private record CarUsesKey(String carId) implements Key<Map<String, Set<String>>> {

        @Override
        public Map<String, Set<String>> compute(Reader reader) {
            Map<String, Set<String>> uses = new HashMap<>();
            reader.read(new FactKey<>(CarFacts.class, carId)).ifPresent(car -> {
                for (VisitFacts visit : car.visits()) {
                    visit.setupId().flatMap(car::setup).ifPresent(setup -> uses.put(visit.id(), setup.carrierIds()));
                }
            });
            return Map.copyOf(uses);
        }
    }

    /** The users of one thing, so that who asks about it does not depend on the rest. */
    record OfKey(String id) implements Key<List<Subject>> {

        @Override
        public List<Subject> compute(Reader reader) {
            return reader.read(new UsesKey()).getOrDefault(id, List.of());
        }
    }

    @Override
    public Map<String, List<Subject>> compute(Reader reader) {
        Map<String, List<Subject>> users = new HashMap<>();
        for (Subject subject : reader.read(new SubjectsKey())) {
            users.computeIfAbsent(subject.ownerId(), any -> new ArrayList<>()).add(subject);
            if (subject.scope() == Scope.VISIT) {
                Map<String, Set<String>> ofCar = reader.read(new CarUsesKey(subject.ownerId()));
                Set<String> named = Objects.requireNonNullElse(ofCar.get(subject.visitId().orElseThrow()), Set.of());
                named.forEach(id -> users.computeIfAbsent(id, any -> new ArrayList<>()).add(subject));
            }
        }
        return Map.copyOf(users);
    }
}
