package cradlewright.mechanics.joint;

/**
 * Amount and second moments about the centroid of points or lines in a plane, and the elastic answer to a load: the field that
 * is linear over the plane and balances it.
 */
final class PlaneInertia {

    /** Below this share of the polar moment a principal second moment counts as none. */
    private static final double DEGENERATE = 1e-12;
    /** A moment below this share of all that acts on the joint counts as rounding. */
    private static final double NEGLIGIBLE = 1e-9;

    private final double amount;
    private final PlanePoint centroid;
    private final double uu;
    private final double vv;
    private final double uv;

    PlaneInertia(double amount, PlanePoint centroid, double uu, double vv, double uv) {
        this.amount = amount;
        this.centroid = centroid;
        this.uu = uu;
        this.vv = vv;
        this.uv = uv;
    }

    double amount() {
        return amount;
    }

    PlanePoint centroid() {
        return centroid;
    }

    /** Sum or integral of v squared about the centroid: bending about u. */
    double vv() {
        return vv;
    }

    /** Sum or integral of u squared about the centroid: bending about v. */
    double uu() {
        return uu;
    }

    double polar() {
        return uu + vv;
    }

    /**
     * Returns the in-plane force per unit amount at a point; {@code load} must hold at the centroid.
     *
     * @throws IllegalArgumentException if the group has no polar moment but must carry torsion
     */
    PlanePoint inPlane(GroupLoad load, PlanePoint point) {
        double perArm = 0;
        if (polar() > 0) {
            perArm = load.torsion() / polar();
        } else if (load.torsion() != 0) {
            throw new IllegalArgumentException("a single point carries no torsion, found " + load.torsion() + " N m");
        }
        PlanePoint r = point.minus(centroid);
        return new PlanePoint(load.shearU() / amount - perArm * r.v(), load.shearV() / amount + perArm * r.u());
    }

    /**
     * Returns the gradient of the out-of-plane force per unit amount; {@code load} must hold at the centroid. Principal axes
     * keep a straight row usable as long as nothing bends it about its own line.
     *
     * @throws IllegalArgumentException if a straight row must carry a moment about its own line
     */
    PlanePoint gradient(GroupLoad load) {
        double angle = 0.5 * Math.atan2(2 * uv, uu - vv);
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double alongFirst = -load.momentV() * cos + load.momentU() * sin;
        double alongSecond = load.momentV() * sin + load.momentU() * cos;
        double mean = (uu + vv) / 2;
        double radius = Math.hypot((uu - vv) / 2, uv);
        double forces = Math.abs(load.axial()) + Math.abs(load.shearU()) + Math.abs(load.shearV());
        double scale = Math.abs(load.momentU()) + Math.abs(load.momentV()) + Math.abs(load.torsion())
                + forces * Math.sqrt(polar() / amount);
        double first = slope(alongFirst, mean + radius, scale);
        double second = slope(alongSecond, mean - radius, scale);
        return new PlanePoint(first * cos - second * sin, first * sin + second * cos);
    }

    private double slope(double moment, double secondMoment, double scale) {
        if (secondMoment > DEGENERATE * polar()) {
            return moment / secondMoment;
        }
        if (Math.abs(moment) > NEGLIGIBLE * scale) {
            throw new IllegalArgumentException(
                    "a straight row carries no moment about its own line, found " + Math.abs(moment) + " N m");
        }
        return 0;
    }

    /** Returns the out-of-plane force per unit amount at a point, pull positive; {@code load} must hold at the centroid. */
    double outOfPlane(GroupLoad load, PlanePoint point) {
        PlanePoint g = gradient(load);
        PlanePoint r = point.minus(centroid);
        return load.axial() / amount + g.u() * r.u() + g.v() * r.v();
    }
}
