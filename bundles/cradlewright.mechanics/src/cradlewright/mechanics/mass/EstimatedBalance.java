package cradlewright.mechanics.mass;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;

/**
 * A mass and balance point with the covariance of all four numbers, in the order mass, x, y, z (kg and m). Immutable.
 *
 * <p>Give or take: {@link #expanded} is twice the standard uncertainty (k = 2), which holds about 19 times in 20 when the errors
 * are near to normal.
 */
public final class EstimatedBalance {

    /** Coverage factor of every "give or take" (GUM 6.2: k = 2 for about 95 %). */
    public static final double COVERAGE = 2;

    /** The four numbers, in the order of the covariance. */
    public enum Quantity {
        /** Mass, kg. */
        MASS,
        /** Rearward coordinate, m. */
        X,
        /** Coordinate to the right, m. */
        Y,
        /** Upward coordinate, m. */
        Z
    }

    private static final int SIZE = 4;
    /** How far off a plane a point counts as in it, m. */
    private static final double ON_PLANE = 1e-12;
    private static final String UNFAVOURABLE = "mass at the unfavourable end";

    private final Balance balance;
    private final double[][] covariance;

    /**
     * Holds an estimate.
     *
     * @param balance mass and balance point
     * @param covariance 4 x 4 in the order mass, x, y, z; symmetric up to rounding, variances not below zero
     */
    public EstimatedBalance(Balance balance, double[][] covariance) {
        if (covariance.length != SIZE) {
            throw new IllegalArgumentException("the covariance of mass, x, y, z needs 4 rows, found " + covariance.length);
        }
        this.balance = balance;
        this.covariance = new double[SIZE][];
        for (int i = 0; i < SIZE; i++) {
            if (covariance[i].length != SIZE) {
                throw new IllegalArgumentException("the covariance of mass, x, y, z needs 4 columns, found "
                        + covariance[i].length);
            }
            this.covariance[i] = covariance[i].clone();
        }
        for (int i = 0; i < SIZE; i++) {
            Require.notNegative(this.covariance[i][i], "variance of " + Quantity.values()[i]);
            for (int j = 0; j < i; j++) {
                Require.finite(this.covariance[i][j], "covariance");
                double scale = Math.sqrt(this.covariance[i][i] * this.covariance[j][j]);
                if (Math.abs(this.covariance[i][j] - this.covariance[j][i]) > 1e-9 * scale) {
                    throw new IllegalArgumentException("the covariance must be symmetric, found " + this.covariance[i][j]
                            + " and " + this.covariance[j][i]);
                }
                if (Math.abs(this.covariance[i][j]) > scale * (1 + 1e-9)) {
                    throw new IllegalArgumentException("a correlation must lie from -1 to 1, found " + this.covariance[i][j]
                            / scale);
                }
            }
        }
    }

    /** Returns mass and balance point. */
    public Balance balance() {
        return balance;
    }

    /** Returns one entry of the covariance, in the products of kg and m. */
    public double covariance(Quantity a, Quantity b) {
        return covariance[a.ordinal()][b.ordinal()];
    }

    /** Returns the standard uncertainty (k = 1) in kg or m. */
    public double standard(Quantity q) {
        return Math.sqrt(covariance(q, q));
    }

    /** Returns the give or take (k = 2) in kg or m. */
    public double expanded(Quantity q) {
        return COVERAGE * standard(q);
    }

    /**
     * Returns the point of the k = 2 ellipsoid that is worst for a result growing along the given gradient:
     * (m, c) + k S g / sqrt(g' S g), with S the covariance; the estimate itself when the result does not depend on anything
     * uncertain. For the other side pass the gradient with its sign turned. See {@link MassFormulas#WORST_POINT}.
     *
     * @param byMass growth of the result per kg
     * @param byPoint growth of the result per m of each coordinate
     * @throws IllegalArgumentException when the worst mass is not above zero, that is when the mass is hardly known at all
     */
    public Balance worst(double byMass, Vec3 byPoint) {
        return worst(balance, covariance, COVERAGE, gradient(byMass, byPoint));
    }

    /**
     * Returns the point of the k = 2 ellipsoid that is worst for a result growing along the given gradient, among those whose balance
     * point lies in a plane; nothing when the ellipsoid does not reach the plane. With S n = 0 for the normal n the plane either holds
     * the estimate or is out of reach. A result with a crease, which a gradient on one side of it overshoots, is worst there.
     *
     * @param byMass growth of the result per kg
     * @param byPoint growth of the result per m of each coordinate
     * @param normal normal of the plane
     * @param at a point of the plane, m
     * @throws IllegalArgumentException when the worst mass is not above zero
     */
    public Optional<Balance> worstIn(double byMass, Vec3 byPoint, Vec3 normal, Vec3 at) {
        double[] n = gradient(0, normal);
        double[] across = times(covariance, n);
        double variance = dot(n, across);
        double way = Checks.finite(at, "point of the plane").minus(balance.point()).dot(normal);
        if (variance <= 0) {
            return Math.abs(way) <= ON_PLANE * normal.norm() ? Optional.of(worst(byMass, byPoint)) : Optional.empty();
        }
        double left = COVERAGE * COVERAGE - way * way / variance;
        if (left < 0) {
            return Optional.empty();
        }
        double[][] within = copyOfCovariance();
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j < SIZE; j++) {
                within[i][j] -= across[i] * across[j] / variance;
            }
        }
        Vec3 nearest = balance.point().plus(new Vec3(across[1], across[2], across[3]).times(way / variance));
        Balance middle = new Balance(Require.positive(balance.mass() + across[0] * way / variance, UNFAVOURABLE), nearest);
        return Optional.of(worst(middle, within, Math.sqrt(left), gradient(byMass, byPoint)));
    }

    /** Returns the same estimate in other axes; of the covariance only what concerns the place turns. */
    public EstimatedBalance moved(RigidTransform to) {
        double[][] turned = new double[SIZE][SIZE];
        turned[0][0] = 1;
        for (int axis = 1; axis < SIZE; axis++) {
            Vec3 column = to.turn(new Vec3(axis == 1 ? 1 : 0, axis == 2 ? 1 : 0, axis == 3 ? 1 : 0));
            turned[1][axis] = column.x();
            turned[2][axis] = column.y();
            turned[3][axis] = column.z();
        }
        return new EstimatedBalance(new Balance(balance.mass(), to.apply(balance.point())), MassUncertainty.transform(turned, covariance));
    }

    private static double[] gradient(double byMass, Vec3 byPoint) {
        Require.finite(byMass, "gradient by mass");
        Checks.finite(byPoint, "gradient by point");
        return new double[] {byMass, byPoint.x(), byPoint.y(), byPoint.z()};
    }

    private static Balance worst(Balance middle, double[][] covariance, double coverage, double[] g) {
        double[] step = times(covariance, g);
        double variance = dot(g, step);
        if (variance <= 0) {
            return middle;
        }
        double f = coverage / Math.sqrt(variance);
        return new Balance(Require.positive(middle.mass() + f * step[0], UNFAVOURABLE),
                middle.point().plus(new Vec3(step[1], step[2], step[3]).times(f)));
    }

    private static double[] times(double[][] matrix, double[] v) {
        double[] product = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            product[i] = dot(matrix[i], v);
        }
        return product;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < SIZE; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    double[][] copyOfCovariance() {
        double[][] copy = new double[SIZE][];
        for (int i = 0; i < SIZE; i++) {
            copy[i] = covariance[i].clone();
        }
        return copy;
    }
}
