package cradlewright.mechanics.contact;

import java.util.Objects;

import cradlewright.mechanics.geometry.Vec3;

/**
 * The motion with which a body starts to go: read from the dual ray of the tipping limit.
 *
 * @param kind what it does
 * @param axisPoint for a rotation the point of its axis nearest to the origin, m; else the origin
 * @param direction for a rotation the unit direction of the axis, right-handed in the sense of the motion; for a slide the
 *        unit direction it goes; else zero
 */
public record FallMotion(Kind kind, Vec3 axisPoint, Vec3 direction) {

    /** What a body does when it goes. */
    public enum Kind {
        /** Turns over the line through the contacts that stay shut. */
        TIPS,
        /** Slides or rolls along its contacts, or swivels on them. */
        SLIDES,
        /** No contact stays shut: nothing holds it. */
        UNSUPPORTED,
        /** Stays where it is. */
        STAYS
    }

    private static final double SMALL = 1e-8;

    /** Refuses missing fields. */
    public FallMotion {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(axisPoint, "axis point");
        Objects.requireNonNull(direction, "direction");
    }

    /**
     * Reads a small rigid motion.
     *
     * @param shift movement of the material at the origin, m
     * @param rotation rad
     * @param length size of the body, m, that makes shift and rotation comparable
     * @param shiftScale the largest movement of all bodies, against which nothing counts as nothing
     * @param anyShut whether a contact of the body stays shut
     */
    static FallMotion read(Vec3 shift, Vec3 rotation, double length, double shiftScale, boolean anyShut) {
        double turn = rotation.norm();
        if (Math.max(shift.norm(), turn * length) <= SMALL * shiftScale) {
            return new FallMotion(Kind.STAYS, Vec3.ZERO, Vec3.ZERO);
        }
        boolean turns = turn * length > SMALL * Math.max(shift.norm(), shiftScale);
        Vec3 point = turns ? rotation.cross(shift).times(1 / (turn * turn)) : Vec3.ZERO;
        Vec3 direction = turns ? rotation.unit() : shift.unit();
        if (!anyShut) {
            return new FallMotion(Kind.UNSUPPORTED, point, direction);
        }
        boolean swivels = turns && Math.hypot(direction.x(), direction.y()) <= SMALL;
        return new FallMotion(turns && !swivels ? Kind.TIPS : Kind.SLIDES, point, direction);
    }
}
