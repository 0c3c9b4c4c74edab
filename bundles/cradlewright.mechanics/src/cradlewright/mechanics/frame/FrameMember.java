package cradlewright.mechanics.frame;

import java.util.Objects;
import java.util.Set;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * A straight prismatic member between two nodes. Rigid ends lead from each node to the end of the flexible part; releases
 * sit between the rigid end and the flexible part.
 *
 * @param name unique in its frame
 * @param from node at the near end
 * @param to node at the far end
 * @param section stiffness
 * @param up any vector in the plane of the member axis and its local z axis, on the side of z
 * @param rigidFrom from the near node to the near end of the flexible part, global axes, m
 * @param rigidTo from the far node to the far end of the flexible part, global axes, m
 * @param releasedFrom freedoms of the near end, member axes, through which nothing passes
 * @param releasedTo freedoms of the far end, member axes, through which nothing passes
 * @param density for the own weight, kg/m3; 0 leaves it out
 */
public record FrameMember(String name, String from, String to, MemberSection section, Vec3 up, Vec3 rigidFrom, Vec3 rigidTo,
        Set<Dof> releasedFrom, Set<Dof> releasedTo, double density) {

    /** Refuses missing parts, a member that begins and ends at one node and a density below zero. */
    public FrameMember {
        Objects.requireNonNull(name, "member name");
        Objects.requireNonNull(from, "near node of member " + name);
        Objects.requireNonNull(to, "far node of member " + name);
        Objects.requireNonNull(section, "section of member " + name);
        Vectors.finite(up, "reference vector of member " + name);
        Vectors.finite(rigidFrom, "near rigid end of member " + name);
        Vectors.finite(rigidTo, "far rigid end of member " + name);
        Require.notNegative(density, "density of member " + name);
        releasedFrom = Set.copyOf(releasedFrom);
        releasedTo = Set.copyOf(releasedTo);
        if (from.equals(to)) {
            throw new IllegalArgumentException("member " + name + " begins and ends at node " + from);
        }
    }

    /** Returns a member joined rigidly to its nodes, without rigid ends and weight. */
    public static FrameMember of(String name, String from, String to, MemberSection section, Vec3 up) {
        return new FrameMember(name, from, to, section, up, Vec3.ZERO, Vec3.ZERO, Set.of(), Set.of(), 0);
    }

    /** Returns the same member with rigid ends. */
    public FrameMember withRigidEnds(Vec3 near, Vec3 far) {
        return new FrameMember(name, from, to, section, up, near, far, releasedFrom, releasedTo, density);
    }

    /** Returns the same member with just these freedoms of the near end released, whatever was released there before. */
    public FrameMember releasedNear(Dof... dofs) {
        return new FrameMember(name, from, to, section, up, rigidFrom, rigidTo, Set.of(dofs), releasedTo, density);
    }

    /** Returns the same member with just these freedoms of the far end released, whatever was released there before. */
    public FrameMember releasedFar(Dof... dofs) {
        return new FrameMember(name, from, to, section, up, rigidFrom, rigidTo, releasedFrom, Set.of(dofs), density);
    }

    /** Returns the same member of a material of {@code density} kg/m3. */
    public FrameMember withDensity(double newDensity) {
        return new FrameMember(name, from, to, section, up, rigidFrom, rigidTo, releasedFrom, releasedTo, newDensity);
    }
}
