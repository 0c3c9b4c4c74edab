package cradlewright.mechanics.castor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * Swivel castors touch the floor beside their swivel axis. Swept radius, and the margin of the balance point when the castors
 * have turned to their worst position ({@link CastorFormulas#SWIVEL_LEAD}).
 */
public final class SwivelLead {

    /**
     * A castor in plan.
     *
     * @param axis swivel axis, or the floor contact of a fixed castor, m; z is ignored
     * @param lead distance of the floor contact from the axis, m; zero for a fixed castor
     */
    public record Castor(Vec3 axis, double lead) {

        /** Refuses coordinates that are not finite and a lead below zero. */
        public Castor {
            Objects.requireNonNull(axis, "axis");
            axis = new Vec3(Require.finite(axis.x(), "swivel axis x"), Require.finite(axis.y(), "swivel axis y"), 0);
            Require.notNegative(lead, "swivel lead");
        }
    }

    /**
     * The direction in which the load tips most easily.
     *
     * @param margin least distance of the balance point from a tipping line in plan, m; below zero it tips by itself
     * @param direction unit vector in the floor plane towards which it tips
     */
    public record WorstTilt(double margin, Vec3 direction) {
    }

    private SwivelLead() {
    }

    /** Returns the radius that a castor sweeps as it swivels, m: lead (not below zero) plus wheel radius (above zero). */
    public static double sweptRadius(double lead, double wheelRadius) {
        return Require.notNegative(lead, "swivel lead") + Require.positive(wheelRadius, "wheel radius");
    }

    /**
     * Returns the worst tilt over all positions of all swivels.
     *
     * <p>Against a tilt towards n each castor does least when its contact has swung straight back: it then holds at
     * (a_i - c) . n - e_i, and the farthest one counts. The least over all n lies where two castors hold equally far, so only
     * those directions are tried, and the directions straight through one castor.
     *
     * @param castors castors, from 1 to 64
     * @param balancePoint balance point, m; z is ignored
     */
    public static WorstTilt worst(List<Castor> castors, Vec3 balancePoint) {
        return tilts(castors, balancePoint).stream().min(Comparator.comparingDouble(WorstTilt::margin)).orElseThrow();
    }

    /**
     * Returns all tilts among which the worst one is, whatever moves the balance point a little: one for each direction in which two
     * castors hold equally far, and those straight through one castor. Parameters as {@link #worst}.
     */
    public static List<WorstTilt> tilts(List<Castor> castors, Vec3 balancePoint) {
        Require.within(castors.size(), 1, CastorStates.MOST_CASTORS, "number of castors");
        Vec3 balance = new Vec3(Require.finite(balancePoint.x(), "balance point x"),
                Require.finite(balancePoint.y(), "balance point y"), 0);
        List<WorstTilt> tilts = new ArrayList<>();
        for (Vec3 direction : directions(castors, balance)) {
            double margin = castors.stream().mapToDouble(castor -> castor.axis().minus(balance).dot(direction) - castor.lead())
                    .max().orElseThrow();
            tilts.add(new WorstTilt(margin, direction));
        }
        return tilts;
    }

    private static List<Vec3> directions(List<Castor> castors, Vec3 balance) {
        List<Vec3> directions = new ArrayList<>();
        directions.add(new Vec3(1, 0, 0));
        for (int i = 0; i < castors.size(); i++) {
            Vec3 arm = balance.minus(castors.get(i).axis());
            if (arm.norm() > 0) {
                directions.add(arm.unit());
            }
            for (int j = i + 1; j < castors.size(); j++) {
                addEqual(directions, castors.get(i), castors.get(j));
            }
        }
        return directions;
    }

    /** Adds the two unit vectors n with (a_i - a_j) . n = e_i - e_j, where there are any. */
    private static void addEqual(List<Vec3> directions, Castor one, Castor other) {
        Vec3 between = one.axis().minus(other.axis());
        double length = between.norm();
        double cosine = length > 0 ? (one.lead() - other.lead()) / length : 2;
        if (Math.abs(cosine) > 1) {
            return;
        }
        Vec3 along = between.unit();
        Vec3 across = Vec3.UP.cross(along);
        double sine = Math.sqrt(1 - cosine * cosine);
        directions.add(along.times(cosine).plus(across.times(sine)));
        directions.add(along.times(cosine).minus(across.times(sine)));
    }
}
