package cradlewright.analysis.standing;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import java.util.Optional;

/**
 * A visit with its references resolved; nothing when the car, the visit, its stage or its setup is missing.
 *
 * @param carId the car
 * @param visitId the visit
 */
public record StandingKey(String carId, String visitId) implements Key<Optional<Standing>> {

    @Override
    public Optional<Standing> compute(Reader reader) {
        return reader.read(new FactKey<>(CarFacts.class, carId)).flatMap(car -> new StandingResolver(reader, car).resolve(visitId));
    }
}
