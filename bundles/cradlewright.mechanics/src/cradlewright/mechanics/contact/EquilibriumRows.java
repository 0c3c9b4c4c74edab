package cradlewright.mechanics.contact;

import java.util.Arrays;
import java.util.Objects;

/**
 * The rows of E, scaled by powers of two (so that scaling costs no digit), with the rows found that depend on others.
 */
final class EquilibriumRows {

    /** Rows, or what is left of them, below this part of the largest count as nothing. */
    static final double RANK_TOLERANCE = 1e-9;

    private final double[][] original;
    private final double[] scale;
    private final double[][] scaled;
    private final int[] kept;
    /** Per row: the weights of the kept rows whose sum it is. */
    private final double[][] weights;

    EquilibriumRows(double[][] rows, int n) {
        Objects.requireNonNull(rows, "equilibrium");
        int m = rows.length;
        original = new double[m][];
        double largest = 0;
        double[] size = new double[m];
        for (int i = 0; i < m; i++) {
            original[i] = ContactProblem.checked(rows[i], n, "equilibrium row " + i);
            for (double v : original[i]) {
                size[i] = Math.max(size[i], Math.abs(v));
            }
            largest = Math.max(largest, size[i]);
        }
        scale = new double[m];
        scaled = new double[m][n];
        for (int i = 0; i < m; i++) {
            boolean counts = size[i] > RANK_TOLERANCE * largest;
            scale[i] = counts ? powerOfTwo(size[i]) : 1;
            for (int j = 0; j < n && counts; j++) {
                scaled[i][j] = original[i][j] / scale[i];
            }
        }
        int[] order = new int[m];
        double[][] rest = new double[m][];
        double[][] triangle = new double[m][m];
        int rank = orthogonalise(order, rest, triangle);
        weights = weights(order, triangle, rank);
        int[] chosen = Arrays.copyOf(order, rank);
        int[] sorted = chosen.clone();
        Arrays.sort(sorted);
        kept = sorted;
        reorder(chosen);
    }

    /** Gram-Schmidt with the largest remaining row first, each step done twice; returns the rank. */
    private int orthogonalise(int[] order, double[][] rest, double[][] triangle) {
        int m = scaled.length;
        double largest = 0;
        boolean[] taken = new boolean[m];
        for (int i = 0; i < m; i++) {
            rest[i] = scaled[i].clone();
            largest = Math.max(largest, Dense.norm(rest[i]));
        }
        int rank = 0;
        while (rank < m) {
            int best = -1;
            double bestNorm = RANK_TOLERANCE * largest;
            for (int i = 0; i < m; i++) {
                double norm = taken[i] ? 0 : Dense.norm(rest[i]);
                if (norm > bestNorm) {
                    best = i;
                    bestNorm = norm;
                }
            }
            if (best < 0) {
                break;
            }
            taken[best] = true;
            order[rank] = best;
            double[] unit = rest[best];
            for (int j = 0; j < unit.length; j++) {
                unit[j] /= bestNorm;
            }
            triangle[rank][best] = bestNorm;
            for (int i = 0; i < m; i++) {
                for (int pass = 0; pass < 2 && !taken[i]; pass++) {
                    double part = Dense.dot(unit, rest[i]);
                    triangle[rank][i] += part;
                    Dense.addTimes(rest[i], -part, unit);
                }
            }
            rank++;
        }
        return rank;
    }

    private double[][] weights(int[] order, double[][] triangle, int rank) {
        int m = scaled.length;
        double[][] result = new double[m][rank];
        for (int i = 0; i < m; i++) {
            for (int k = rank - 1; k >= 0; k--) {
                double sum = triangle[k][i];
                for (int l = k + 1; l < rank; l++) {
                    sum -= triangle[k][order[l]] * result[i][l];
                }
                result[i][k] = sum / triangle[k][order[k]];
            }
        }
        return result;
    }

    /** Puts the weights, found in the order of choice, into the order of the kept rows. */
    private void reorder(int[] chosen) {
        for (int i = 0; i < weights.length; i++) {
            double[] sorted = new double[kept.length];
            for (int k = 0; k < chosen.length; k++) {
                sorted[Arrays.binarySearch(kept, chosen[k])] = weights[i][k];
            }
            weights[i] = sorted;
        }
    }

    private static double powerOfTwo(double value) {
        return Math.scalb(1.0, Math.getExponent(value));
    }

    int rank() {
        return kept.length;
    }

    /** The kept row k, scaled; not a copy. */
    double[] kept(int k) {
        return scaled[kept[k]];
    }

    /** The loads of the kept rows, scaled. */
    double[] keptLoad(double[] load) {
        double[] result = new double[kept.length];
        for (int k = 0; k < kept.length; k++) {
            result[k] = load[kept[k]] / scale[kept[k]];
        }
        return result;
    }

    /** Multipliers of all rows in their own units; those of dependent rows are zero. */
    double[] allMultipliers(double[] keptMultipliers) {
        double[] result = new double[scaled.length];
        for (int k = 0; k < kept.length; k++) {
            result[kept[k]] = keptMultipliers[k] / scale[kept[k]];
        }
        return result;
    }

    /** Largest scaled load. */
    double loadScale(double[] load) {
        double largest = 0;
        for (int i = 0; i < load.length; i++) {
            largest = Math.max(largest, Math.abs(load[i]) / scale[i]);
        }
        return largest;
    }

    /** Whether the loads of dependent rows agree with those they depend on, within {@code tolerance} newtons. */
    boolean agrees(double[] load, double tolerance) {
        double[] of = keptLoad(load);
        for (int i = 0; i < load.length; i++) {
            if (Math.abs(load[i] / scale[i] - Dense.dot(weights[i], of)) > tolerance) {
                return false;
            }
        }
        return true;
    }

    /** Largest scaled residual of E f = w. */
    double residual(double[] force, double[] load) {
        double largest = 0;
        for (int i = 0; i < load.length; i++) {
            largest = Math.max(largest, Math.abs(Dense.dot(scaled[i], force) - load[i] / scale[i]));
        }
        return largest;
    }

    double[][] original() {
        double[][] copy = new double[original.length][];
        for (int i = 0; i < copy.length; i++) {
            copy[i] = original[i].clone();
        }
        return copy;
    }
}
