package cradlewright.mechanics.joint;

import java.util.List;
import java.util.function.ToDoubleFunction;

import cradlewright.mechanics.formula.Require;

/**
 * Bolts of one size in one plane, elastic method: shear by the polar moment about the centroid
 * ({@link JointFormulas#GROUP_IN_PLANE}), tension either about the compression edge ({@link JointFormulas#GROUP_TOE}) or,
 * on the safe side, about the centroid ({@link JointFormulas#GROUP_CENTROID}).
 *
 * <p>Neglected: hole clearance (shims and slots forbid the plastic and instantaneous-centre methods that would give more),
 * friction from tightening, bending of the bolts. Compression over the whole joint does not relieve the bolts here.
 */
public final class BoltGroup {

    private final List<PlanePoint> bolts;
    private final PlaneInertia inertia;

    /**
     * A group of bolts.
     *
     * @param bolts centres in the plane of the joint, at least one, m
     * @throws IllegalArgumentException if there is no bolt or two stand in one place
     */
    public BoltGroup(List<PlanePoint> bolts) {
        if (bolts.isEmpty()) {
            throw new IllegalArgumentException("a bolt group needs at least one bolt");
        }
        if (bolts.stream().distinct().count() != bolts.size()) {
            throw new IllegalArgumentException("two bolts of the group stand in one place");
        }
        this.bolts = List.copyOf(bolts);
        int n = bolts.size();
        PlanePoint c = new PlanePoint(sum(PlanePoint::u) / n, sum(PlanePoint::v) / n);
        this.inertia = new PlaneInertia(n, c, sum(p -> sq(p.u() - c.u())), sum(p -> sq(p.v() - c.v())),
                sum(p -> (p.u() - c.u()) * (p.v() - c.v())));
    }

    /** Returns the centres. */
    public List<PlanePoint> bolts() {
        return bolts;
    }

    /** Returns the centroid, m. */
    public PlanePoint centroid() {
        return inertia.centroid();
    }

    /** Returns the sum of the squared distances from the centroid J, m2. */
    public double polarMoment() {
        return inertia.polar();
    }

    /**
     * Forces with the tensions taken about the centroid: more tension than about the toe, and right for any direction of bending.
     * Bolts on the pressed side get no tension.
     *
     * @param load design load of the joint
     * @param prying factor on the tensions, 1 to 3; see {@link Prying}
     * @return one force per bolt, in the order of the bolts
     * @throws IllegalArgumentException if the factor is out of range, one bolt must carry a moment, or a straight row must carry
     *         a moment about its own line
     */
    public List<BoltForce> forcesAboutCentroid(GroupLoad load, double prying) {
        requirePrying(prying);
        GroupLoad moved = load.movedTo(centroid());
        GroupLoad pulled = withoutRelief(moved);
        return bolts.stream().map(p -> force(moved, p, inertia.outOfPlane(pulled, p) * prying)).toList();
    }

    /**
     * Forces with the tensions taken about the compression edge: the plate turns as a rigid body about the toe, the tension of a
     * bolt grows with its distance from it. Bending about u and about v is each taken about its own edge and added.
     *
     * @param load design load of the joint
     * @param outline the pressed face; every bolt must lie in it
     * @param prying factor on the tensions, 1 to 3; see {@link Prying}
     * @return one force per bolt, in the order of the bolts
     * @throws IllegalArgumentException if the factor is out of range, a bolt lies outside the outline, or all lie on the toe
     */
    public List<BoltForce> forcesAboutToe(GroupLoad load, PlateOutline outline, double prying) {
        requirePrying(prying);
        for (PlanePoint p : bolts) {
            if (!outline.contains(p)) {
                throw new IllegalArgumentException("bolt " + p + " lies outside the pressed face " + outline);
            }
        }
        GroupLoad moved = load.movedTo(centroid());
        ToDoubleFunction<PlanePoint> armV = moved.momentU() >= 0 ? p -> p.v() - outline.minV() : p -> outline.maxV() - p.v();
        ToDoubleFunction<PlanePoint> armU = moved.momentV() >= 0 ? p -> outline.maxU() - p.u() : p -> p.u() - outline.minU();
        double perArmV = perArm(moved.momentU(), armV);
        double perArmU = perArm(moved.momentV(), armU);
        double pull = withoutRelief(moved).axial() / bolts.size();
        return bolts.stream()
                .map(p -> force(moved, p, (pull + perArmV * armV.applyAsDouble(p) + perArmU * armU.applyAsDouble(p)) * prying))
                .toList();
    }

    private double perArm(double moment, ToDoubleFunction<PlanePoint> arm) {
        if (moment == 0) {
            return 0;
        }
        double squares = sum(p -> sq(arm.applyAsDouble(p)));
        if (!(squares > 0)) {
            throw new IllegalArgumentException("all bolts stand on the toe: nothing holds the moment of " + moment + " N m");
        }
        return Math.abs(moment) / squares;
    }

    private BoltForce force(GroupLoad moved, PlanePoint bolt, double tension) {
        PlanePoint shear = inertia.inPlane(moved, bolt);
        return new BoltForce(shear.u(), shear.v(), Math.max(0, tension));
    }

    private static GroupLoad withoutRelief(GroupLoad load) {
        return load.axial() >= 0 ? load
                : new GroupLoad(load.at(), load.shearU(), load.shearV(), 0, load.momentU(), load.momentV(), load.torsion());
    }

    private static void requirePrying(double prying) {
        Require.within(prying, 1, 3, "prying factor");
    }

    private double sum(ToDoubleFunction<PlanePoint> part) {
        return bolts.stream().mapToDouble(part).sum();
    }

    private static double sq(double x) {
        return x * x;
    }
}
