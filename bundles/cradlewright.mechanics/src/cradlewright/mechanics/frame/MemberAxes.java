package cradlewright.mechanics.frame;

import cradlewright.mechanics.geometry.Vec3;

/**
 * Where the flexible part of a member lies and how it is turned. x runs along the member, z towards the reference vector,
 * y = z cross x: for a member along the global x with reference vector up, the member axes are the global ones.
 *
 * @param origin near end of the flexible part, m
 * @param length of the flexible part, m
 * @param x unit vector along the member
 * @param y unit vector
 * @param z unit vector
 */
public record MemberAxes(Vec3 origin, double length, Vec3 x, Vec3 y, Vec3 z) {

    private static final double PARALLEL = 1e-6;

    static MemberAxes of(FrameMember member, Vec3 near, Vec3 far) {
        Vec3 origin = near.plus(member.rigidFrom());
        Vec3 along = far.plus(member.rigidTo()).minus(origin);
        double length = along.norm();
        if (!(length > 0)) {
            throw new IllegalArgumentException("member " + member.name() + " has no length between its ends");
        }
        if (along.dot(far.minus(near)) < 0) {
            throw new IllegalArgumentException("the rigid ends of member " + member.name() + " overlap");
        }
        Vec3 x = along.unit();
        Vec3 across = member.up().cross(x);
        if (!(across.norm() > PARALLEL * member.up().norm())) {
            throw new IllegalArgumentException("the reference vector of member " + member.name() + " must not lie along it");
        }
        Vec3 y = across.unit();
        return new MemberAxes(origin, length, x, y, x.cross(y));
    }

    /** Returns the components of a global vector along the member axes. */
    public Vec3 toMember(Vec3 global) {
        return new Vec3(global.dot(x), global.dot(y), global.dot(z));
    }

    /** Returns the global vector of components along the member axes. */
    public Vec3 toGlobal(Vec3 member) {
        return x.times(member.x()).plus(y.times(member.y())).plus(z.times(member.z()));
    }

    /** Returns the point of the member axis at a distance from the near end of the flexible part. */
    public Vec3 point(double distance) {
        return origin.plus(x.times(distance));
    }
}
