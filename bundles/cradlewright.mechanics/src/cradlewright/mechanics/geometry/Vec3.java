package cradlewright.mechanics.geometry;

/**
 * Immutable vector or point in right-handed axes: x rearward, y to the right, z up (ISO 4130). Lengths in m, forces in N.
 *
 * @param x rearward component
 * @param y component to the right
 * @param z upward component
 */
public record Vec3(double x, double y, double z) {

    /** The origin. */
    public static final Vec3 ZERO = new Vec3(0, 0, 0);
    /** One unit upward. */
    public static final Vec3 UP = new Vec3(0, 0, 1);

    /** Returns this plus {@code o}. */
    public Vec3 plus(Vec3 o) {
        return new Vec3(x + o.x, y + o.y, z + o.z);
    }

    /** Returns this minus {@code o}. */
    public Vec3 minus(Vec3 o) {
        return new Vec3(x - o.x, y - o.y, z - o.z);
    }

    /** Returns this times {@code s}. */
    public Vec3 times(double s) {
        return new Vec3(x * s, y * s, z * s);
    }

    /** Returns the scalar product. */
    public double dot(Vec3 o) {
        return x * o.x + y * o.y + z * o.z;
    }

    /** Returns the vector product, this cross {@code o}. */
    public Vec3 cross(Vec3 o) {
        return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    /** Returns the length. */
    public double norm() {
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** Returns the vector of length one; throws IllegalArgumentException for a vector without length. */
    public Vec3 unit() {
        double n = norm();
        if (!(n > 0) || Double.isInfinite(n)) {
            throw new IllegalArgumentException("a direction needs a finite length above zero: " + this);
        }
        return times(1 / n);
    }
}
