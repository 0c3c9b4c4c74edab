package cradlewright.mechanics.mass;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * Turns and shifts points from one frame (say, marks on a shell) to another (say, the floor): p' = R p + t. Immutable.
 */
public final class RigidTransform {

    private final double[][] rotation;
    private final Vec3 shift;

    /**
     * Holds a rotation and a shift.
     *
     * @param rotation 3 x 3, rows square to each other and of length one, determinant +1 (within 1e-9)
     * @param shift in m
     */
    public RigidTransform(double[][] rotation, Vec3 shift) {
        this.shift = Checks.finite(shift, "shift");
        if (rotation.length != 3) {
            throw new IllegalArgumentException("a rotation needs 3 rows, found " + rotation.length);
        }
        this.rotation = new double[3][];
        for (int i = 0; i < 3; i++) {
            if (rotation[i].length != 3) {
                throw new IllegalArgumentException("a rotation needs 3 columns, found " + rotation[i].length);
            }
            this.rotation[i] = rotation[i].clone();
            Checks.finite(row(i), "rotation");
        }
        for (int i = 0; i < 3; i++) {
            Vec3 missed = row((i + 1) % 3).cross(row((i + 2) % 3)).minus(row(i));
            Require.within(missed.norm(), 0, 1e-9, "departure of the matrix from a rotation");
        }
        Require.within(row(0).norm(), 1 - 1e-9, 1 + 1e-9, "length of the first row of the rotation");
    }

    /** Returns where a point of the first frame lies in the second. */
    public Vec3 apply(Vec3 point) {
        return turn(point).plus(shift);
    }

    /** Returns a direction of the first frame as seen in the second: turned, not shifted. */
    public Vec3 turn(Vec3 direction) {
        return new Vec3(row(0).dot(direction), row(1).dot(direction), row(2).dot(direction));
    }

    /** Returns the way back. */
    public RigidTransform inverse() {
        double[][] back = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                back[i][j] = rotation[j][i];
            }
        }
        return new RigidTransform(back, new RigidTransform(back, Vec3.ZERO).turn(shift).times(-1));
    }

    private Vec3 row(int i) {
        return new Vec3(rotation[i][0], rotation[i][1], rotation[i][2]);
    }
}
