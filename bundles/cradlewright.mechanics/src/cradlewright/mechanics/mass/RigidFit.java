package cradlewright.mechanics.mass;

import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * Finds how a body sits from marks measured in two frames: the rotation and shift with the least sum of squared distances, by
 * singular value decomposition; see {@link MassFormulas#RIGID_FIT}.
 *
 * <p>Every mark counts the same. With three marks a wrong reading is spread over all of them; four or more tell better which it
 * is.
 */
public final class RigidFit {

    /** A mark that misses by more, m, says that the shell is twisted or the mark is wrong (common practice, no source). */
    public static final double MARK_LIMIT = 0.003;

    /**
     * The transform found and what it leaves over.
     *
     * @param transform from the first frame to the second
     * @param misses measured minus fitted place of each mark, in the second frame, m
     */
    public record Fit(RigidTransform transform, List<Vec3> misses) {

        /** Copies the list. */
        public Fit {
            misses = List.copyOf(misses);
        }

        /** Returns the index of the mark that misses most. */
        public int worstMark() {
            int worst = 0;
            for (int i = 1; i < misses.size(); i++) {
                if (misses.get(i).norm() > misses.get(worst).norm()) {
                    worst = i;
                }
            }
            return worst;
        }

        /** Returns the root mean square of the misses, m. */
        public double rootMeanSquare() {
            return Math.sqrt(misses.stream().mapToDouble(v -> v.dot(v)).average().orElse(0));
        }

        /** Returns the indexes of the marks that miss by more than {@link #MARK_LIMIT}. */
        public List<Integer> doubtfulMarks() {
            List<Integer> doubtful = new ArrayList<>();
            for (int i = 0; i < misses.size(); i++) {
                if (misses.get(i).norm() > MARK_LIMIT) {
                    doubtful.add(i);
                }
            }
            return List.copyOf(doubtful);
        }
    }

    private RigidFit() {
    }

    /**
     * Fits the second list to the first, mark by mark.
     *
     * @param from the marks in the first frame, m
     * @param to the same marks in the second frame, m
     * @throws IllegalArgumentException for fewer than three marks, lists of different length, or marks that lie in one line
     */
    public static Fit of(List<Vec3> from, List<Vec3> to) {
        int n = from.size();
        if (n < 3 || to.size() != n) {
            throw new IllegalArgumentException("three or more marks, the same in both frames, are needed, found " + n + " and "
                    + to.size());
        }
        Vec3 middleFrom = middle(from);
        Vec3 middleTo = middle(to);
        double[][] common = new double[3][3];
        for (int i = 0; i < n; i++) {
            double[] a = array(from.get(i).minus(middleFrom));
            double[] b = array(to.get(i).minus(middleTo));
            for (int r = 0; r < 3; r++) {
                for (int c = 0; c < 3; c++) {
                    common[r][c] += a[r] * b[c];
                }
            }
        }
        SingularValueDecomposition svd = new SingularValueDecomposition(MatrixUtils.createRealMatrix(common));
        double[] values = svd.getSingularValues();
        if (!(values[1] > 1e-6 * values[0])) {
            throw new IllegalArgumentException("the marks lie in one line or in one point: the turn about it cannot be found");
        }
        RealMatrix v = svd.getV();
        RealMatrix ut = svd.getUT();
        // a reflection would fit as well or better where marks lie in a plane; it is no motion of a body
        double handed = Math.signum(new LUDecomposition(v.multiply(ut)).getDeterminant());
        RealMatrix turn = v.multiply(MatrixUtils.createRealDiagonalMatrix(new double[] {1, 1, handed})).multiply(ut);
        RigidTransform rotation = new RigidTransform(turn.getData(), Vec3.ZERO);
        RigidTransform transform = new RigidTransform(turn.getData(), middleTo.minus(rotation.turn(middleFrom)));
        List<Vec3> misses = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            misses.add(to.get(i).minus(transform.apply(from.get(i))));
        }
        return new Fit(transform, misses);
    }

    private static Vec3 middle(List<Vec3> points) {
        Vec3 sum = Vec3.ZERO;
        for (Vec3 p : points) {
            sum = sum.plus(Checks.finite(p, "mark"));
        }
        return sum.times(1.0 / points.size());
    }

    private static double[] array(Vec3 v) {
        return new double[] {v.x(), v.y(), v.z()};
    }
}
