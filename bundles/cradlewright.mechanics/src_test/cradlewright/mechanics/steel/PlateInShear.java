package cradlewright.mechanics.steel;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;

/**
 * Buckling of an endless plate in shear between two hinged edges, by the energy of waves w = f(y) cos(k x) + g(y) sin(k x)
 * over the width 1: bending D (k2 + m2 pi2)2 per sine term, work of the shear 2 t w'x w'y. Terms of f have odd, those of g
 * even half waves, for only they meet in the work.
 */
final class PlateInShear {

    private static final int TERMS = 10;

    private PlateInShear() {
    }

    /** Factor of pi2 D/h2 at which the plate buckles in waves of the number {@code wave} per width. */
    static double factor(double wave) {
        double[][] work = new double[TERMS][TERMS];
        for (int i = 0; i < TERMS; i++) {
            for (int j = 0; j < TERMS; j++) {
                int m = i + 1;
                int n = j + 1;
                if ((m + n) % 2 == 1) {
                    // integral of sin(m pi y) times the slope of sin(n pi y), made symmetric; sign by which of the two is odd
                    double meet = 2.0 * m * n / (m * m - n * n);
                    work[i][j] = (m % 2 == 1 ? 1 : -1) * 2 * wave * meet / Math.sqrt(bending(m, wave) * bending(n, wave));
                }
            }
        }
        double largest = 0;
        for (double value : new EigenDecompositionSymmetric(new Array2DRowRealMatrix(work)).getEigenvalues()) {
            largest = Math.max(largest, value);
        }
        return 1 / (largest * Math.PI * Math.PI);
    }

    private static double bending(int halfWaves, double wave) {
        double square = wave * wave + halfWaves * halfWaves * Math.PI * Math.PI;
        return square * square / 2;
    }
}
