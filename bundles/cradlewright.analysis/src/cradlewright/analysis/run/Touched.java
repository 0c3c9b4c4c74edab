package cradlewright.analysis.run;

import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.VisitFacts;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Whom a change touches. Stock is never changed by a trial, only added to: whoever uses what is there keeps it.
 */
final class Touched {

    private Touched() {
    }

    /** Returns the subject itself and, unless the change is a way of going about this one visit, everybody who uses what it changes. */
    static Set<Subject> by(Trial trial, Subject subject, Reader reader) {
        Set<Subject> touched = new LinkedHashSet<>();
        touched.add(subject);
        if (trial.reach() == Trial.Reach.EVERY_USER) {
            for (Fact fact : trial.change().facts()) {
                touched.addAll(fact instanceof CarFacts car ? visits(car, reader) : reader.read(new UsesKey.OfKey(fact.id())));
            }
        }
        return touched;
    }

    private static List<Subject> visits(CarFacts then, Reader reader) {
        Optional<CarFacts> now = reader.read(new FactKey<>(CarFacts.class, then.id()));
        return reader.read(new UsesKey.OfKey(then.id())).stream()
                .filter(subject -> subject.scope() != Scope.VISIT || now.isEmpty() || differs(now.get(), then, subject.visitId()
                        .orElseThrow()))
                .toList();
    }

    /** Tells whether anything differs that a visit can see: the car but for the stages, setups and visits of others. */
    private static boolean differs(CarFacts now, CarFacts then, String visitId) {
        return !Objects.equals(seen(now, visitId), seen(then, visitId));
    }

    private static CarFacts seen(CarFacts car, String visitId) {
        List<VisitFacts> visit = car.visits().stream().filter(v -> v.id().equals(visitId)).toList();
        return new CarFacts(car.id(), car.name(), car.separateChassis(), car.pieces(), car.mounts(), car.liftPoints(), car.workPoints(),
                car.cutZones(), car.temporaryLoads(), car.braces(),
                visit.stream().flatMap(v -> v.stageId().flatMap(car::stage).stream()).toList(),
                visit.stream().flatMap(v -> v.setupId().flatMap(car::setup).stream()).toList(), visit, car.weighings());
    }
}
