package cradlewright.report.car;

import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.load.LoadsKey;
import cradlewright.analysis.load.Situation;
import java.util.Optional;

/**
 * What there is to see of a visit, without answers; nothing when the files do not say which parts are on or what they rest on.
 *
 * @param carId the car
 * @param visitId the visit
 */
public record VisitSightKey(String carId, String visitId) implements Key<Optional<VisitSight>> {

    @Override
    public Optional<VisitSight> compute(Reader reader) {
        return reader.read(new VisitSketchKey(carId, visitId))
                .map(sketch -> sketch.withLoads(reader.read(new LoadsKey(carId, visitId, Situation.atRest(), false))));
    }
}
