package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;

/**
 * A corner or joint of a dolly.
 *
 * @param at place in the axes of the dolly, in m
 */
public record NodeFacts(String id, String name, Optional<Vec3> at) implements Fact {
}
