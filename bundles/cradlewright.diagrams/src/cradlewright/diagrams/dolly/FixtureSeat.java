package cradlewright.diagrams.dolly;

import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;

/**
 * Where a fixture stands and how its head lies over that; lengths in m.
 *
 * @param base point of a corner, or of a member at its start
 * @param rail the member it stands on; nothing for a corner
 * @param distance from the start of the member
 * @param offset of the head, level
 * @param height of the head
 */
record FixtureSeat(Vec3 base, Optional<Rail> rail, double distance, Vec3 offset, double height) {

    /** A member: its way and its length. */
    record Rail(Vec3 way, double length) {

        static Rail of(Vec3 from, Vec3 to) {
            return new Rail(to.minus(from).unit(), to.minus(from).norm());
        }
    }

    /** Returns where its head is. */
    Vec3 head() {
        return foot().plus(offset).plus(Vec3.UP.times(height));
    }

    private Vec3 foot() {
        return rail.map(on -> base.plus(on.way.times(distance))).orElse(base);
    }

    /** Returns it with its head elsewhere: along a member the foot goes along, up and down the height changes, else the offset does. */
    FixtureSeat headAt(Vec3 to) {
        Vec3 by = to.minus(head());
        double along = rail.map(on -> Math.max(0, Math.min(on.length, distance + by.dot(on.way))) - distance).orElse(0.0);
        Vec3 rest = by.minus(rail.map(on -> on.way.times(along)).orElse(Vec3.ZERO));
        return new FixtureSeat(base, rail, distance + along, offset.plus(new Vec3(rest.x(), rest.y(), 0)), height + rest.z());
    }
}
