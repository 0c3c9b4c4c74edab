package cradlewright.mechanics.frame;

/**
 * Internal forces with the place of the cut.
 *
 * @param distance from the near end of the flexible part, m
 * @param forces at the cut
 */
public record StationForces(double distance, InternalForces forces) {
}
