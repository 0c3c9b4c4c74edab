package cradlewright.mechanics.coupled;

import java.util.Objects;

import cradlewright.mechanics.geometry.Vec3;

/**
 * What one newton of a contact unknown does to one of its two bodies.
 *
 * @param contact id of the contact
 * @param point where, m
 * @param direction unit vector of the force on this body
 */
public record UnitAction(String contact, Vec3 point, Vec3 direction) {

    /** Refuses missing fields. */
    public UnitAction {
        Objects.requireNonNull(contact, "contact");
        Objects.requireNonNull(point, "point");
        Objects.requireNonNull(direction, "direction");
    }
}
