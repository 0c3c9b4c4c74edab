package cradlewright.analysis.run;

import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.VisitFacts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Everything that questions are asked about: cars, their present and planned visits, dollies, gear. Visits that are over are history. */
public record SubjectsKey() implements Key<List<Subject>> {

    @Override
    public List<Subject> compute(Reader reader) {
        List<Subject> subjects = new ArrayList<>();
        LocalDate today = reader.read(new TodayKey());
        for (String id : reader.read(new IdsKey<>(CarFacts.class))) {
            reader.read(new FactKey<>(CarFacts.class, id)).ifPresent(car -> addCar(subjects, car, today));
        }
        for (String id : reader.read(new IdsKey<>(DollyFacts.class))) {
            reader.read(new FactKey<>(DollyFacts.class, id))
                    .ifPresent(dolly -> subjects.add(new Subject(Scope.DOLLY, id, Optional.empty(), dolly.name())));
        }
        for (String id : reader.read(new IdsKey<>(GearFacts.class))) {
            reader.read(new FactKey<>(GearFacts.class, id))
                    .ifPresent(gear -> subjects.add(new Subject(Scope.GEAR, id, Optional.empty(), gear.name())));
        }
        return List.copyOf(subjects);
    }

    private static void addCar(List<Subject> subjects, CarFacts car, LocalDate today) {
        subjects.add(new Subject(Scope.CAR, car.id(), Optional.empty(), car.name()));
        for (VisitFacts visit : car.visits()) {
            if (!car.over(visit, today)) {
                subjects.add(new Subject(Scope.VISIT, car.id(), Optional.of(visit.id()), car.name() + ", " + visit.name()));
            }
        }
    }
}
