package cradlewright.report.dolly;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.load.SituationsKey;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.StandingKey;
import java.util.List;
import java.util.Optional;

/**
 * What there is to see of a dolly before anything is worked out about it: quick enough for whoever must not wait. Nothing when there is
 * no such dolly.
 *
 * @param dollyId the dolly
 * @param on the visit that stands on it; one that stands on something else shows the dolly empty
 * @param situationId what happens; nothing, or one that there is not, for the worst of all
 */
public record DollySketchKey(String dollyId, Optional<VisitOn> on, Optional<String> situationId) implements Key<Optional<DollySight>> {

    /** A visit of a car. */
    public record VisitOn(String carId, String visitId) {
    }

    @Override
    public Optional<DollySight> compute(Reader reader) {
        return reader.read(new FactKey<>(DollyFacts.class, dollyId)).map(dolly -> new DollySight(dolly,
                DollyStock.read(DollyStock.ids(dolly), reader), stand(reader)));
    }

    private Optional<DollyStand> stand(Reader reader) {
        return standing(reader).map(standing -> {
            List<Situation> all = reader.read(new SituationsKey(standing.car().id(), standing.visit().id()));
            return new DollyStand(standing, all, situationId.flatMap(id -> all.stream().filter(each -> each.id().equals(id)).findFirst()),
                    List.of(), Optional.empty(), List.of(), true);
        });
    }

    private Optional<Standing> standing(Reader reader) {
        return on.flatMap(visit -> reader.read(new StandingKey(visit.carId(), visit.visitId())))
                .filter(standing -> standing.dolly().filter(under -> under.id().equals(dollyId)).isPresent());
    }
}
