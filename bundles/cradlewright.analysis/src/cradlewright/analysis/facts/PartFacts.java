package cradlewright.analysis.facts;

import java.util.Optional;

/**
 * A part of a piece.
 *
 * @param mass in kg
 * @param position balance point in the axes of the marks
 * @param temperatureLimit in degrees Celsius above which it is spoiled
 */
public record PartFacts(String id, String name, Optional<Value> mass, Optional<Spot> position, Optional<Value> temperatureLimit)
        implements Fact {
}
