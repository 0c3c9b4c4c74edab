package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

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
 * @param shimTarget the heights that the shims are to reproduce; nothing when nobody said
 * @param weather whether wind and rain reach it
 */
public record SetupFacts(String id, String name, List<String> pieceIds, CarrierKind kind, Optional<String> dollyId,
        Optional<String> liftId, Optional<String> hoistId, Vec3 shift, double heading, List<ContactFacts> contacts,
        Optional<ShimTarget> shimTarget, Weather weather) implements Fact {

    /** The heights that shims are to reproduce. */
    public enum ShimTarget {
        /** Those of the stacks that were found. */
        AS_FOUND,
        /** Those of the drawing, as the places of the mounts say. */
        DRAWING,
        /** Gaps were measured instead. */
        MEASURED
    }

    /**
     * Whether wind and rain reach it; empty where nobody said.
     *
     * @param outdoors whether wind can reach it
     * @param covered whether a cover lies over it
     */
    public record Weather(Optional<Boolean> outdoors, Optional<Boolean> covered) {

        /** Nobody said anything. */
        public static final Weather UNKNOWN = new Weather(Optional.empty(), Optional.empty());
    }

    /** Returns the ids of the dolly, the lift, the hoist and whatever else it stands or hangs on. */
    public Set<String> carrierIds() {
        Set<String> named = new LinkedHashSet<>();
        Stream.of(dollyId, liftId, hoistId).flatMap(Optional::stream).forEach(named::add);
        contacts.stream().map(ContactFacts::carrierId).flatMap(Optional::stream).forEach(named::add);
        return Collections.unmodifiableSet(named);
    }

    /** Returns this setup with one of its contacts replaced by that of the same id. */
    public SetupFacts with(ContactFacts contact) {
        return new SetupFacts(id, name, pieceIds, kind, dollyId, liftId, hoistId, shift, heading, CarFacts.replace(contacts, contact),
                shimTarget, weather);
    }

    /**
     * Returns this setup below another lift or hoist.
     *
     * @param gear a lift or a hoist
     * @param named the contacts, naming what carries them there
     */
    public SetupFacts below(GearFacts gear, List<ContactFacts> named) {
        boolean lift = gear instanceof GearFacts.Lift;
        Optional<String> other = Optional.of(gear.id());
        return new SetupFacts(id, name, pieceIds, kind, dollyId, lift ? other : Optional.empty(), lift ? Optional.empty() : other, shift,
                heading, named, shimTarget, weather);
    }

    /** Returns this setup with the car moved by that much in the axes of the carrier, m. */
    public SetupFacts moved(Vec3 by) {
        return new SetupFacts(id, name, pieceIds, kind, dollyId, liftId, hoistId, shift.plus(by), heading, contacts,
                shimTarget, weather);
    }
}
