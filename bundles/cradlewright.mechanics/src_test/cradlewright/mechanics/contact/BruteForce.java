package cradlewright.mechanics.contact;

/**
 * The answer by trying every set of shut supports: solves the full bordered equations of each set by elimination with row
 * exchange and takes the first set whose forces push and whose open gaps are open. Shares no code with the solver.
 */
final class BruteForce {

    private BruteForce() {
    }

    /** Returns the forces, or null where no set fits. */
    static double[] solve(double[][] c, double[] g, double[][] e, double[] w) {
        int n = g.length;
        int m = w.length;
        double scale = Math.abs(w[0]);
        for (int set = (1 << n) - 1; set > 0; set--) {
            if (Integer.bitCount(set) < m) {
                continue;
            }
            double[] force = trial(c, g, e, w, set, scale);
            if (force != null) {
                return force;
            }
        }
        return null;
    }

    private static double[] trial(double[][] c, double[] g, double[][] e, double[] w, int set, double scale) {
        int n = g.length;
        int m = w.length;
        double soft = c[0][0];
        int[] at = new int[n];
        int shut = 0;
        for (int i = 0; i < n; i++) {
            if ((set >> i & 1) != 0) {
                at[shut++] = i;
            }
        }
        int size = shut + m;
        double[][] a = new double[size][size + 1];
        for (int i = 0; i < shut; i++) {
            for (int j = 0; j < shut; j++) {
                a[i][j] = c[at[i]][at[j]] / soft;
            }
            for (int k = 0; k < m; k++) {
                a[i][shut + k] = -e[k][at[i]];
                a[shut + k][i] = e[k][at[i]];
            }
            a[i][size] = -g[at[i]] / soft / scale;
        }
        for (int k = 0; k < m; k++) {
            a[shut + k][size] = w[k] / scale;
        }
        double[] x = eliminate(a, size);
        if (x == null) {
            return null;
        }
        double[] force = new double[n];
        for (int i = 0; i < shut; i++) {
            if (x[i] < -1e-9) {
                return null;
            }
            force[at[i]] = x[i] * scale;
        }
        for (int i = 0; i < n; i++) {
            if ((set >> i & 1) == 0) {
                double s = g[i] / soft / scale;
                for (int j = 0; j < shut; j++) {
                    s += c[i][at[j]] / soft * x[j];
                }
                for (int k = 0; k < m; k++) {
                    s -= e[k][i] * x[shut + k];
                }
                if (s < -1e-9) {
                    return null;
                }
            }
        }
        return force;
    }

    private static double[] eliminate(double[][] a, int size) {
        for (int k = 0; k < size; k++) {
            int pivot = k;
            for (int i = k + 1; i < size; i++) {
                if (Math.abs(a[i][k]) > Math.abs(a[pivot][k])) {
                    pivot = i;
                }
            }
            if (Math.abs(a[pivot][k]) < 1e-11) {
                return null;
            }
            double[] swap = a[k];
            a[k] = a[pivot];
            a[pivot] = swap;
            for (int i = k + 1; i < size; i++) {
                double factor = a[i][k] / a[k][k];
                for (int j = k; factor != 0 && j <= size; j++) {
                    a[i][j] -= factor * a[k][j];
                }
            }
        }
        double[] x = new double[size];
        for (int i = size - 1; i >= 0; i--) {
            double sum = a[i][size];
            for (int j = i + 1; j < size; j++) {
                sum -= a[i][j] * x[j];
            }
            x[i] = sum / a[i][i];
        }
        return x;
    }
}
