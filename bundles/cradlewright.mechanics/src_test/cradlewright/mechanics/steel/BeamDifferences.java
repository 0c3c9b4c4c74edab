package cradlewright.mechanics.steel;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

import java.util.function.DoubleUnaryOperator;

/**
 * Sideways buckling of a beam with fork supports by finite differences of its twist: E Iw a'''' - G J a'' - M2 a/(E Iz) - q e a
 * = 0, M = M0 m(x) and q = -M'' the load at the height e above the shear centre. The sideways bow has been taken out of the
 * two differential equations by u'' = -M a/(E Iz), which holds for any moment that statics alone give.
 */
final class BeamDifferences {

    private static final int PARTS = 120;
    private static final double YOUNG = 210e9;

    /** Load in the middle for {@link #criticalWithLoad}: 4 M0/L spread over one part. */
    static final DoubleUnaryOperator MIDDLE_LOAD = x -> Math.abs(x - 0.5) < 0.5 / PARTS ? 4.0 * PARTS : 0;

    private final double iz;
    private final double length;
    private final RealMatrix twisting;

    BeamDifferences(double iz, double torsion, double warping, double length, double shearModulus) {
        this.iz = iz;
        this.length = length;
        double h = length / PARTS;
        RealMatrix second = new Array2DRowRealMatrix(PARTS - 1, PARTS - 1);
        for (int i = 0; i < PARTS - 1; i++) {
            second.setEntry(i, i, -2 / (h * h));
            if (i > 0) {
                second.setEntry(i, i - 1, 1 / (h * h));
                second.setEntry(i - 1, i, 1 / (h * h));
            }
        }
        twisting = second.multiply(second).scalarMultiply(YOUNG * warping).subtract(second.scalarMultiply(shearModulus * torsion));
    }

    /** Largest moment at buckling; m runs over x/L and is 1 at its largest, the load acts at the shear centre. */
    double critical(DoubleUnaryOperator m) {
        return criticalWithLoad(m, 0, x -> 0);
    }

    /**
     * Largest moment at buckling with the load above the shear centre.
     *
     * @param m shape of the moment over x/L
     * @param height of the load above the shear centre, m
     * @param load that belongs to a largest moment of 1, over x/L, times L2
     */
    double criticalWithLoad(DoubleUnaryOperator m, double height, DoubleUnaryOperator load) {
        double low = 0;
        double high = 1;
        while (stable(high, m, height, load)) {
            low = high;
            high *= 2;
        }
        for (int i = 0; i < 45; i++) {
            double middle = (low + high) / 2;
            if (stable(middle, m, height, load)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Stable while all pivots of the symmetric matrix stay above zero. */
    private boolean stable(double moment, DoubleUnaryOperator m, double height, DoubleUnaryOperator load) {
        double[][] a = matrix(moment, m, height, load).getData();
        int n = a.length;
        for (int k = 0; k < n; k++) {
            if (a[k][k] <= 0) {
                return false;
            }
            for (int i = k + 1; i < Math.min(n, k + 3); i++) {
                double factor = a[i][k] / a[k][k];
                for (int j = k; j < Math.min(n, k + 3); j++) {
                    a[i][j] -= factor * a[k][j];
                }
            }
        }
        return true;
    }

    private RealMatrix matrix(double moment, DoubleUnaryOperator m, double height, DoubleUnaryOperator load) {
        RealMatrix result = twisting.copy();
        for (int i = 0; i < PARTS - 1; i++) {
            double x = (i + 1.0) / PARTS;
            double bend = moment * m.applyAsDouble(x);
            result.addToEntry(i, i, -bend * bend / (YOUNG * iz) - moment * load.applyAsDouble(x) / (length * length) * height);
        }
        return result;
    }

    /**
     * How much a bow and twist in the shape of a half wave has grown sideways in the middle under the same moment all along:
     * sideways curvature over that of the unloaded bow.
     *
     * @param moment below the critical one
     * @param critical moment of the same beam; bow and twist start in the ratio of the buckled shape
     */
    double growth(double moment, double critical) {
        double euler = Math.PI * Math.PI * YOUNG * iz / (length * length);
        double twist = euler / critical;
        RealVector first = new ArrayRealVector(PARTS - 1);
        for (int i = 0; i < PARTS - 1; i++) {
            first.setEntry(i, Math.sin(Math.PI * (i + 1.0) / PARTS));
        }
        // added twist b by the starting twist and the starting curvature: (K - M2/(E Iz)) b = M (M a0/(E Iz) + pi2/L2 u0)
        double push = moment * (moment * twist / (YOUNG * iz) + Math.PI * Math.PI / (length * length));
        DecompositionSolver solver = new LUDecomposition(matrix(moment, x -> 1, 0, x -> 0)).getSolver();
        double added = solver.solve(first.mapMultiply(push)).getEntry(PARTS / 2 - 1);
        double curvature = moment * (twist + added) / (YOUNG * iz);
        return 1 + curvature / (Math.PI * Math.PI / (length * length));
    }
}
