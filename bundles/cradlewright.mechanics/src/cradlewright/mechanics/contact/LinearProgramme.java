package cradlewright.mechanics.contact;

import java.util.Arrays;

/**
 * Least or largest c'x over A x = b with each x free or at or above zero, by the revised simplex method in two phases. The
 * rows of A must not depend on each other unless b contradicts them.
 *
 * <p>Each step factorises the basis anew, so that nothing adds up, and gives the multipliers y of the rows with the answer;
 * they prove it: A'y on the right side of c, or, where nothing is feasible, A'y at or below zero with b'y above zero.
 *
 * <p>An own one, because the simplex solver of Hipparchus 4.0.3 gives wrong answers where two columns of A are equal (two
 * supports at one place, two pins on one line): it counts both as basic.
 */
final class LinearProgramme {

    /** How the calculation ended. */
    enum End { OPTIMAL, INFEASIBLE, UNBOUNDED, FAILED }

    /** Answer: value and variables count at OPTIMAL only, multipliers at OPTIMAL and INFEASIBLE. */
    record Answer(End end, double value, double[] variables, double[] multipliers) {

        static Answer without(End end) {
            return new Answer(end, 0, new double[0], new double[0]);
        }
    }

    private static final double COST_TOLERANCE = 1e-10;
    private static final double PIVOT_TOLERANCE = 1e-9;
    private static final double FEASIBLE_TOLERANCE = 1e-9;
    private static final double TIE_TOLERANCE = 1e-12;
    private static final int STEEP_STEPS = 4;
    private static final int STEPS = 40;

    private final boolean[] free;
    /** Columns: variables, negatives of free variables, then one artificial per row. */
    private final double[][] columns;
    private final double[] right;
    private final int artificial;
    private int[] basis;
    private Answer noStart;

    /**
     * @param rows A by rows
     * @param right b
     * @param free per variable, whether it may be negative
     */
    LinearProgramme(double[][] rows, double[] right, boolean[] free) {
        this.free = free.clone();
        this.right = right.clone();
        int extra = 0;
        for (boolean f : free) {
            extra += f ? 1 : 0;
        }
        artificial = free.length + extra;
        int m = right.length;
        columns = new double[artificial + m][m];
        int next = free.length;
        for (int j = 0; j < free.length; j++) {
            for (int i = 0; i < m; i++) {
                columns[j][i] = rows[i][j];
            }
            if (free[j]) {
                for (int i = 0; i < m; i++) {
                    columns[next][i] = -rows[i][j];
                }
                next++;
            }
        }
        basis = new int[m];
        for (int i = 0; i < m; i++) {
            columns[artificial + i][i] = right[i] < 0 ? -1 : 1;
            basis[i] = artificial + i;
        }
    }

    Answer maximise(double[] objective) {
        double[] negative = new double[objective.length];
        Dense.addTimes(negative, -1, objective);
        Answer found = minimise(negative);
        return new Answer(found.end, -found.value, found.variables, found.multipliers);
    }

    Answer minimise(double[] objective) {
        if (noStart == null && Arrays.stream(basis).anyMatch(j -> j >= artificial)) {
            noStart = start();
        }
        if (noStart != null) {
            return noStart;
        }
        double[] cost = new double[columns.length];
        int next = free.length;
        for (int j = 0; j < free.length; j++) {
            cost[j] = objective[j];
            if (free[j]) {
                cost[next++] = -objective[j];
            }
        }
        return run(cost, artificial);
    }

    /** Finds a feasible basis without artificial columns; returns the answer that there is none, else null. */
    private Answer start() {
        double[] cost = new double[columns.length];
        Arrays.fill(cost, artificial, cost.length, 1);
        Answer found = run(cost, columns.length);
        if (found.end != End.OPTIMAL) {
            return Answer.without(End.FAILED);
        }
        double size = 0;
        for (double b : right) {
            size = Math.max(size, Math.abs(b));
        }
        if (found.value > FEASIBLE_TOLERANCE * Math.max(1, size)) {
            return new Answer(End.INFEASIBLE, 0, new double[0], found.multipliers);
        }
        for (int i = 0; i < basis.length; i++) {
            if (basis[i] >= artificial && !replace(i)) {
                return Answer.without(End.FAILED);
            }
        }
        return null;
    }

    /** Puts the column with the largest pivot into the place of an artificial one that stands at zero. */
    private boolean replace(int position) {
        Factor factor = Factor.of(columns, basis);
        if (factor == null) {
            return false;
        }
        double[] unit = new double[basis.length];
        unit[position] = 1;
        double[] row = factor.solveTransposed(unit);
        int best = -1;
        double largest = PIVOT_TOLERANCE;
        for (int j = 0; j < artificial; j++) {
            double pivot = Math.abs(Dense.dot(row, columns[j]));
            if (pivot > largest) {
                largest = pivot;
                best = j;
            }
        }
        if (best >= 0) {
            basis[position] = best;
        }
        return best >= 0;
    }

    private Answer run(double[] cost, int usable) {
        int m = basis.length;
        for (int step = 0; step <= STEPS * (usable + 1); step++) {
            Factor factor = Factor.of(columns, basis);
            if (factor == null) {
                return Answer.without(End.FAILED);
            }
            double[] x = factor.solve(right);
            double[] based = new double[m];
            for (int i = 0; i < m; i++) {
                based[i] = cost[basis[i]];
            }
            double[] y = factor.solveTransposed(based);
            boolean steep = step < STEEP_STEPS * (usable + 1);
            int entering = entering(cost, y, usable, steep);
            if (entering < 0) {
                return optimal(cost, x, y);
            }
            double[] change = factor.solve(columns[entering]);
            int leaving = leaving(x, change, steep);
            if (leaving < 0) {
                return Answer.without(End.UNBOUNDED);
            }
            basis[leaving] = entering;
        }
        return Answer.without(End.FAILED);
    }

    /** The cheapest column at first, later the lowest that is cheap at all (Bland), which cannot go in circles. */
    private int entering(double[] cost, double[] y, int usable, boolean steep) {
        int best = -1;
        double least = -COST_TOLERANCE;
        for (int j = 0; j < usable; j++) {
            double reduced = cost[j] - Dense.dot(y, columns[j]);
            if (reduced < least) {
                best = j;
                if (!steep) {
                    return best;
                }
                least = reduced;
            }
        }
        return best;
    }

    private int leaving(double[] x, double[] change, boolean steep) {
        double ratio = Double.POSITIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            if (change[i] > PIVOT_TOLERANCE) {
                ratio = Math.min(ratio, Math.max(0, x[i]) / change[i]);
            }
        }
        int best = -1;
        for (int i = 0; i < x.length; i++) {
            if (change[i] > PIVOT_TOLERANCE && Math.max(0, x[i]) / change[i] <= ratio + TIE_TOLERANCE
                    && (best < 0 || (steep ? change[i] > change[best] : basis[i] < basis[best]))) {
                best = i;
            }
        }
        return best;
    }

    private Answer optimal(double[] cost, double[] x, double[] y) {
        double[] all = new double[columns.length];
        double value = 0;
        for (int i = 0; i < x.length; i++) {
            if (x[i] < -FEASIBLE_TOLERANCE) {
                return Answer.without(End.FAILED);
            }
            all[basis[i]] = x[i];
            value += cost[basis[i]] * x[i];
        }
        double[] joined = Arrays.copyOf(all, free.length);
        int next = free.length;
        for (int j = 0; j < joined.length; j++) {
            if (free[j]) {
                joined[j] -= all[next++];
            }
        }
        return new Answer(End.OPTIMAL, value, joined, y);
    }

    /** Triangular factors of a basis with row exchange. */
    private record Factor(double[][] lu, int[] order) {

        static Factor of(double[][] columns, int[] basis) {
            int m = basis.length;
            double[][] a = new double[m][m];
            int[] order = new int[m];
            for (int i = 0; i < m; i++) {
                order[i] = i;
                for (int j = 0; j < m; j++) {
                    a[i][j] = columns[basis[j]][i];
                }
            }
            for (int k = 0; k < m; k++) {
                int pivot = k;
                for (int i = k + 1; i < m; i++) {
                    pivot = Math.abs(a[i][k]) > Math.abs(a[pivot][k]) ? i : pivot;
                }
                if (!(Math.abs(a[pivot][k]) > TIE_TOLERANCE)) {
                    return null;
                }
                double[] row = a[k];
                a[k] = a[pivot];
                a[pivot] = row;
                int place = order[k];
                order[k] = order[pivot];
                order[pivot] = place;
                for (int i = k + 1; i < m; i++) {
                    a[i][k] /= a[k][k];
                    for (int j = k + 1; j < m; j++) {
                        a[i][j] -= a[i][k] * a[k][j];
                    }
                }
            }
            return new Factor(a, order);
        }

        double[] solve(double[] b) {
            int m = order.length;
            double[] x = new double[m];
            for (int i = 0; i < m; i++) {
                double sum = b[order[i]];
                for (int j = 0; j < i; j++) {
                    sum -= lu[i][j] * x[j];
                }
                x[i] = sum;
            }
            for (int i = m - 1; i >= 0; i--) {
                for (int j = i + 1; j < m; j++) {
                    x[i] -= lu[i][j] * x[j];
                }
                x[i] /= lu[i][i];
            }
            return x;
        }

        double[] solveTransposed(double[] b) {
            int m = order.length;
            double[] z = b.clone();
            for (int i = 0; i < m; i++) {
                for (int j = 0; j < i; j++) {
                    z[i] -= lu[j][i] * z[j];
                }
                z[i] /= lu[i][i];
            }
            double[] y = new double[m];
            for (int i = m - 1; i >= 0; i--) {
                for (int j = i + 1; j < m; j++) {
                    z[i] -= lu[j][i] * z[j];
                }
            }
            for (int i = 0; i < m; i++) {
                y[order[i]] = z[i];
            }
            return y;
        }
    }
}
