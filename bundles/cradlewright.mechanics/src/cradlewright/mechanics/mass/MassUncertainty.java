package cradlewright.mechanics.mass;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Carries the uncertainty of parts over to their common mass and balance point (JCGM 100, the GUM, 5.1.2 and 5.2.2; first order).
 *
 * <p>Which way a common scale works is not the same for all results: it makes the total mass less certain and, when the errors
 * are proportional to the masses, the balance point more certain. Name a common scale only where there was one.
 */
public final class MassUncertainty {

    private static final int SIZE = 4;

    private MassUncertainty() {
    }

    /**
     * Returns mass and balance point with the covariance of (m, x, y, z): sensitivities dc/dm_i = (c_i - c)/m and
     * dc/dc_i = m_i/m; see {@link MassFormulas#UNCERTAINTY}.
     *
     * @throws IllegalArgumentException for an empty list or a total mass of zero
     */
    public static EstimatedBalance of(List<MassPoint> parts) {
        Balance whole = Composition.of(parts);
        double[][] covariance = new double[SIZE][SIZE];
        Map<String, double[]> common = new LinkedHashMap<>();
        for (MassPoint p : parts) {
            Vec3 arm = p.position().minus(whole.point()).times(1 / whole.mass());
            double[] byMass = scaled(new double[] {1, arm.x(), arm.y(), arm.z()}, p.massUncertainty());
            if (p.scale().equals(MassPoint.NO_COMMON_SCALE)) {
                addSquare(covariance, byMass);
            } else {
                double[] sum = common.computeIfAbsent(p.scale(), s -> new double[SIZE]);
                for (int i = 0; i < SIZE; i++) {
                    sum[i] += byMass[i];
                }
            }
            double share = p.mass() / whole.mass();
            Vec3 u = p.positionUncertainty().times(share);
            covariance[1][1] += u.x() * u.x();
            covariance[2][2] += u.y() * u.y();
            covariance[3][3] += u.z() * u.z();
        }
        common.values().forEach(v -> addSquare(covariance, v));
        return new EstimatedBalance(whole, covariance);
    }

    /**
     * Returns the same for parts of which nobody wrote down whether those with the same scale name were really on one scale. Mass and
     * each coordinate get the wider of both readings: the masses of one scale add linearly, while the balance point is mostly less certain
     * with a scale for each part. What mass and place have in common is that of unrelated scales; a wider variance beside it leaves the
     * covariance a possible one. See {@link MassFormulas#UNCERTAINTY}.
     *
     * @throws IllegalArgumentException for an empty list or a total mass of zero
     */
    public static EstimatedBalance ofPerhapsOneScale(List<MassPoint> parts) {
        EstimatedBalance one = of(parts);
        double[][] covariance = of(parts.stream().map(MassPoint::onItsOwnScale).toList()).copyOfCovariance();
        double[][] common = one.copyOfCovariance();
        for (int i = 0; i < SIZE; i++) {
            covariance[i][i] = Math.max(covariance[i][i], common[i][i]);
        }
        return new EstimatedBalance(one.balance(), covariance);
    }

    /**
     * Returns what is left of a body that was weighed whole, once a part weighed by itself is off. The errors of the two
     * weighings are taken as unrelated; the uncertainty grows. See {@link MassFormulas#UNCERTAINTY}.
     *
     * @throws IllegalArgumentException when the part is as heavy as the whole or heavier
     */
    public static EstimatedBalance without(EstimatedBalance whole, MassPoint part) {
        return combine(whole, part, whole.balance().minus(part.balance()), -1);
    }

    /** Returns a weighed body with a further part put on; the errors of the two are taken as unrelated. */
    public static EstimatedBalance with(EstimatedBalance whole, MassPoint part) {
        return combine(whole, part, whole.balance().plus(part.balance()), 1);
    }

    /** Returns the standard uncertainty a/sqrt(3) of a limit of {@code a} either way with no other knowledge (GUM 4.3.7). */
    public static double ofLimits(double halfWidth) {
        return Require.notNegative(halfWidth, "limit") / Math.sqrt(3);
    }

    private static EstimatedBalance combine(EstimatedBalance whole, MassPoint part, Balance result, double sign) {
        double m = result.mass();
        Vec3 toWhole = whole.balance().point().minus(result.point()).times(1 / m);
        Vec3 toPart = part.position().minus(result.point()).times(sign / m);
        double keep = whole.balance().mass() / m;
        double[][] jacobian = {{1, 0, 0, 0}, {toWhole.x(), keep, 0, 0}, {toWhole.y(), 0, keep, 0}, {toWhole.z(), 0, 0, keep}};
        double[][] covariance = transform(jacobian, whole.copyOfCovariance());
        addSquare(covariance, scaled(new double[] {sign, toPart.x(), toPart.y(), toPart.z()}, part.massUncertainty()));
        Vec3 u = part.positionUncertainty().times(part.mass() / m);
        covariance[1][1] += u.x() * u.x();
        covariance[2][2] += u.y() * u.y();
        covariance[3][3] += u.z() * u.z();
        return new EstimatedBalance(result, covariance);
    }

    /** Returns J S J'. */
    static double[][] transform(double[][] jacobian, double[][] s) {
        int n = s.length;
        double[][] result = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int k = 0; k < n; k++) {
                    for (int l = 0; l < n; l++) {
                        sum += jacobian[i][k] * s[k][l] * jacobian[j][l];
                    }
                }
                result[i][j] = sum;
                result[j][i] = sum;
            }
        }
        return result;
    }

    private static double[] scaled(double[] v, double f) {
        for (int i = 0; i < v.length; i++) {
            v[i] *= f;
        }
        return v;
    }

    private static void addSquare(double[][] covariance, double[] v) {
        for (int i = 0; i < v.length; i++) {
            for (int j = 0; j < v.length; j++) {
                covariance[i][j] += v[i] * v[j];
            }
        }
    }
}
