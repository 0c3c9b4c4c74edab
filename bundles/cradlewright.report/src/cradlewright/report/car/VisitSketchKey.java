package cradlewright.report.car;

import cradlewright.analysis.checks.TippingLinesKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.standing.StandingKey;
import cradlewright.analysis.standing.WeightKey;
import java.util.List;
import java.util.Optional;

/**
 * What there is to see of a visit before anything is worked out about its loads: quick enough for whoever must not wait. Nothing when the
 * files do not say which parts are on or what they rest on.
 *
 * @param carId the car
 * @param visitId the visit
 */
public record VisitSketchKey(String carId, String visitId) implements Key<Optional<VisitSight>> {

    @Override
    public Optional<VisitSight> compute(Reader reader) {
        return reader.read(new StandingKey(carId, visitId)).map(standing -> new VisitSight(standing,
                reader.read(new WeightKey(carId, visitId)), Loads.none(Situation.atRest(), Loads.Outcome.MISSING, "not worked out yet"),
                reader.read(new TippingLinesKey(carId, visitId)), List.of(), VisitSight.stock(standing, reader), true, false));
    }
}
