package cradlewright.analysis.dolly;

import cradlewright.mechanics.geometry.Vec3;
import java.util.Set;

/**
 * The part of a dolly that turns freely about a pin along it, so that all castors touch an uneven floor. Stops that end the turn are
 * not looked at.
 *
 * @param pin a point of the pin, in the axes of the dolly
 * @param axis direction of the pin
 * @param nodeIds nodes of the part that turns
 * @param mass mass of the part that turns, kg
 * @param centre its balance point
 */
public record RockingEnd(Vec3 pin, Vec3 axis, Set<String> nodeIds, double mass, Vec3 centre) {

    /** Copies the set. */
    public RockingEnd {
        nodeIds = Set.copyOf(nodeIds);
    }
}
