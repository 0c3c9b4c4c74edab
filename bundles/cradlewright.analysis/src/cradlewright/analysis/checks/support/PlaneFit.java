package cradlewright.analysis.checks.support;

import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How far each of several points lies off the plane through the others (least squares), as heights over x and y: the residual over one
 * less its leverage (own derivation, checked against the plane through three points and published residuals). For four supports this
 * is by how much one of them alone would have to move to take the twist out; a common height or slope plays no part.
 */
final class PlaneFit {

    /** Leverage above which the others lie on one line and span no plane. */
    private static final double ALONE = 1 - 1e-9;

    private final List<Vec3> points;
    private final double x;
    private final double y;
    private final double z;
    private final double sxx;
    private final double sxy;
    private final double syy;
    private final double slopeX;
    private final double slopeY;

    /** Takes points whose z is the height; at least three that do not lie on one line as seen from above. */
    PlaneFit(List<Vec3> points) {
        this.points = List.copyOf(points);
        x = points.stream().mapToDouble(Vec3::x).average().orElseThrow();
        y = points.stream().mapToDouble(Vec3::y).average().orElseThrow();
        z = points.stream().mapToDouble(Vec3::z).average().orElseThrow();
        sxx = sum(points, new Vec3(1, 0, 0), new Vec3(1, 0, 0));
        sxy = sum(points, new Vec3(1, 0, 0), new Vec3(0, 1, 0));
        syy = sum(points, new Vec3(0, 1, 0), new Vec3(0, 1, 0));
        double sxz = sum(points, new Vec3(1, 0, 0), Vec3.UP);
        double syz = sum(points, new Vec3(0, 1, 0), Vec3.UP);
        double determinant = determinant();
        if (!(determinant > 1e-9 * sxx * syy)) {
            throw new IllegalArgumentException("points on one line span no plane");
        }
        slopeX = (syy * sxz - sxy * syz) / determinant;
        slopeY = (sxx * syz - sxy * sxz) / determinant;
    }

    private double determinant() {
        return sxx * syy - sxy * sxy;
    }

    private double sum(List<Vec3> of, Vec3 first, Vec3 second) {
        Vec3 mean = new Vec3(x, y, z);
        return of.stream().map(p -> p.minus(mean)).mapToDouble(p -> p.dot(first) * p.dot(second)).sum();
    }

    /** Returns how far a point lies above the plane through all, m. */
    double residual(int index) {
        Vec3 p = points.get(index);
        return p.z() - z - slopeX * (p.x() - x) - slopeY * (p.y() - y);
    }

    /** Returns how far a point lies above the plane through the others, m; nothing where the others lie on one line. */
    OptionalDouble offTheOthers(int index) {
        double dx = points.get(index).x() - x;
        double dy = points.get(index).y() - y;
        double leverage = 1.0 / points.size() + (syy * dx * dx - 2 * sxy * dx * dy + sxx * dy * dy) / determinant();
        return leverage > ALONE ? OptionalDouble.empty() : OptionalDouble.of(residual(index) / (1 - leverage));
    }
}
