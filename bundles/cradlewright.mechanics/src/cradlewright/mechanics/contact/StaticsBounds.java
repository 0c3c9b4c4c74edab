package cradlewright.mechanics.contact;

import java.util.Arrays;
import java.util.Objects;

/**
 * Least and largest force of each contact that equilibrium alone allows: true for any stiffness, any shim and any floor.
 *
 * @see ContactFormulas#STATICS_BOUNDS
 */
public final class StaticsBounds {

    private final SolveStatus status;
    private final double[] least;
    private final double[] largest;

    private StaticsBounds(SolveStatus status, double[] least, double[] largest) {
        this.status = status;
        this.least = least;
        this.largest = largest;
    }

    /** Bounds with held contacts that may pull without limit. */
    public static StaticsBounds of(ContactProblem problem) {
        double[] unlimited = new double[problem.size()];
        Arrays.fill(unlimited, Double.POSITIVE_INFINITY);
        return of(problem, unlimited);
    }

    /**
     * Bounds with limited pull.
     *
     * @param pullCapacity per contact, N, at or above zero or infinite; read for held contacts only
     * @throws IllegalArgumentException for a length that does not agree or a negative capacity
     */
    public static StaticsBounds of(ContactProblem problem, double[] pullCapacity) {
        double[] shift = shifts(problem, pullCapacity);
        int n = problem.size();
        double scale = problem.forceScale();
        EquilibriumRows rows = problem.rows();
        if (!rows.agrees(problem.sharedLoad(), ContactSolver.RESIDUAL_TOLERANCE * scale)) {
            return new StaticsBounds(SolveStatus.NO_EQUILIBRIUM, new double[0], new double[0]);
        }
        double[] load = rows.keptLoad(problem.sharedLoad());
        double[][] matrix = new double[rows.rank()][n];
        for (int k = 0; k < rows.rank(); k++) {
            load[k] /= scale;
            for (int i = 0; i < n; i++) {
                matrix[k][i] = rows.kept(k)[i];
                load[k] += matrix[k][i] * finite(shift[i]) / scale;
            }
        }
        LinearProgramme programme = new LinearProgramme(matrix, load, unlimited(problem, shift));
        double[] least = new double[n];
        double[] largest = new double[n];
        for (int i = 0; i < n; i++) {
            double[] objective = new double[n];
            objective[i] = 1;
            LinearProgramme.Answer low = programme.minimise(objective);
            LinearProgramme.Answer high = programme.maximise(objective);
            if (low.end() == LinearProgramme.End.INFEASIBLE) {
                return new StaticsBounds(SolveStatus.NO_EQUILIBRIUM, new double[0], new double[0]);
            }
            if (low.end() == LinearProgramme.End.FAILED || high.end() == LinearProgramme.End.FAILED) {
                return new StaticsBounds(SolveStatus.SINGULAR, new double[0], new double[0]);
            }
            least[i] = low.end() == LinearProgramme.End.UNBOUNDED ? Double.NEGATIVE_INFINITY
                    : low.value() * scale - finite(shift[i]);
            largest[i] = high.end() == LinearProgramme.End.UNBOUNDED ? Double.POSITIVE_INFINITY
                    : high.value() * scale - finite(shift[i]);
        }
        return new StaticsBounds(SolveStatus.OK, least, largest);
    }

    /** How far below zero each contact force may go: nothing for a support that rests. */
    static double[] shifts(ContactProblem problem, double[] pullCapacity) {
        Objects.requireNonNull(pullCapacity, "pull capacity");
        if (pullCapacity.length != problem.size()) {
            throw new IllegalArgumentException("pull capacity must have " + problem.size() + " entries, found "
                    + pullCapacity.length);
        }
        double[] shift = new double[pullCapacity.length];
        for (int i = 0; i < shift.length; i++) {
            if (!problem.isUnilateral(i)) {
                if (!(pullCapacity[i] >= 0)) {
                    throw new IllegalArgumentException("pull capacity of contact " + i + " must not be below zero, found "
                            + pullCapacity[i]);
                }
                shift[i] = pullCapacity[i];
            }
        }
        return shift;
    }

    static boolean[] unlimited(ContactProblem problem, double[] shift) {
        boolean[] free = new boolean[shift.length];
        for (int i = 0; i < free.length; i++) {
            free[i] = Double.isInfinite(shift[i]) && !problem.isUnilateral(i);
        }
        return free;
    }

    static double finite(double shift) {
        return Double.isInfinite(shift) ? 0 : shift;
    }

    /** Returns how the calculation ended. */
    public SolveStatus status() {
        return status;
    }

    /** Returns the least force, N; minus infinity where nothing limits a held contact. */
    public double least(int contact) {
        return numbers(least)[contact];
    }

    /** Returns the largest force, N; infinity where nothing limits it. */
    public double largest(int contact) {
        return numbers(largest)[contact];
    }

    private double[] numbers(double[] values) {
        if (status != SolveStatus.OK) {
            throw new IllegalStateException("there are no statics bounds: " + status);
        }
        return values;
    }
}
