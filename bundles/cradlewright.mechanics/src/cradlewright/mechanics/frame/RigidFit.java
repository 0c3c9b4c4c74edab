package cradlewright.mechanics.frame;

import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * The small rigid motion that comes nearest to what some points do: what is left of their movements is what the body between them bends
 * by itself. See {@link FrameFormulas#RIGID_FIT}.
 */
public final class RigidFit {

    private final Vec3 centre;
    private final Motion motion;

    private RigidFit(Vec3 centre, Motion motion) {
        this.centre = centre;
        this.motion = motion;
    }

    /**
     * Fits a motion. Where the points leave a turn open, because all lie in one line or place, it is none.
     *
     * @param points where they are, m
     * @param movements of each, small against their distances, m
     * @throws IllegalArgumentException if there is no point, or the lists differ in length
     */
    public static RigidFit of(List<Vec3> points, List<Vec3> movements) {
        if (points.isEmpty() || points.size() != movements.size()) {
            throw new IllegalArgumentException("a movement for each of one or more points wanted, found " + points.size() + " points and "
                    + movements.size() + " movements");
        }
        Vec3 centre = points.stream().reduce(Vec3.ZERO, Vec3::plus).times(1.0 / points.size());
        RealMatrix turns = new Array2DRowRealMatrix(3 * points.size(), 3);
        RealVector left = new ArrayRealVector(3 * points.size());
        Vec3 mean = movements.stream().reduce(Vec3.ZERO, Vec3::plus).times(1.0 / points.size());
        for (int i = 0; i < points.size(); i++) {
            Vec3 arm = points.get(i).minus(centre);
            // The movement by a turn is turn x arm.
            turns.setSubMatrix(new double[][] {{0, arm.z(), -arm.y()}, {-arm.z(), 0, arm.x()}, {arm.y(), -arm.x(), 0}}, 3 * i, 0);
            Vec3 moved = movements.get(i).minus(mean);
            left.setSubVector(3 * i, new ArrayRealVector(new double[] {moved.x(), moved.y(), moved.z()}));
        }
        RealVector turn = new SingularValueDecomposition(turns).getSolver().solve(left);
        return new RigidFit(centre, new Motion(mean, new Vec3(turn.getEntry(0), turn.getEntry(1), turn.getEntry(2))));
    }

    /** Returns the motion of the rigid body at a place. */
    public Motion at(Vec3 place) {
        return motion.at(place.minus(centre));
    }
}
