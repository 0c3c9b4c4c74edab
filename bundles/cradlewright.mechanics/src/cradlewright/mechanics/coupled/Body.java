package cradlewright.mechanics.coupled;

import java.util.Objects;
import java.util.Optional;

import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.geometry.Vec3;

/**
 * A body that takes part in a contact calculation.
 *
 * @param id its name, unique in the problem
 * @param loads sum of all loads that are not contacts, N and N m about the origin
 * @param flexibility how it gives; empty for a rigid body
 */
public record Body(String id, ForceMoment loads, Optional<Flexibility> flexibility) {

    /** Refuses missing fields and an empty id. */
    public Body {
        Objects.requireNonNull(loads, "loads");
        Objects.requireNonNull(flexibility, "flexibility");
        if (id.isBlank()) {
            throw new IllegalArgumentException("a body needs an id");
        }
    }

    /** Returns a rigid body. */
    public static Body rigid(String id, ForceMoment loads) {
        return new Body(id, loads, Optional.empty());
    }

    /** Returns an elastic body, whose loads are those that make it sag. */
    public static Body elastic(String id, Flexibility flexibility) {
        return new Body(id, flexibility.loads(), Optional.of(flexibility));
    }

    /** Returns the same body taken as rigid. */
    public Body asRigid() {
        return rigid(id, loads);
    }

    /**
     * Returns the weight of a mass as a load about the origin.
     *
     * @param mass kg, at or above zero
     * @param balance balance point, m
     */
    public static ForceMoment weight(double mass, Vec3 balance) {
        return force(balance, new Vec3(0, 0, -Require.notNegative(mass, "mass") * Constants.GRAVITY));
    }

    /** Returns a force (N) at a point (m) as a load about the origin. */
    public static ForceMoment force(Vec3 point, Vec3 force) {
        return new ForceMoment(force, point.cross(force));
    }
}
