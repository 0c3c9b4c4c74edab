package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * What rests on what.
 *
 * @param pieceIds pieces that are carried
 * @param kind what carries them
 * @param dollyId the dolly
 * @param liftId the lift
 * @param hoistId the hoist
 * @param shift from the axes of the car to those of the carrier, in m
 * @param heading turn about the upright axis, in rad
 * @param contacts where they touch
 */
public record SetupFacts(String id, String name, List<String> pieceIds, CarrierKind kind, Optional<String> dollyId,
        Optional<String> liftId, Optional<String> hoistId, Vec3 shift, double heading, List<ContactFacts> contacts) implements Fact {
}
