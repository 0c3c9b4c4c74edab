package cradlewright.analysis.load;

import cradlewright.mechanics.geometry.Vec3;
import java.util.List;

/**
 * How a dolly bends in one situation, against a rigid one on the same castors or feet: what these sink is left out, what the dolly bends
 * under its own weight is in it.
 *
 * @param situation what happens
 * @param members each of them
 */
public record DollyShape(Situation situation, List<Bent> members) {

    /** Copies the list. */
    public DollyShape {
        members = List.copyOf(members);
    }

    /**
     * A member.
     *
     * @param memberId the member
     * @param points along its axis, from end to end
     */
    public record Bent(String memberId, List<Moved> points) {

        /** Copies the list. */
        public Bent {
            points = List.copyOf(points);
        }
    }

    /**
     * A point of an axis.
     *
     * @param at where it is on the drawing, in the axes of the dolly, m
     * @param by how far it moves, m
     */
    public record Moved(Vec3 at, Vec3 by) {
    }

    /** Returns the largest movement of any point, m; zero without members. */
    public double largest() {
        return members.stream().flatMap(member -> member.points().stream()).mapToDouble(point -> point.by().norm()).max().orElse(0);
    }
}
