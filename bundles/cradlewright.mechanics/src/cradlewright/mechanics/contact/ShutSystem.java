package cradlewright.mechanics.contact;

import java.util.Arrays;

/**
 * The equations of a fixed set of shut contacts: C f + g = E'q on the shut contacts, E f = w. Solved through the Cholesky
 * factor of C and a Householder factorisation of L^-1 E', which keeps the digits that normal equations would lose.
 *
 * <p>The map from (w, g) to f is linear, so the same object gives forces and their derivatives.
 */
final class ShutSystem {

    private static final double PIVOT_TOLERANCE = 1e-14;
    private static final double RANK_TOLERANCE = 1e-11;

    private final ContactProblem problem;
    private final int[] shut;
    private final double complianceScale;
    private final double[][] lower;
    /** Householder vectors, one per row of equilibrium, and the upper triangle by columns. */
    private final double[][] reflectors;
    private final double[][] upper;
    private final boolean regular;

    ShutSystem(ContactProblem problem, boolean[] isShut) {
        this.problem = problem;
        this.shut = indices(isShut);
        int n = shut.length;
        EquilibriumRows rows = problem.rows();
        int r = rows.rank();
        double largest = 0;
        for (int i = 0; i < problem.size(); i++) {
            largest = Math.max(largest, problem.compliance(i, i));
        }
        complianceScale = Math.scalb(1.0, Math.getExponent(Math.max(largest, ContactProblem.LEAST_COMPLIANCE)));
        double[][] c = new double[n][n];
        double[][] full = problem.sharedCompliance();
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                c[i][j] = full[shut[i]][shut[j]] / complianceScale;
            }
        }
        lower = Dense.cholesky(c, PIVOT_TOLERANCE);
        reflectors = new double[r][];
        upper = new double[r][];
        regular = lower != null && n >= r && factorise(rows);
    }

    static int[] indices(boolean[] isShut) {
        int[] result = new int[isShut.length];
        int count = 0;
        for (int i = 0; i < isShut.length; i++) {
            if (isShut[i]) {
                result[count++] = i;
            }
        }
        return Arrays.copyOf(result, count);
    }

    boolean isShut(int contact) {
        return Arrays.binarySearch(shut, contact) >= 0;
    }

    /** Which contacts are shut. */
    boolean[] shut() {
        boolean[] result = new boolean[problem.size()];
        for (int i : shut) {
            result[i] = true;
        }
        return result;
    }

    private boolean factorise(EquilibriumRows rows) {
        int n = shut.length;
        for (int k = 0; k < reflectors.length; k++) {
            double[] row = rows.kept(k);
            double[] column = new double[n];
            for (int i = 0; i < n; i++) {
                column[i] = row[shut[i]];
            }
            Dense.forward(lower, column);
            double size = Dense.norm(column);
            for (int l = 0; l < k; l++) {
                reflect(reflectors[l], l, column);
            }
            double rest = 0;
            for (int i = k; i < n; i++) {
                rest += column[i] * column[i];
            }
            rest = Math.sqrt(rest);
            if (!(rest > RANK_TOLERANCE * size)) {
                return false;
            }
            double[] v = new double[n];
            System.arraycopy(column, k, v, k, n - k);
            double head = column[k] > 0 ? -rest : rest;
            v[k] -= head;
            double length = Math.sqrt(2 * rest * (rest + Math.abs(column[k])));
            for (int i = k; i < n; i++) {
                v[i] /= length;
            }
            reflectors[k] = v;
            column[k] = head;
            upper[k] = Arrays.copyOf(column, k + 1);
        }
        return true;
    }

    private static void reflect(double[] v, int from, double[] x) {
        double sum = 0;
        for (int i = from; i < x.length; i++) {
            sum += v[i] * x[i];
        }
        sum *= 2;
        for (int i = from; i < x.length; i++) {
            x[i] -= sum * v[i];
        }
    }

    /** Whether the shut contacts hold every rigid motion and C is positive definite on them. */
    boolean isRegular() {
        return regular;
    }

    /** Forces of all contacts (open ones zero) and multipliers of all rows, for a load and gaps. */
    Answer solve(double[] load, double[] gap) {
        int n = shut.length;
        int r = reflectors.length;
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            y[i] = -gap[shut[i]] / complianceScale;
        }
        Dense.forward(lower, y);
        for (int k = 0; k < r; k++) {
            reflect(reflectors[k], k, y);
        }
        double[] head = problem.rows().keptLoad(load);
        for (int k = 0; k < r; k++) {
            double sum = head[k];
            for (int l = 0; l < k; l++) {
                sum -= upper[k][l] * head[l];
            }
            head[k] = sum / upper[k][k];
        }
        double[] q = new double[r];
        for (int k = 0; k < r; k++) {
            q[k] = head[k] - y[k];
            y[k] = head[k];
        }
        for (int k = r - 1; k >= 0; k--) {
            q[k] /= upper[k][k];
            for (int l = 0; l < k; l++) {
                q[l] -= upper[k][l] * q[k];
            }
            q[k] *= complianceScale;
            reflect(reflectors[k], k, y);
        }
        Dense.backward(lower, y);
        double[] force = new double[problem.size()];
        for (int i = 0; i < n; i++) {
            force[shut[i]] = y[i];
        }
        return new Answer(force, q);
    }

    /** Gap s = C f + g - E'q of every contact. */
    double[] gaps(Answer answer, double[] gap) {
        double[] s = new double[problem.size()];
        double[][] c = problem.sharedCompliance();
        for (int i = 0; i < s.length; i++) {
            double sum = Dense.dot(c[i], answer.force) + gap[i];
            s[i] = sum;
        }
        for (int k = 0; k < answer.multiplier.length; k++) {
            Dense.addTimes(s, -answer.multiplier[k], problem.rows().kept(k));
        }
        return s;
    }

    /** Rows N (per contact) so that every balanced change of force of the shut contacts is N v, with |v| its energy norm. */
    double[][] selfStressRows() {
        int n = shut.length;
        int r = reflectors.length;
        double[][] result = new double[problem.size()][n - r];
        double[] column = new double[n];
        for (int k = r; k < n; k++) {
            Arrays.fill(column, 0);
            column[k] = 1;
            for (int l = r - 1; l >= 0; l--) {
                reflect(reflectors[l], l, column);
            }
            Dense.backward(lower, column);
            for (int i = 0; i < n; i++) {
                result[shut[i]][k - r] = column[i];
            }
        }
        return result;
    }

    /** Forces in N per contact, multipliers of the kept, scaled rows. */
    static final class Answer {
        final double[] force;
        final double[] multiplier;

        Answer(double[] force, double[] multiplier) {
            this.force = force;
            this.multiplier = multiplier;
        }
    }
}
