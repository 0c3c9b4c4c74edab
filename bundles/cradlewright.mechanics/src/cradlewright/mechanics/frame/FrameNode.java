package cradlewright.mechanics.frame;

import java.util.Objects;

import cradlewright.mechanics.geometry.Vec3;

/**
 * A joint at which members meet.
 *
 * @param name unique in its frame
 * @param position m
 */
public record FrameNode(String name, Vec3 position) {

    /** Refuses a missing name and positions that are not finite. */
    public FrameNode {
        Objects.requireNonNull(name, "node name");
        Vectors.finite(position, "position of node " + name);
    }
}
