package cradlewright.mechanics.frame;

import cradlewright.mechanics.geometry.Vec3;

/**
 * A small movement of a point with the material around it.
 *
 * @param translation m
 * @param rotation rad, right-handed about each axis
 */
public record Motion(Vec3 translation, Vec3 rotation) {

    /** Refuses numbers that are not finite. */
    public Motion {
        Vectors.finite(translation, "translation");
        Vectors.finite(rotation, "rotation");
    }

    /** Returns the movement of a point that is fixed rigidly to this one at the distance {@code arm}. */
    public Motion at(Vec3 arm) {
        return new Motion(translation.plus(rotation.cross(arm)), rotation);
    }

    /** Returns one component. */
    public double component(Dof dof) {
        return Vectors.component(translation, rotation, dof);
    }
}
