package cradlewright.mechanics.mass;

import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * Mass and balance point of a body from load cells, level (mass and place seen from above) or in several attitudes (height as
 * well).
 *
 * <p>Only sums of readings are used, so it does not matter how a stiff body shares its weight among four or more cells. The cells
 * must carry no sideways force (rollers or ball cups).
 */
public final class PoseWeighing {

    /** A normalised misfit above this makes a reading suspect (three standard deviations). */
    public static final double SUSPECT = 3;

    private static final int ROWS = 3;
    private static final int UNKNOWNS = 4;

    /**
     * How badly one reading fits to all others.
     *
     * @param pose index of the attitude
     * @param cell index of the cell
     * @param checkable false when no other reading controls this one; the other numbers are then zero
     * @param normalised estimated error over its standard deviation
     * @param error the error that would explain the misfit, kg (reading minus what it should have been)
     */
    public record Misfit(int pose, int cell, boolean checkable, double normalised, double error) {
    }

    /**
     * What several attitudes say.
     *
     * @param estimate mass and balance point in the axes of the body, with covariance
     * @param chiSquare weighted sum of squared residuals
     * @param degreesOfFreedom what it should be about equal to
     * @param misfits one for each reading, the worst first
     */
    public record Result(EstimatedBalance estimate, double chiSquare, int degreesOfFreedom, List<Misfit> misfits) {

        /** Copies the list. */
        public Result {
            misfits = List.copyOf(misfits);
        }

        /**
         * Returns the readings that do not fit, the worst first: normalised misfit above {@link #SUSPECT} and within 5 % of the
         * worst, since two readings with nearly the same effect cannot be told apart.
         */
        public List<Misfit> suspects() {
            double worst = Math.abs(misfits.get(0).normalised());
            return misfits.stream().filter(m -> Math.abs(m.normalised()) > SUSPECT && Math.abs(m.normalised()) >= 0.95 * worst)
                    .toList();
        }
    }

    /**
     * What one level weighing says.
     *
     * @param mass in kg
     * @param x rearward place of the balance point, m
     * @param y place to the right, m
     * @param massUncertainty standard uncertainty, kg
     * @param xUncertainty standard uncertainty, m
     * @param yUncertainty standard uncertainty, m
     */
    public record Level(double mass, double x, double y, double massUncertainty, double xUncertainty, double yUncertainty) {
    }

    private PoseWeighing() {
    }

    /**
     * Returns mass and balance point seen from above of a body that stands level; see {@link MassFormulas#POSE_LEVEL}. How the
     * body shares its weight does not matter.
     *
     * @throws IllegalArgumentException for no cells or readings that sum to nothing
     */
    public static Level level(List<CellReading> cells) {
        List<MassPoint> points = cells.stream().map(c -> new MassPoint(c.mass(), c.position(), c.massUncertainty(),
                new Vec3(c.positionUncertainty(), c.positionUncertainty(), 0), MassPoint.NO_COMMON_SCALE)).toList();
        EstimatedBalance sum = MassUncertainty.of(points);
        return new Level(sum.balance().mass(), sum.balance().point().x(), sum.balance().point().y(),
                sum.standard(EstimatedBalance.Quantity.MASS), sum.standard(EstimatedBalance.Quantity.X),
                sum.standard(EstimatedBalance.Quantity.Y));
    }

    /**
     * Returns mass and balance point from weighings in two or more attitudes by weighted least squares, with the covariance
     * (A' V^-1 A)^-1 and the misfit of each reading; see {@link MassFormulas#POSES}.
     *
     * <p>In each attitude with n straight up and e1, e2 level: sum R = m, sum R (p . e) = (m c) . e. V holds the uncertainties of
     * readings, places and attitude; the attitude enters with the height of the cells relative to the balance point, so the fit
     * is run twice.
     *
     * @throws IllegalArgumentException when the attitudes do not differ, or the cells of one lie in one line
     */
    public static Result solve(List<Pose> poses) {
        if (poses.size() < 2) {
            throw new IllegalArgumentException("the height needs two or more attitudes, found " + poses.size());
        }
        Result first = solve(poses, null);
        return solve(poses, first.estimate().balance().point());
    }

    private static Result solve(List<Pose> poses, Vec3 guess) {
        int rows = ROWS * poses.size();
        double[][] a = new double[rows][];
        double[] b = new double[rows];
        List<double[]> reach = new ArrayList<>();
        List<int[]> who = new ArrayList<>();
        for (int p = 0; p < poses.size(); p++) {
            addPose(poses.get(p), p, guess, a, b, reach, who);
        }
        RealMatrix whiteA = MatrixUtils.createRealMatrix(a);
        RealVector whiteB = MatrixUtils.createRealVector(b);
        SingularValueDecomposition svd = new SingularValueDecomposition(whiteA);
        double[] s = svd.getSingularValues();
        if (!(s[UNKNOWNS - 1] > 1e-9 * s[0])) {
            throw new IllegalArgumentException("the attitudes must differ: the height cannot be found from weighings all alike");
        }
        RealVector q = svd.getSolver().solve(whiteB);
        double[] inverseSquares = new double[UNKNOWNS];
        for (int i = 0; i < UNKNOWNS; i++) {
            inverseSquares[i] = 1 / (s[i] * s[i]);
        }
        RealMatrix v = svd.getV();
        RealMatrix covariance = v.multiply(MatrixUtils.createRealDiagonalMatrix(inverseSquares)).multiplyTransposed(v);
        RealVector residual = whiteB.subtract(whiteA.operate(q));
        List<Misfit> misfits = new ArrayList<>();
        for (int i = 0; i < reach.size(); i++) {
            misfits.add(misfit(who.get(i), MatrixUtils.createRealVector(reach.get(i)), whiteA, covariance, residual));
        }
        misfits.sort(Comparator.comparingDouble((Misfit m) -> -Math.abs(m.normalised())));
        return new Result(estimate(q, covariance), residual.dotProduct(residual), rows - UNKNOWNS, misfits);
    }

    private static Misfit misfit(int[] who, RealVector reach, RealMatrix a, RealMatrix covariance, RealVector residual) {
        RealVector explained = a.transpose().operate(reach);
        double total = reach.dotProduct(reach);
        double free = total - explained.dotProduct(covariance.operate(explained));
        if (free < 1e-9 * total) {
            return new Misfit(who[0], who[1], false, 0, 0);
        }
        double along = reach.dotProduct(residual);
        return new Misfit(who[0], who[1], true, along / Math.sqrt(free), along / free);
    }

    private static EstimatedBalance estimate(RealVector q, RealMatrix covariance) {
        double m = q.getEntry(0);
        Vec3 c = new Vec3(q.getEntry(1), q.getEntry(2), q.getEntry(3)).times(1 / m);
        double[][] jacobian = {{1, 0, 0, 0}, {-c.x() / m, 1 / m, 0, 0}, {-c.y() / m, 0, 1 / m, 0}, {-c.z() / m, 0, 0, 1 / m}};
        return new EstimatedBalance(new Balance(m, c), MassUncertainty.transform(jacobian, covariance.getData()));
    }

    private static void addPose(Pose pose, int index, Vec3 guess, double[][] a, double[] b, List<double[]> reach,
            List<int[]> who) {
        Vec3 along = pose.levelAlong();
        Vec3 across = pose.up().cross(along);
        double[] sums = new double[ROWS];
        double[][] variance = new double[ROWS][ROWS];
        double heights = 0;
        for (CellReading cell : pose.cells()) {
            double[] t = {1, cell.position().dot(along), cell.position().dot(across)};
            double u2 = cell.massUncertainty() * cell.massUncertainty();
            for (int i = 0; i < ROWS; i++) {
                sums[i] += cell.mass() * t[i];
                for (int j = 0; j < ROWS; j++) {
                    variance[i][j] += u2 * (t[i] * t[j]);
                }
            }
            double place = cell.mass() * cell.positionUncertainty();
            variance[1][1] += place * place;
            variance[2][2] += place * place;
            if (guess != null) {
                heights += cell.mass() * cell.position().minus(guess).dot(pose.up());
            }
        }
        double attitude = heights * pose.angleUncertainty();
        variance[1][1] += attitude * attitude;
        variance[2][2] += attitude * attitude;
        Whitening whitening = new Whitening(variance);
        double[][] rows = {{1, 0, 0, 0}, {0, along.x(), along.y(), along.z()}, {0, across.x(), across.y(), across.z()}};
        double[][] white = whitening.apply(MatrixUtils.createRealMatrix(rows)).getData();
        double[] whiteSums = whitening.apply(sums);
        for (int i = 0; i < ROWS; i++) {
            a[ROWS * index + i] = white[i];
            b[ROWS * index + i] = whiteSums[i];
        }
        for (int cell = 0; cell < pose.cells().size(); cell++) {
            Vec3 p = pose.cells().get(cell).position();
            double[] full = new double[b.length];
            System.arraycopy(whitening.apply(new double[] {1, p.dot(along), p.dot(across)}), 0, full, ROWS * index, ROWS);
            reach.add(full);
            who.add(new int[] {index, cell});
        }
    }

    /** Turns correlated rows into rows of unit variance. */
    private static final class Whitening {

        private final RealMatrix inverse;

        Whitening(double[][] variance) {
            int n = variance.length;
            double[] deviation = new double[n];
            double[][] correlation = new double[n][n];
            for (int i = 0; i < n; i++) {
                deviation[i] = Math.sqrt(variance[i][i]);
            }
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    double scale = deviation[i] * deviation[j];
                    correlation[i][j] = scale > 0 ? variance[i][j] / scale : 0;
                }
            }
            try {
                RealMatrix lower = new CholeskyDecomposition(MatrixUtils.createRealMatrix(correlation), 1e-12, 1e-10).getL();
                RealMatrix scaled = MatrixUtils.createRealDiagonalMatrix(deviation).multiply(lower);
                inverse = MatrixUtils.inverse(scaled);
            } catch (MathIllegalArgumentException e) {
                throw new IllegalArgumentException("the cells of one attitude must not lie in one line", e);
            }
        }

        RealMatrix apply(RealMatrix rows) {
            return inverse.multiply(rows);
        }

        double[] apply(double[] column) {
            return inverse.operate(column);
        }
    }
}
