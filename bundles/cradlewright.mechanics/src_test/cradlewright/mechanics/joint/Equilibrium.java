package cradlewright.mechanics.joint;

/**
 * Independent route for the tests: the forces of least sum of squares among all that balance a load, found by plain linear
 * algebra without centroids or second moments. For equal elastic bolts that sum is the strain energy.
 */
final class Equilibrium {

    private Equilibrium() {
    }

    /** Solves min |f|2 with A f = w as f = A'(A A')^-1 w. */
    static double[] leastNorm(double[][] a, double[] w) {
        int m = a.length;
        int n = a[0].length;
        double[][] g = new double[m][m];
        for (int i = 0; i < m; i++) {
            for (int j = 0; j < m; j++) {
                for (int k = 0; k < n; k++) {
                    g[i][j] += a[i][k] * a[j][k];
                }
            }
        }
        double[] q = solve(g, w.clone());
        double[] f = new double[n];
        for (int k = 0; k < n; k++) {
            for (int i = 0; i < m; i++) {
                f[k] += a[i][k] * q[i];
            }
        }
        return f;
    }

    private static double[] solve(double[][] g, double[] w) {
        int m = w.length;
        for (int c = 0; c < m; c++) {
            int pivot = c;
            for (int r = c + 1; r < m; r++) {
                if (Math.abs(g[r][c]) > Math.abs(g[pivot][c])) {
                    pivot = r;
                }
            }
            double[] row = g[c];
            g[c] = g[pivot];
            g[pivot] = row;
            double value = w[c];
            w[c] = w[pivot];
            w[pivot] = value;
            for (int r = c + 1; r < m; r++) {
                double factor = g[r][c] / g[c][c];
                for (int k = c; k < m; k++) {
                    g[r][k] -= factor * g[c][k];
                }
                w[r] -= factor * w[c];
            }
        }
        for (int c = m - 1; c >= 0; c--) {
            for (int k = c + 1; k < m; k++) {
                w[c] -= g[c][k] * w[k];
            }
            w[c] /= g[c][c];
        }
        return w;
    }
}
