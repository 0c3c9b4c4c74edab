package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Forces in the legs of a sling, by statics. The hook must hang straight above the balance point: a load slung otherwise swings
 * until it does. Neglected: weight of the sling, jerk, stretch.
 */
public final class SlingLegs {

    /** Legs further from upright are never used, rad: 60 degrees (EN 1492, ASME B30.9 practice). */
    public static final double MOST_SPREAD = Math.toRadians(60);

    /** Lengths and forces of two unequal legs, m and N. */
    public record Two(double firstLength, double secondLength, double first, double second) {
    }

    private SlingLegs() {
    }

    /**
     * Returns the force in each of {@code legs} equal legs that all carry, W/(n cos beta), N; see {@link
     * LiftingFormulas#EQUAL_LEGS}. For four legs on a stiff load use {@link #fourOnTwoLegBasis}.
     *
     * @param weight N
     * @param legs number of legs, 1 to 4
     * @param beta lean of the legs from upright, rad, below pi/2
     */
    public static double equal(double weight, int legs, double beta) {
        Require.within(legs, 1, 4, "number of legs");
        return Require.notNegative(weight, "weight") / (legs * cosine(beta));
    }

    /**
     * Returns the force for which each of four legs is chosen when load and legs are stiff: one diagonal pair carries all, N; see
     * {@link LiftingFormulas#FOUR_STIFF}.
     */
    public static double fourOnTwoLegBasis(double weight, double beta) {
        return equal(weight, 2, beta);
    }

    /** Returns 1/sin of the angle to the horizontal (rad, above 0 up to pi/2), the factor on the upright share. */
    public static double angleFactor(double toHorizontal) {
        Require.positive(toHorizontal, "angle to the horizontal");
        return 1 / Math.sin(Require.within(toHorizontal, 0, Math.PI / 2, "angle to the horizontal"));
    }

    /**
     * Returns the forces in two legs from one hook to points at one height, T1 = W D2 S1/(H (D1 + D2)) and T2 likewise; see
     * {@link LiftingFormulas#UNEQUAL_LEGS}.
     *
     * @param weight N
     * @param height of the hook above the two points, m
     * @param firstSide horizontal distance of the first point from the line through hook and balance point, m
     * @param secondSide that of the second point on the other side, m
     */
    public static Two two(double weight, double height, double firstSide, double secondSide) {
        Require.notNegative(weight, "weight");
        Require.positive(height, "height of the hook");
        Require.notNegative(firstSide, "first distance");
        Require.notNegative(secondSide, "second distance");
        double base = height * Require.positive(firstSide + secondSide, "distance of the two points");
        double s1 = Math.hypot(firstSide, height);
        double s2 = Math.hypot(secondSide, height);
        return new Two(s1, s2, weight * secondSide * s1 / base, weight * firstSide * s2 / base);
    }

    /**
     * Returns the forces in three legs, N, from sum T u = W up; see {@link LiftingFormulas#THREE_LEGS}.
     *
     * @param weight N
     * @param hook place of the hook, straight above the balance point, m
     * @param points three points where the legs hold the load, below the hook, m
     * @throws IllegalArgumentException for legs in one plane, or when the hook is not above the triangle of the points, so that a
     *         leg would have to push
     */
    public static List<Double> three(double weight, Vec3 hook, List<Vec3> points) {
        if (points.size() != 3) {
            throw new IllegalArgumentException("three legs wanted, found " + points.size());
        }
        Require.notNegative(weight, "weight");
        double[] forces = solve(weight, Vec3.UP, directions(hook, points)).orElseThrow(
                () -> new IllegalArgumentException("the three legs must not lie in one plane"));
        List<Double> pulls = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            if (pushes(forces[i], weight)) {
                throw new IllegalArgumentException("leg " + (i + 1)
                        + " would have to push: the hook must be above the triangle of"
                        + " the points");
            }
            pulls.add(Math.max(0, forces[i]));
        }
        return List.copyOf(pulls);
    }

    /**
     * Returns the most each of four legs can get however the lengths turn out, N: the largest force over all sets of three legs
     * that hold the load (two of them, where a pair holds it alone); see {@link LiftingFormulas#FOUR_STIFF}.
     *
     * @param weight N
     * @param hook place of the hook, straight above the balance point, m
     * @param points four points where the legs hold the load, below the hook, m
     * @throws IllegalArgumentException when no three legs hold the load
     */
    public static List<Double> fourStiff(double weight, Vec3 hook, List<Vec3> points) {
        if (points.size() != 4) {
            throw new IllegalArgumentException("four legs wanted, found " + points.size());
        }
        Require.notNegative(weight, "weight");
        List<Vec3> all = directions(hook, points);
        double[] most = new double[4];
        boolean held = false;
        for (int out = 0; out < 4; out++) {
            List<Vec3> rest = new ArrayList<>(all);
            rest.remove(out);
            Optional<double[]> solved = solve(weight, Vec3.UP, rest).filter(f -> Arrays.stream(f).noneMatch(t -> pushes(t, weight)));
            if (solved.isPresent()) {
                held = true;
                for (int i = 0; i < 3; i++) {
                    int leg = i < out ? i : i + 1;
                    most[leg] = Math.max(most[leg], solved.get()[i]);
                }
            }
        }
        if (!held) {
            throw new IllegalArgumentException("the hook must be above the area of the four points, found hook " + hook);
        }
        return List.of(most[0], most[1], most[2], most[3]);
    }

    /** Returns the forces along three directions that hold the weight; empty when the directions lie in one plane. */
    static Optional<double[]> solve(double weight, Vec3 up, List<Vec3> u) {
        double whole = u.get(0).dot(u.get(1).cross(u.get(2)));
        if (Math.abs(whole) < 1e-9) {
            return Optional.empty();
        }
        double[] forces = new double[3];
        for (int i = 0; i < 3; i++) {
            forces[i] = weight * up.dot(u.get((i + 1) % 3).cross(u.get((i + 2) % 3))) / whole;
        }
        return Optional.of(forces);
    }

    private static boolean pushes(double force, double weight) {
        return force < -1e-9 * weight;
    }

    private static List<Vec3> directions(Vec3 hook, List<Vec3> points) {
        List<Vec3> u = new ArrayList<>();
        for (Vec3 p : points) {
            Vec3 leg = hook.minus(p);
            Require.positive(leg.z(), "height of the hook above the point");
            u.add(leg.unit());
        }
        return u;
    }

    private static double cosine(double beta) {
        Require.notNegative(beta, "lean of the legs");
        double cosine = Math.cos(Require.within(beta, 0, Math.PI / 2, "lean of the legs"));
        return Require.within(cosine, 1e-9, 1, "cosine of the lean of the legs");
    }
}
