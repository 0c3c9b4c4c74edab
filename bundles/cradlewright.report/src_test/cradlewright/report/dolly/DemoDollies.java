package cradlewright.report.dolly;

import cradlewright.analysis.check.Scope;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.run.SubjectsKey;
import cradlewright.report.car.Demo;
import cradlewright.report.dolly.DollySketchKey.VisitOn;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The dollies of the demo shop, empty and under each car that stands on one of them. */
final class DemoDollies {

    private static final Engine ENGINE = Demo.engine();
    private static Map<String, DollySight> sights;

    private DemoDollies() {
    }

    /** Returns them by the names of dolly, car and visit; the empty ones by that of the dolly alone. */
    static synchronized Map<String, DollySight> all() {
        if (sights == null) {
            sights = new LinkedHashMap<>();
            for (String id : ENGINE.read(new IdsKey<>(DollyFacts.class), Progress.NONE)) {
                DollyFacts dolly = ENGINE.read(new FactKey<>(DollyFacts.class, id), Progress.NONE).orElseThrow();
                sights.put(dolly.name(), sight(dolly.name(), id, Optional.empty(), Optional.empty()));
                ENGINE.read(new SubjectsKey(), Progress.NONE).stream().filter(subject -> subject.scope() == Scope.VISIT)
                        .forEach(subject -> {
                            VisitOn on = new VisitOn(subject.ownerId(), subject.visitId().orElseThrow());
                            DollySight sight = sight(dolly.name(), id, Optional.of(on), Optional.empty());
                            sight.stand().ifPresent(stand -> sights.put(dolly.name() + "; " + subject.label(), sight));
                        });
            }
        }
        return sights;
    }

    private static DollySight sight(String name, String id, Optional<VisitOn> on, Optional<String> situation) {
        return ENGINE.read(new DollySightKey(new DollySketchKey(id, on, situation)), Progress.NONE)
                .orElseThrow(() -> new AssertionError(name));
    }

    /** Returns the same in one situation only. */
    static DollySight in(DollySight sight, String situationId) {
        DollyStand stand = sight.stand().orElseThrow();
        VisitOn on = new VisitOn(stand.standing().car().id(), stand.standing().visit().id());
        return sight(sight.dolly().name(), sight.dolly().id(), Optional.of(on), Optional.of(situationId));
    }
}
