package cradlewright.mechanics.frame;

import java.util.Objects;

import cradlewright.mechanics.geometry.Vec3;

/**
 * One unit of contact action on a body: what one newton (or one newton metre) of the unknown does at its point.
 *
 * @param point where it acts
 * @param force global axes, N per unit; a unit vector, or zero for a pure couple
 * @param moment about the point, global axes, N*m per unit
 */
public record ContactDof(FramePoint point, Vec3 force, Vec3 moment) {

    private static final double UNIT = 1e-9;

    /** Refuses a force that is neither a unit vector nor zero, and an action without force and moment. */
    public ContactDof {
        Objects.requireNonNull(point, "contact point");
        Vectors.finite(force, "contact direction");
        Vectors.finite(moment, "contact moment");
        double length = force.norm();
        if (length > 0 && Math.abs(length - 1) > UNIT) {
            throw new IllegalArgumentException("contact direction must be a unit vector, found length " + length);
        }
        if (length == 0 && moment.norm() == 0) {
            throw new IllegalArgumentException("a contact needs a force or a moment");
        }
    }

    /** Returns a push along a unit vector without moment. */
    public static ContactDof push(FramePoint point, Vec3 direction) {
        return new ContactDof(point, direction, Vec3.ZERO);
    }

    /** Returns the action on the body per unit, moment about the contact point. */
    public ForceMoment action() {
        return new ForceMoment(force, moment);
    }
}
