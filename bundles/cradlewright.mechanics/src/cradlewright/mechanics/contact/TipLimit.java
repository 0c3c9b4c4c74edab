package cradlewright.mechanics.contact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import cradlewright.mechanics.geometry.Vec3;

/**
 * The largest multiple lambda of an action dw, laid on beside the load w0, that the contacts can still balance. Below 1 the
 * body falls over under the action; the ratio wanted in practice is 1.5.
 *
 * <p>The multipliers of the programme (its dual) give the motion that starts; they have to prove the limit by themselves.
 *
 * @see ContactFormulas#TIP_LIMIT
 */
public final class TipLimit {

    private static final double AGREEMENT = 1e-7;
    private static final double SHUT_TOLERANCE = 1e-8;
    private static final int BODY_ROWS = 6;

    private final SolveStatus status;
    private final double least;
    private final double lambda;
    private final double[] motion;
    private final double[] opening;

    private TipLimit(SolveStatus status, double least, double lambda, double[] motion, double[] opening) {
        this.status = status;
        this.least = least;
        this.lambda = lambda;
        this.motion = motion;
        this.opening = opening;
    }

    /**
     * Works out the limit; compliance and gaps of the problem play no part, its load is w0.
     *
     * @param problem contacts, equilibrium rows and w0
     * @param action dw, one entry per row
     * @param pullCapacity per contact, N, at or above zero or infinite; read for held contacts only
     * @throws IllegalArgumentException for lengths that do not agree, a negative capacity, an action of nothing
     */
    public static TipLimit of(ContactProblem problem, double[] action, double[] pullCapacity) {
        double[] shift = StaticsBounds.shifts(problem, pullCapacity);
        double[] dw = ContactProblem.checked(action, problem.rowCount(), "action");
        return new Work(problem, dw, shift).limit();
    }

    /** Returns OK when lambda stands; NO_EQUILIBRIUM when it falls with any amount of the action, also none. */
    public SolveStatus status() {
        return status;
    }

    /** Returns the largest lambda; infinite when the action cannot upset it, 0 when nothing can balance the load. */
    public double lambda() {
        requireAnswer();
        return lambda;
    }

    /** Returns the least lambda at which it is balanced: above zero when it stands only with the action's help. */
    public double least() {
        requireAnswer();
        return least;
    }

    /** Returns whether it is balanced without the action. */
    public boolean standsWithoutAction() {
        return status == SolveStatus.OK && least <= AGREEMENT;
    }

    /** Returns the small motion that starts, one entry per row (m, rad, to some scale); empty where lambda is infinite. */
    public double[] motion() {
        requireAnswer();
        return motion.clone();
    }

    /** Returns whether a contact stays shut in the motion that starts; true where nothing starts. */
    public boolean staysShut(int contact) {
        requireAnswer();
        return opening.length == 0 || opening[contact] <= SHUT_TOLERANCE;
    }

    /**
     * Reads the motion of one body whose rows are Fx, Fy, Fz, Mx, My, Mz.
     *
     * @param firstRow row of Fx
     * @param length size of the body, m
     * @param anyShut whether a contact of this body stays shut
     */
    public FallMotion motionOf(int firstRow, double length, boolean anyShut) {
        requireAnswer();
        if (motion.length == 0) {
            return new FallMotion(FallMotion.Kind.STAYS, Vec3.ZERO, Vec3.ZERO);
        }
        if (firstRow < 0 || firstRow + BODY_ROWS > motion.length) {
            throw new IllegalArgumentException("first row must leave room for six rows, found " + firstRow);
        }
        double largest = 0;
        for (int i = 0; i < motion.length; i++) {
            largest = Math.max(largest, Math.abs(motion[i]) * (i % BODY_ROWS < BODY_ROWS / 2 ? 1 : length));
        }
        return FallMotion.read(new Vec3(motion[firstRow], motion[firstRow + 1], motion[firstRow + 2]),
                new Vec3(motion[firstRow + 3], motion[firstRow + 4], motion[firstRow + 5]), length, largest, anyShut);
    }

    private void requireAnswer() {
        if (status != SolveStatus.OK && status != SolveStatus.NO_EQUILIBRIUM) {
            throw new IllegalStateException("there is no tipping limit: " + status);
        }
    }

    /** The programmes, with loads and action scaled to one and the rows of (E, dw, w0) freed from those that depend on others. */
    private static final class Work {
        private final double[] shift;
        private final boolean[] free;
        private final EquilibriumRows rows;
        private final double loadSize;
        private final double actionSize;
        private final int n;

        Work(ContactProblem problem, double[] action, double[] shift) {
            this.shift = shift;
            this.free = StaticsBounds.unlimited(problem, shift);
            this.n = problem.size();
            this.actionSize = largest(action);
            if (actionSize == 0) {
                throw new IllegalArgumentException("the action must not be nothing");
            }
            double w = largest(problem.sharedLoad());
            this.loadSize = w > 0 ? w : actionSize;
            double[][] e = problem.equilibrium();
            double[][] wide = new double[e.length][n + 2];
            for (int k = 0; k < e.length; k++) {
                System.arraycopy(e[k], 0, wide[k], 0, n);
                wide[k][n] = action[k] / actionSize;
                wide[k][n + 1] = problem.sharedLoad()[k] / loadSize;
            }
            this.rows = new EquilibriumRows(wide, n + 2);
        }

        private static double largest(double[] values) {
            double result = 0;
            for (double v : values) {
                result = Math.max(result, Math.abs(v));
            }
            return result;
        }

        TipLimit limit() {
            LinearProgramme programme = programme();
            double[] objective = new double[n + 1];
            objective[n] = 1;
            LinearProgramme.Answer most = programme.maximise(objective);
            if (most.end() == LinearProgramme.End.FAILED) {
                return failed(SolveStatus.SINGULAR);
            }
            if (most.end() == LinearProgramme.End.INFEASIBLE) {
                return going(SolveStatus.NO_EQUILIBRIUM, 0, 0, negative(most.multipliers()));
            }
            LinearProgramme.Answer least = programme.minimise(objective);
            if (least.end() != LinearProgramme.End.OPTIMAL) {
                return failed(SolveStatus.SINGULAR);
            }
            double unit = loadSize / actionSize;
            if (most.end() == LinearProgramme.End.UNBOUNDED) {
                return new TipLimit(SolveStatus.OK, least.value() * unit, Double.POSITIVE_INFINITY, new double[0], new double[0]);
            }
            double[] ray = withAllThatOpen(negative(most.multipliers()), most);
            return isProof(ray, most.value()) ? going(SolveStatus.OK, least.value() * unit, most.value() * unit, ray)
                    : failed(SolveStatus.SINGULAR);
        }

        private static TipLimit failed(SolveStatus status) {
            return new TipLimit(status, 0, 0, new double[0], new double[0]);
        }

        /** Largest lambda: E f - lambda dw = w0, with forces counted from their lowest allowed value. */
        private LinearProgramme programme() {
            boolean[] variables = Arrays.copyOf(free, n + 1);
            double[][] matrix = new double[rows.rank()][n + 1];
            for (int k = 0; k < matrix.length; k++) {
                for (int i = 0; i < n; i++) {
                    matrix[k][i] = rows.kept(k)[i];
                }
                matrix[k][n] = -rows.kept(k)[n];
            }
            return new LinearProgramme(matrix, loadWork(), variables);
        }

        /**
         * At a tie (a lift straight up, a push towards a corner) several motions can start. Adds, for each contact that carries
         * nothing and stays shut in the first, one in which it opens if there is one, and takes the mean.
         */
        private double[] withAllThatOpen(double[] ray, LinearProgramme.Answer most) {
            List<Integer> undecided = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                if (!free[i] && most.variables()[i] <= SHUT_TOLERANCE && Dense.dot(column(i), ray) <= SHUT_TOLERANCE) {
                    undecided.add(i);
                }
            }
            if (undecided.isEmpty()) {
                return ray;
            }
            LinearProgramme motions = motions(undecided, most.value());
            double[] mean = ray.clone();
            int count = 1;
            for (int k = 0; k < undecided.size(); k++) {
                double[] objective = new double[rows.rank() + n + undecided.size() + 1];
                objective[rows.rank() + undecided.get(k)] = 1;
                LinearProgramme.Answer other = motions.maximise(objective);
                if (other.end() == LinearProgramme.End.OPTIMAL) {
                    Dense.addTimes(mean, 1, Arrays.copyOf(other.variables(), mean.length));
                    count++;
                }
            }
            for (int k = 0; k < mean.length; k++) {
                mean[k] /= count;
            }
            return mean;
        }

        /** All motions that start at the limit; variables y, openings, what caps the undecided ones, what the load lets go. */
        private LinearProgramme motions(List<Integer> undecided, double value) {
            int r = rows.rank();
            int width = r + n + undecided.size() + 1;
            List<double[]> matrix = new ArrayList<>();
            List<Double> right = new ArrayList<>();
            List<double[]> held = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                double[] row = Arrays.copyOf(column(i), width);
                row[r + i] = -1;
                if (free[i]) {
                    held.add(column(i));
                } else {
                    matrix.add(row);
                    right.add(0.0);
                }
            }
            EquilibriumRows independent = new EquilibriumRows(held.toArray(new double[0][]), r);
            for (int k = 0; k < independent.rank(); k++) {
                double[] row = new double[width];
                for (int j = 0; j < r; j++) {
                    row[j] = independent.kept(k)[j];
                }
                matrix.add(row);
                right.add(0.0);
            }
            for (int k = 0; k < undecided.size(); k++) {
                double[] row = new double[width];
                row[r + undecided.get(k)] = 1;
                row[r + n + k] = 1;
                matrix.add(row);
                right.add(1.0);
            }
            matrix.add(Arrays.copyOf(negative(column(n)), width));
            right.add(1.0);
            double[] least = Arrays.copyOf(loadWork(), width);
            least[width - 1] = 1;
            matrix.add(least);
            right.add(value);
            boolean[] any = new boolean[width];
            Arrays.fill(any, 0, r, true);
            return new LinearProgramme(matrix.toArray(new double[0][]), right.stream().mapToDouble(Double::doubleValue).toArray(),
                    any);
        }

        /** The motion opens contacts or leaves them shut, the action drives it, and load and action balance in it. */
        private boolean isProof(double[] ray, double most) {
            double size = 1;
            for (double r : ray) {
                size = Math.max(size, Math.abs(r));
            }
            double tolerance = AGREEMENT * size;
            for (int i = 0; i < n; i++) {
                double opening = Dense.dot(column(i), ray);
                if (opening < -tolerance || free[i] && opening > tolerance) {
                    return false;
                }
            }
            return Math.abs(Dense.dot(column(n), ray) + 1) <= tolerance
                    && Math.abs(Dense.dot(loadWork(), ray) - most) <= tolerance * Math.max(1, most);
        }

        private static double[] negative(double[] values) {
            double[] result = new double[values.length];
            Dense.addTimes(result, -1, values);
            return result;
        }

        private double[] column(int i) {
            double[] result = new double[rows.rank()];
            for (int k = 0; k < result.length; k++) {
                result[k] = rows.kept(k)[i];
            }
            return result;
        }

        private double[] loadWork() {
            double[] result = column(n + 1);
            for (int i = 0; i < n; i++) {
                Dense.addTimes(result, StaticsBounds.finite(shift[i]) / loadSize, column(i));
            }
            return result;
        }

        private TipLimit going(SolveStatus status, double least, double most, double[] ray) {
            double[] motion = rows.allMultipliers(ray);
            double[] opening = new double[n];
            double largest = 0;
            for (int i = 0; i < n; i++) {
                opening[i] = Dense.dot(column(i), ray);
                largest = Math.max(largest, Math.abs(opening[i]));
            }
            for (int i = 0; i < n && largest > 0; i++) {
                opening[i] /= largest;
            }
            return new TipLimit(status, least, most, motion, opening);
        }
    }
}
