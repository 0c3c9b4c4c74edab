package cradlewright.mechanics.joint;

import cradlewright.mechanics.formula.Require;

/**
 * What a joint has to carry, given at a point of its plane; member end forces turned into the axes of the joint.
 *
 * @param at the point of the plane at which the moments hold
 * @param shearU force along u, N
 * @param shearV force along v, N
 * @param axial force along w, N; positive pulls the part off
 * @param momentU moment about u, N m; positive opens the joint on the side of large v
 * @param momentV moment about v, N m; positive opens the joint on the side of small u
 * @param torsion moment about w in the plane of the joint, N m
 */
public record GroupLoad(PlanePoint at, double shearU, double shearV, double axial, double momentU, double momentV,
        double torsion) {

    /** Refuses values that are not finite. */
    public GroupLoad {
        if (at == null) {
            throw new IllegalArgumentException("a joint load needs its point");
        }
        Require.finite(shearU, "force along u");
        Require.finite(shearV, "force along v");
        Require.finite(axial, "force along w");
        Require.finite(momentU, "moment about u");
        Require.finite(momentV, "moment about v");
        Require.finite(torsion, "moment about w");
    }

    /** Returns the same load with its moments taken about another point of the plane. */
    public GroupLoad movedTo(PlanePoint point) {
        PlanePoint r = at.minus(point);
        return new GroupLoad(point, shearU, shearV, axial, momentU + r.v() * axial, momentV - r.u() * axial,
                torsion + r.u() * shearV - r.v() * shearU);
    }

    /** Returns the load times a factor. */
    public GroupLoad times(double factor) {
        return new GroupLoad(at, shearU * factor, shearV * factor, axial * factor, momentU * factor, momentV * factor,
                torsion * factor);
    }
}
