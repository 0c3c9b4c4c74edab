package cradlewright.mechanics.contact;

/** The few loops on small dense arrays that the contact solver needs. */
final class Dense {

    private Dense() {
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    static double norm(double[] a) {
        return Math.sqrt(dot(a, a));
    }

    static void addTimes(double[] target, double factor, double[] other) {
        for (int i = 0; i < target.length; i++) {
            target[i] += factor * other[i];
        }
    }

    /** Cholesky factor of the matrix, or null where a pivot falls below {@code tolerance} of its diagonal. */
    static double[][] cholesky(double[][] matrix, double tolerance) {
        int n = matrix.length;
        double[][] l = new double[n][n];
        for (int i = 0; i < n; i++) {
            double[] li = l[i];
            for (int j = 0; j <= i; j++) {
                double[] lj = l[j];
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= li[k] * lj[k];
                }
                if (j < i) {
                    li[j] = sum / lj[j];
                } else if (sum > tolerance * matrix[i][i]) {
                    li[i] = Math.sqrt(sum);
                } else {
                    return null;
                }
            }
        }
        return l;
    }

    /** Solves L x = b in place. */
    static void forward(double[][] l, double[] b) {
        for (int i = 0; i < b.length; i++) {
            double sum = b[i];
            for (int k = 0; k < i; k++) {
                sum -= l[i][k] * b[k];
            }
            b[i] = sum / l[i][i];
        }
    }

    /** Solves L'x = b in place. */
    static void backward(double[][] l, double[] b) {
        for (int i = b.length - 1; i >= 0; i--) {
            b[i] /= l[i][i];
            for (int k = 0; k < i; k++) {
                b[k] -= l[i][k] * b[i];
            }
        }
    }
}
