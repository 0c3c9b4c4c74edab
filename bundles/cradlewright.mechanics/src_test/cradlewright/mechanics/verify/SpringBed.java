package cradlewright.mechanics.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;

import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;

/** A stiff plate on a bed of equal springs, one in the middle of each cell of its outline: another route to pressures. */
public final class SpringBed {

    private final List<double[]> cells = new ArrayList<>();
    private final double cellArea;

    /**
     * A bed.
     *
     * @param length size of the rectangle around the outline along x, m
     * @param width its size along y, m
     * @param cell edge of the cells, m
     * @param inside whether a point, counted from the middle of the rectangle, lies within the outline
     */
    public SpringBed(double length, double width, double cell, BiPredicate<Double, Double> inside) {
        cellArea = cell * cell;
        for (int i = 0; i < Math.round(length / cell); i++) {
            for (int j = 0; j < Math.round(width / cell); j++) {
                double x = (i + 0.5) * cell - length / 2;
                double y = (j + 0.5) * cell - width / 2;
                if (inside.test(x, y)) {
                    cells.add(new double[] {1, x, y});
                }
            }
        }
    }

    /** Returns the largest pressure under a force that acts in the middle of the rectangle, Pa. */
    public double largestPressure(double force) {
        double[][] sums = new double[3][3];
        for (double[] cell : cells) {
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    sums[i][j] += cell[i] * cell[j];
                }
            }
        }
        double[] plane = new LUDecomposition(MatrixUtils.createRealMatrix(sums)).getSolver()
                .solve(MatrixUtils.createRealVector(new double[] {force, 0, 0})).toArray();
        return cells.stream().mapToDouble(c -> (plane[0] + plane[1] * c[1] + plane[2] * c[2]) / cellArea).max().orElseThrow();
    }
}
