package cradlewright.mechanics.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.section.Plate;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Buckling factors by an independent route: energy of a long plate in half waves, polynomials across the width. */
class PlateEnergyTest {

    private static final int TERMS = 7;
    private static final int STEPS = 120;
    private static final double POISSON = 0.3;

    @Test
    void factorsMeetTheEnergySolution() {
        for (double psi : new double[] {1, 0.5, 0, -0.5, -1, -2}) {
            double table = PlateBuckling.factor(Plate.Kind.INTERNAL, new PlateStress(1, psi));
            assertEquals(energy(Plate.Kind.INTERNAL, 1, psi), table, 0.03 * table, "internal, psi " + psi);
        }
        for (double psi : new double[] {1, 0.5, 0, -0.5, -1}) {
            double table = PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(psi, 1));
            assertEquals(energy(Plate.Kind.OUTSTAND, psi, 1), table, 0.03 * table, "tip leads, psi " + psi);
        }
        assertTrue(PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(-2, 1)) < energy(Plate.Kind.OUTSTAND, -2, 1),
                "below psi -1 the table is on the safe side");
        assertTrue(PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(1, -0.5)) < energy(Plate.Kind.OUTSTAND, 1, -0.5),
                "between 0 and -1 the parabola of the table is on the safe side");
        for (double psi : new double[] {0.5, 0, -1}) {
            double table = PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(1, psi));
            double exact = energy(Plate.Kind.OUTSTAND, 1, psi);
            assertEquals(exact, table, 0.05 * table, "root leads, psi " + psi);
        }
    }

    private static double energy(Plate.Kind kind, double root, double tip) {
        double least = Double.MAX_VALUE;
        for (double wave = 0.05; wave < 14; wave *= 1.06) {
            least = Math.min(least, energy(kind, root, tip, wave));
        }
        return least;
    }

    private static double energy(Plate.Kind kind, double root, double tip, double wave) {
        double[][] stiffness = new double[TERMS][TERMS];
        double[][] load = new double[TERMS][TERMS];
        double w2 = wave * wave;
        for (int s = 0; s < STEPS; s++) {
            double x = (s + 0.5) / STEPS;
            double stress = root + (tip - root) * x;
            double[][] shapes = new double[TERMS][];
            for (int i = 0; i < TERMS; i++) {
                shapes[i] = shape(kind, i + 1, x);
            }
            for (int i = 0; i < TERMS; i++) {
                for (int j = 0; j < TERMS; j++) {
                    double[] f = shapes[i];
                    double[] g = shapes[j];
                    stiffness[i][j] += ((f[2] - w2 * f[0]) * (g[2] - w2 * g[0])
                            + (1 - POISSON) * w2 * (f[0] * g[2] + f[2] * g[0] + 2 * f[1] * g[1])) / STEPS;
                    load[i][j] += w2 * stress * f[0] * g[0] / STEPS;
                }
            }
        }
        RealMatrix lower = new CholeskyDecomposition(new Array2DRowRealMatrix(stiffness), 1e-6, 1e-14).getL();
        RealMatrix inverse = new LUDecomposition(lower).getSolver().getInverse();
        RealMatrix reduced = inverse.multiply(new Array2DRowRealMatrix(load)).multiplyTransposed(inverse);
        RealMatrix even = reduced.add(reduced.transpose()).scalarMultiply(0.5);
        double largest = 0;
        for (double eigenvalue : new EigenDecompositionSymmetric(even).getEigenvalues()) {
            largest = Math.max(largest, eigenvalue);
        }
        return 1 / (largest * Math.PI * Math.PI);
    }

    /** Value, slope and curvature of a shape that is held at the root, and at the tip too for an internal part. */
    private static double[] shape(Plate.Kind kind, int power, double x) {
        double[] f = {Math.pow(x, power), power * Math.pow(x, power - 1),
            power < 2 ? 0 : power * (power - 1) * Math.pow(x, power - 2)};
        if (kind == Plate.Kind.OUTSTAND) {
            return f;
        }
        return new double[] {f[0] * (1 - x), f[1] * (1 - x) - f[0], f[2] * (1 - x) - 2 * f[1]};
    }
}
