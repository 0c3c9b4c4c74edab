package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How a stiff body hangs from one hook on legs of given lengths, in axes that are fixed to the body and upright while it stands level. The
 * taut legs settle where the hook is in these axes; the body then swings until its balance point lies straight below the hook, and that
 * line is what is upright while it hangs. See {@link LiftingFormulas#HUNG_ON_LEGS}. Neglected: weight and stretch of the legs, jerk.
 *
 * @param hook place of the hook in the axes of the body, m
 * @param up direction that is upright while it hangs, in the axes of the body, of length one
 * @param pulls force in each leg, N, zero in those that are slack
 * @param leans lean of each leg from upright, rad
 * @param overlong by how much the hook is further from the point of a slack leg than that leg is long, over its length; zero or below
 *        where no leg would have to stretch
 */
public record HungOnLegs(Vec3 hook, Vec3 up, List<Double> pulls, List<Double> leans, double overlong) {

    /** Share of the weight up to which a leg that would have to push is taken as one without a load. */
    private static final double NO_PUSH = 1e-9;
    /** Sine below which directions count as along each other. */
    private static final double SAME_WAY = 1e-9;

    /**
     * A leg.
     *
     * @param point where it holds the body, m
     * @param length from the hook to there, m
     */
    public record Leg(Vec3 point, double length) {

        /** Refuses lengths that are none. */
        public Leg {
            Require.positive(length, "length of the leg");
        }
    }

    /** Copies the lists. */
    public HungOnLegs {
        pulls = List.copyOf(pulls);
        leans = List.copyOf(leans);
    }

    /** Returns how far the body is tilted from level, rad, 0 to pi. */
    public double tilt() {
        return angle(up, Vec3.UP);
    }

    /** Returns the sets of legs that may carry alone: all of two or three legs; of four any three, and any two. */
    public static List<List<Integer>> sets(int legs) {
        return switch ((int) Require.within(legs, 2, 4, "number of legs")) {
            case 2 -> List.of(List.of(0, 1));
            case 3 -> List.of(List.of(0, 1, 2));
            default -> List.of(List.of(0, 1, 2), List.of(0, 1, 3), List.of(0, 2, 3), List.of(1, 2, 3), List.of(0, 1), List.of(0, 2),
                    List.of(0, 3), List.of(1, 2), List.of(1, 3), List.of(2, 3));
        };
    }

    /**
     * Returns how it hangs with two or three of its legs taut; nothing when these legs do not reach each other, when one of them would have
     * to push, or when the balance point does not settle how it hangs (two points with the balance point between them).
     *
     * @param weight N
     * @param balance balance point, m
     * @param legs all legs
     * @param taut indices of the two or three legs that carry
     */
    public static Optional<HungOnLegs> of(double weight, Vec3 balance, List<Leg> legs, List<Integer> taut) {
        Require.notNegative(weight, "weight");
        List<Leg> carrying = taut.stream().map(legs::get).toList();
        Optional<Vec3> hook = switch (carrying.size()) {
            case 2 -> ofTwo(balance, carrying.get(0), carrying.get(1));
            case 3 -> ofThree(carrying.get(0), carrying.get(1), carrying.get(2));
            default -> throw new IllegalArgumentException("two or three taut legs wanted, found " + carrying.size());
        };
        return hook.filter(h -> h.minus(balance).norm() > 0).flatMap(h -> at(h, weight, balance, legs, taut));
    }

    private static Optional<HungOnLegs> at(Vec3 hook, double weight, Vec3 balance, List<Leg> legs, List<Integer> taut) {
        Vec3 up = hook.minus(balance).unit();
        List<Vec3> u = new ArrayList<>();
        taut.forEach(leg -> u.add(hook.minus(legs.get(leg).point()).unit()));
        if (u.size() == 2) {
            Vec3 across = u.get(0).cross(u.get(1));
            if (across.norm() < SAME_WAY) {
                return Optional.empty();
            }
            u.add(across.unit());
        }
        Optional<double[]> forces = SlingLegs.solve(weight, up, u);
        if (forces.isEmpty() || Arrays.stream(forces.get()).limit(taut.size()).anyMatch(force -> force < -NO_PUSH * weight)) {
            return Optional.empty();
        }
        List<Double> pulls = new ArrayList<>();
        List<Double> leans = new ArrayList<>();
        double overlong = 0;
        for (int i = 0; i < legs.size(); i++) {
            int at = taut.indexOf(i);
            Vec3 along = hook.minus(legs.get(i).point());
            pulls.add(at < 0 ? 0 : Math.max(0, forces.get()[at]));
            leans.add(angle(along, up));
            overlong = Math.max(overlong, at < 0 ? along.norm() / legs.get(i).length() - 1 : 0);
        }
        return Optional.of(new HungOnLegs(hook, up, pulls, leans, overlong));
    }

    /** Two legs leave the hook a circle; the three forces lie in one plane, so the hook is in that of both points and balance point. */
    private static Optional<Vec3> ofTwo(Vec3 balance, Leg first, Leg second) {
        Vec3 across = second.point().minus(first.point());
        Vec3 toBalance = balance.minus(first.point());
        if (across.norm() == 0) {
            return Optional.empty();
        }
        Vec3 along = across.unit();
        Vec3 below = toBalance.minus(along.times(along.dot(toBalance)));
        double foot = foot(first.length(), second.length(), across.norm());
        double height = first.length() * first.length() - foot * foot;
        if (!(height > 0) || below.norm() < SAME_WAY * across.norm()) {
            return Optional.empty();
        }
        return Optional.of(first.point().plus(along.times(foot)).plus(below.unit().times(-Math.sqrt(height))));
    }

    /** Three legs settle the hook: where three balls about the points meet, on the upper side of the points. */
    private static Optional<Vec3> ofThree(Leg first, Leg second, Leg third) {
        Vec3 across = second.point().minus(first.point());
        Vec3 further = third.point().minus(first.point());
        Vec3 normal = across.cross(further);
        if (normal.norm() <= SAME_WAY * across.norm() * further.norm()) {
            return Optional.empty();
        }
        Vec3 x = across.unit();
        Vec3 z = normal.times(normal.z() < 0 ? -1 : 1).unit();
        Vec3 y = z.cross(x);
        double atX = foot(first.length(), second.length(), across.norm());
        double thirdX = x.dot(further);
        double thirdY = y.dot(further);
        double atY = (first.length() * first.length() - third.length() * third.length() + thirdX * thirdX + thirdY * thirdY
                - 2 * thirdX * atX) / (2 * thirdY);
        double height = first.length() * first.length() - atX * atX - atY * atY;
        return height > 0 ? Optional.of(first.point().plus(x.times(atX)).plus(y.times(atY)).plus(z.times(Math.sqrt(height))))
                : Optional.empty();
    }

    /** Returns where on the way from the first point to the second the foot of the triangle lies, m. */
    private static double foot(double first, double second, double apart) {
        return (first * first - second * second + apart * apart) / (2 * apart);
    }

    private static double angle(Vec3 a, Vec3 b) {
        return Math.atan2(a.cross(b).norm(), a.dot(b));
    }
}
