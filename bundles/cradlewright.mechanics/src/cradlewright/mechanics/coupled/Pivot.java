package cradlewright.mechanics.coupled;

import cradlewright.mechanics.geometry.Vec3;
import java.util.Objects;
import java.util.Set;

/**
 * A pin about which one part of a body turns freely, such as the rocking end of a dolly: what pushes that part must balance about the
 * pin by itself. Only the upright pushes of its contacts count; sideways forces at the floor act below the pin and would press the part
 * down on the side to which the body is pushed, so leaving them out lets it tip a little sooner.
 *
 * @param point a point of the pin
 * @param axis direction of the pin, of any length above zero
 * @param contacts ids of the contacts under the part that turns
 * @param load weight of the part that turns, N
 * @param loadAt balance point of the part that turns
 */
public record Pivot(Vec3 point, Vec3 axis, Set<String> contacts, Vec3 load, Vec3 loadAt) {

    /** Refuses a pin without a direction. */
    public Pivot {
        Objects.requireNonNull(point, "point of the pin");
        Objects.requireNonNull(load, "load beyond the pin");
        Objects.requireNonNull(loadAt, "balance point beyond the pin");
        contacts = Set.copyOf(contacts);
        if (!(axis.norm() > 0)) {
            throw new IllegalArgumentException("the pin needs a direction, found " + axis);
        }
        axis = axis.unit();
    }

    /** Returns the turning moment of the weight about the pin, N*m. */
    double ownMoment() {
        return moment(loadAt, load);
    }

    /** Returns the turning moment about the pin of a force at a point, N*m for a force in N. */
    double moment(Vec3 at, Vec3 force) {
        return at.minus(point).cross(force).dot(axis);
    }
}
