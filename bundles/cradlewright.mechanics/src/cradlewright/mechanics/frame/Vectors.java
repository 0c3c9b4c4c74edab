package cradlewright.mechanics.frame;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/** Small services on pairs of vectors and on small dense matrices. */
final class Vectors {

    private Vectors() {
    }

    static Vec3 finite(Vec3 v, String name) {
        // Names are put together only for a message: this guards every force and movement.
        if (!(Double.isFinite(v.x()) && Double.isFinite(v.y()) && Double.isFinite(v.z()))) {
            Require.finite(v.x(), name + " x");
            Require.finite(v.y(), name + " y");
            Require.finite(v.z(), name + " z");
        }
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
            double[] row = matrix[i];
            double sum = 0;
            for (int j = 0; j < x.length; j++) {
                sum += row[j] * x[j];
            }
            y[i] = sum;
        }
        return y;
    }

    static double[] transposedTimes(double[][] matrix, double[] x) {
        double[] y = new double[matrix[0].length];
        for (int i = 0; i < matrix.length; i++) {
            double[] row = matrix[i];
            double factor = x[i];
            for (int j = 0; j < y.length; j++) {
                y[j] += row[j] * factor;
            }
        }
        return y;
    }

    /** a' k a. */
    static double[][] congruent(double[][] a, double[][] k) {
        int n = a[0].length;
        double[][] result = new double[n][n];
        for (int m = 0; m < k.length; m++) {
            double[] half = transposedTimes(a, k[m]);
            for (int i = 0; i < n; i++) {
                addTimes(result[i], a[m][i], half);
            }
        }
        return result;
    }

    /** Adds {@code factor} times another vector. */
    static void addTimes(double[] target, double factor, double[] other) {
        if (factor != 0) {
            for (int i = 0; i < target.length; i++) {
                target[i] += factor * other[i];
            }
        }
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
