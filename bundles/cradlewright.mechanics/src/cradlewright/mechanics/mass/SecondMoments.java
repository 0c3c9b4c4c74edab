package cradlewright.mechanics.mass;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * Second moments of mass about axes through a stated point, kg m2.
 *
 * <p>{@code xx} is the moment of inertia about the x axis, sum m (y2 + z2); {@code xy} is the product of inertia, sum m x y, so
 * that the inertia tensor carries it with a minus sign.
 *
 * @param xx about x
 * @param yy about y
 * @param zz about z
 * @param xy product of x and y
 * @param xz product of x and z
 * @param yz product of y and z
 */
public record SecondMoments(double xx, double yy, double zz, double xy, double xz, double yz) {

    /** No extent at all: a part taken as a point. */
    public static final SecondMoments ZERO = new SecondMoments(0, 0, 0, 0, 0, 0);

    /** Refuses values that are not finite and moments of inertia below zero. */
    public SecondMoments {
        Require.notNegative(xx, "moment of inertia about x");
        Require.notNegative(yy, "moment of inertia about y");
        Require.notNegative(zz, "moment of inertia about z");
        Require.finite(xy, "product of inertia xy");
        Require.finite(xz, "product of inertia xz");
        Require.finite(yz, "product of inertia yz");
    }

    /** Returns those of a point of {@code mass} kg at {@code r} m from the reference point. */
    public static SecondMoments ofPoint(double mass, Vec3 r) {
        Require.notNegative(mass, "mass");
        Checks.finite(r, "distance");
        double x = r.x();
        double y = r.y();
        double z = r.z();
        return new SecondMoments(mass * (y * y + z * z), mass * (x * x + z * z), mass * (x * x + y * y), mass * x * y,
                mass * x * z, mass * y * z);
    }

    /** Returns those of an evenly filled box with the given edges in m, about its middle: m (b2 + c2)/12 about the edge a. */
    public static SecondMoments ofBox(double mass, double lengthX, double lengthY, double lengthZ) {
        Require.notNegative(mass, "mass");
        Require.notNegative(lengthX, "length along x");
        Require.notNegative(lengthY, "length along y");
        Require.notNegative(lengthZ, "length along z");
        double x2 = lengthX * lengthX;
        double y2 = lengthY * lengthY;
        double z2 = lengthZ * lengthZ;
        return new SecondMoments(mass * (y2 + z2) / 12, mass * (x2 + z2) / 12, mass * (x2 + y2) / 12, 0, 0, 0);
    }

    /** Returns the sum; both must be about the same point. */
    public SecondMoments plus(SecondMoments o) {
        return new SecondMoments(xx + o.xx, yy + o.yy, zz + o.zz, xy + o.xy, xz + o.xz, yz + o.yz);
    }

    /** Returns the moment of inertia, kg m2, about the axis through the reference point along {@code direction}. */
    public double about(Vec3 direction) {
        Vec3 u = direction.unit();
        return xx * u.x() * u.x() + yy * u.y() * u.y() + zz * u.z() * u.z()
                - 2 * (xy * u.x() * u.y() + xz * u.x() * u.z() + yz * u.y() * u.z());
    }
}
