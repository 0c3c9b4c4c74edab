package cradlewright.mechanics.frame;

import java.util.Objects;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * A point fixed to a frame: at the end of a rigid arm that grows from a node or from a station of a member.
 *
 * @param onMember true for a station of a member, false for a node
 * @param owner name of the member or of the node
 * @param distance of the station from the near end of the flexible part, m; 0 for a node
 * @param arm from the node or station to the point, global axes, m
 */
public record FramePoint(boolean onMember, String owner, double distance, Vec3 arm) {

    /** Refuses missing parts and a station before the near end. */
    public FramePoint {
        Objects.requireNonNull(owner, "owner of the point");
        Require.notNegative(distance, "distance along " + owner);
        Vectors.finite(arm, "arm at " + owner);
        if (!onMember && distance != 0) {
            throw new IllegalArgumentException("a point at node " + owner + " has no distance along a member: " + distance);
        }
    }

    /** Returns the node itself. */
    public static FramePoint node(String name) {
        return new FramePoint(false, name, 0, Vec3.ZERO);
    }

    /** Returns a point at the end of a rigid arm that grows from a node. */
    public static FramePoint node(String name, Vec3 arm) {
        return new FramePoint(false, name, 0, arm);
    }

    /** Returns a point on the axis of a member. */
    public static FramePoint member(String name, double distance) {
        return new FramePoint(true, name, distance, Vec3.ZERO);
    }

    /** Returns a point at the end of a rigid arm that grows from the axis of a member. */
    public static FramePoint member(String name, double distance, Vec3 arm) {
        return new FramePoint(true, name, distance, arm);
    }
}
