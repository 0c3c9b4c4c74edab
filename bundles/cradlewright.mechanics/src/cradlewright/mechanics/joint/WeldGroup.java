package cradlewright.mechanics.joint;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Welds of one joint as lines in a plane, elastic method: force per length from a member end force; see
 * {@link JointFormulas#WELD_GROUP}. Compression is carried by the weld as well, contact is not counted on. All runs have the same
 * throat; take the least.
 */
public final class WeldGroup {

    /**
     * A straight run of weld.
     *
     * @param from one end, m
     * @param to the other end, m
     */
    public record Run(PlanePoint from, PlanePoint to) {

        /** Refuses a run without length. */
        public Run {
            if (!(to.minus(from).norm() > 0)) {
                throw new IllegalArgumentException("a weld run needs a length above zero: " + from + " to " + to);
            }
        }

        /** Returns the length, m. */
        public double length() {
            return to.minus(from).norm();
        }

        private PlanePoint middle() {
            return new PlanePoint((from.u() + to.u()) / 2, (from.v() + to.v()) / 2);
        }
    }

    /**
     * Force per length of weld at a point, N/m.
     *
     * @param at the point
     * @param alongU component along u
     * @param alongV component along v
     * @param pull component out of the plane, pull positive
     */
    public record Flow(PlanePoint at, double alongU, double alongV, double pull) {

        /** Returns the resultant, N/m, to be compared with F_w,Rd whatever its direction. */
        public double resultant() {
            return Math.hypot(Math.hypot(alongU, alongV), pull);
        }
    }

    private final List<Run> runs;
    private final PlaneInertia inertia;

    /**
     * A weld group.
     *
     * @param runs effective lengths of the welds, at least one
     * @throws IllegalArgumentException if there is no run
     */
    public WeldGroup(List<Run> runs) {
        if (runs.isEmpty()) {
            throw new IllegalArgumentException("a weld group needs at least one run");
        }
        this.runs = List.copyOf(runs);
        double length = sum(Run::length);
        PlanePoint c = new PlanePoint(sum(r -> r.length() * r.middle().u()) / length,
                sum(r -> r.length() * r.middle().v()) / length);
        this.inertia = new PlaneInertia(length, c, sum(r -> product(r, c, 1, 0, 1, 0)), sum(r -> product(r, c, 0, 1, 0, 1)),
                sum(r -> product(r, c, 1, 0, 0, 1)));
    }

    /** Integral of two coordinates' product along a run about the centroid: own part and the part of its middle. */
    private static double product(Run r, PlanePoint c, double au, double av, double bu, double bv) {
        PlanePoint d = r.to.minus(r.from);
        PlanePoint m = r.middle().minus(c);
        double own = (au * d.u() + av * d.v()) * (bu * d.u() + bv * d.v()) / 12;
        return r.length() * (own + (au * m.u() + av * m.v()) * (bu * m.u() + bv * m.v()));
    }

    /** Returns the runs. */
    public List<Run> runs() {
        return runs;
    }

    /** Returns the whole length, m. */
    public double length() {
        return inertia.amount();
    }

    /** Returns the centroid, m. */
    public PlanePoint centroid() {
        return inertia.centroid();
    }

    /** Returns the second moment for bending about u (integral of v squared), m3. */
    public double bendingMomentAboutU() {
        return inertia.vv();
    }

    /** Returns the second moment for bending about v (integral of u squared), m3. */
    public double bendingMomentAboutV() {
        return inertia.uu();
    }

    /** Returns the polar moment, m3. */
    public double polarMoment() {
        return inertia.polar();
    }

    /**
     * Force per length at both ends of every run. Each component is linear along a run, so the resultant is largest at an end.
     *
     * @param load design load of the joint
     * @throws IllegalArgumentException if a single straight weld must carry a moment about its own line
     */
    public List<Flow> flows(GroupLoad load) {
        GroupLoad moved = load.movedTo(centroid());
        return runs.stream().flatMap(r -> Stream.of(r.from(), r.to())).map(p -> {
            PlanePoint shear = inertia.inPlane(moved, p);
            return new Flow(p, shear.u(), shear.v(), inertia.outOfPlane(moved, p));
        }).toList();
    }

    /** Returns the flow with the largest resultant; throws as {@link #flows(GroupLoad)}. */
    public Flow worst(GroupLoad load) {
        return flows(load).stream().max(Comparator.comparingDouble(Flow::resultant)).orElseThrow();
    }

    private double sum(ToDoubleFunction<Run> part) {
        return runs.stream().mapToDouble(part).sum();
    }
}
