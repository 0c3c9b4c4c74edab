package cradlewright.mechanics.frame;

import cradlewright.mechanics.geometry.Vec3;

/**
 * A force together with a moment about a stated point.
 *
 * @param force N
 * @param moment N*m
 */
public record ForceMoment(Vec3 force, Vec3 moment) {

    /** No force, no moment. */
    public static final ForceMoment ZERO = new ForceMoment(Vec3.ZERO, Vec3.ZERO);

    /** Refuses numbers that are not finite. */
    public ForceMoment {
        Vectors.finite(force, "force");
        Vectors.finite(moment, "moment");
    }

    /** Returns the sum; both moments must stand about the same point. */
    public ForceMoment plus(ForceMoment other) {
        return new ForceMoment(force.plus(other.force), moment.plus(other.moment));
    }

    /** Returns this times {@code factor}. */
    public ForceMoment times(double factor) {
        return new ForceMoment(force.times(factor), moment.times(factor));
    }

    /** Returns the same action with its moment about a point from which the present point of reference lies at {@code arm}. */
    public ForceMoment seenFrom(Vec3 arm) {
        return new ForceMoment(force, moment.plus(arm.cross(force)));
    }

    /** Returns the work done on a small motion of the point of reference, N*m. */
    public double work(Motion motion) {
        return force.dot(motion.translation()) + moment.dot(motion.rotation());
    }

    double component(Dof dof) {
        return Vectors.component(force, moment, dof);
    }
}
