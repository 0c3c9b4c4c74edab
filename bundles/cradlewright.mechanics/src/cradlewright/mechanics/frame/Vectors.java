package cradlewright.mechanics.frame;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/** Small services on pairs of vectors and on small dense matrices. */
final class Vectors {

    private Vectors() {
    }

    static Vec3 finite(Vec3 v, String name) {
        Require.finite(v.x(), name + " x");
        Require.finite(v.y(), name + " y");
        Require.finite(v.z(), name + " z");
        return v;
    }

    static double component(Vec3 shift, Vec3 turn, Dof dof) {
        return switch (dof) {
            case UX -> shift.x();
            case UY -> shift.y();
            case UZ -> shift.z();
            case RX -> turn.x();
            case RY -> turn.y();
            case RZ -> turn.z();
        };
    }

    /** The three numbers from {@code offset} on. */
    static Vec3 vector(double[] numbers, int offset) {
        return new Vec3(numbers[offset], numbers[offset + 1], numbers[offset + 2]);
    }

    static double[] times(double[][] matrix, double[] x) {
        double[] y = new double[matrix.length];
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j < x.length; j++) {
                y[i] += matrix[i][j] * x[j];
            }
        }
        return y;
    }

    static double[] transposedTimes(double[][] matrix, double[] x) {
        double[] y = new double[matrix[0].length];
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j < y.length; j++) {
                y[j] += matrix[i][j] * x[i];
            }
        }
        return y;
    }

    /** a' k a. */
    static double[][] congruent(double[][] a, double[][] k) {
        int n = a[0].length;
        double[][] result = new double[n][n];
        double[][] half = new double[k.length][];
        for (int i = 0; i < k.length; i++) {
            half[i] = transposedTimes(a, k[i]);
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                for (int m = 0; m < k.length; m++) {
                    result[i][j] += a[m][i] * half[m][j];
                }
            }
        }
        return result;
    }
}
