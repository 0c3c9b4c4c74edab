package cradlewright.analysis.load;

import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.lifting.HungOnLegs;
import cradlewright.mechanics.lifting.HungOnLegs.Leg;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The legs of one hook at the unfavourable end of what is known: mass and balance point, places of the lift points, lengths of the legs.
 *
 * The steepest slope of each answer with all of these gives the worst point of their ellipse (k = 2), where the answer is worked out
 * again.
 */
final class HookSling {

    /** How much a leg may have to stretch before it no longer lets others go slack: webbing and round slings, from memory. */
    private static final double STRETCH = 0.03;
    private static final double STEP = 1e-6;
    /** Share of its length by which a leg may be short but for rounding. */
    private static final double SAME = 1e-9;
    /** Legs beyond which any one may go slack. */
    static final int HOLD = 3;
    /** Numbers ahead of those of the legs: mass and the three coordinates of the balance point. */
    private static final int WEIGHT = 4;
    /** Numbers of one leg: the three coordinates of its point, its length. */
    private static final int LEG = 4;

    private final List<Support> supports;
    private final double[] listed;
    private final double[][] covariance;
    private final List<List<Integer>> sets;

    HookSling(EstimatedBalance weight, List<Support> supports, List<Value> lengths) {
        this.supports = supports;
        int n = WEIGHT + LEG * supports.size();
        this.listed = new double[n];
        this.covariance = new double[n][n];
        Quantity[] quantities = Quantity.values();
        Vec3 balance = weight.balance().point();
        set(0, weight.balance().mass(), balance.x(), balance.y(), balance.z());
        for (int i = 0; i < WEIGHT; i++) {
            for (int j = 0; j < WEIGHT; j++) {
                covariance[i][j] = weight.covariance(quantities[i], quantities[j]);
            }
        }
        for (int leg = 0; leg < supports.size(); leg++) {
            int at = WEIGHT + LEG * leg;
            Vec3 point = supports.get(leg).onCar();
            set(at, point.x(), point.y(), point.z(), lengths.get(leg).si());
            double u = supports.get(leg).placeUncertainty();
            for (int axis = 0; axis < 3; axis++) {
                covariance[at + axis][at + axis] = u * u;
            }
            covariance[at + 3][at + 3] = lengths.get(leg).u() * lengths.get(leg).u();
        }
        this.sets = HungOnLegs.sets(supports.size()).stream()
                .filter(taut -> hung(listed, taut).stream().allMatch(way -> way.overlong() <= STRETCH)).toList();
    }

    private void set(int at, double... values) {
        System.arraycopy(values, 0, listed, at, values.length);
    }

    /** Returns how it hangs. */
    HookHang hang() {
        List<HungOnLegs> ways = ways(listed);
        if (ways.isEmpty() || ways.stream().anyMatch(way -> way.up().z() <= 0)) {
            return HookHang.falling();
        }
        List<HookHang.Leg> legs = new ArrayList<>();
        for (int i = 0; i < supports.size(); i++) {
            int leg = i;
            ToDoubleFunction<HungOnLegs> pull = way -> way.pulls().get(leg);
            double low = -atMost(x -> -ways(x).stream().mapToDouble(pull).min().orElse(Double.NaN));
            double high = atMost(x -> most(x, pull));
            double lean = atMost(x -> most(x, way -> way.leans().get(leg)));
            if (Double.isNaN(low) || Double.isNaN(high) || Double.isNaN(lean)) {
                return HookHang.falling();
            }
            legs.add(new HookHang.Leg(supports.get(i).contactId(), most(listed, pull), Math.max(0, low), high, lean));
        }
        HungOnLegs hung = pose(listed).orElseThrow();
        double off = Math.hypot(hung.up().x(), hung.up().y()) + Math.hypot(
                give(slope(x -> up(x, Vec3::x))), give(slope(x -> up(x, Vec3::y))));
        double tiltAtMost = Math.atan2(off, hung.up().z());
        return Double.isNaN(tiltAtMost) ? HookHang.falling() : new HookHang(legs, true, legs.size() > HOLD,
                atMost(x -> x[0] * Constants.GRAVITY), hung.tilt(), tiltAtMost, Map.of());
    }

    private List<HungOnLegs> hung(double[] x, List<Integer> taut) {
        List<Leg> legs = new ArrayList<>();
        for (int at = WEIGHT; at < x.length; at += LEG) {
            legs.add(new Leg(new Vec3(x[at], x[at + 1], x[at + 2]), x[at + 3]));
        }
        return HungOnLegs.of(x[0] * Constants.GRAVITY, new Vec3(x[1], x[2], x[3]), legs, taut).stream().toList();
    }

    private List<HungOnLegs> ways(double[] x) {
        return sets.stream().flatMap(taut -> hung(x, taut).stream()).toList();
    }

    /** Returns the most over all ways in which its legs may share; NaN where it does not stay hanging. */
    private double most(double[] x, ToDoubleFunction<HungOnLegs> what) {
        return ways(x).stream().mapToDouble(what).max().orElse(Double.NaN);
    }

    /**
     * Returns how it hangs while no leg stretches: no slack leg is short of the hook. Which legs that leaves taut changes with every
     * number wherever more of them reach the hook than are needed, so it is looked for anew each time; of two ways it takes the lower.
     */
    private Optional<HungOnLegs> pose(double[] x) {
        Vec3 balance = new Vec3(x[1], x[2], x[3]);
        return HungOnLegs.sets(supports.size()).stream().flatMap(taut -> hung(x, taut).stream())
                .min(Comparator.<HungOnLegs>comparingDouble(way -> way.overlong() < SAME ? 0 : way.overlong())
                        .thenComparingDouble(way -> -way.hook().minus(balance).norm()));
    }

    private double up(double[] x, ToDoubleFunction<Vec3> axis) {
        return pose(x).map(HungOnLegs::up).stream().mapToDouble(axis).findFirst().orElse(Double.NaN);
    }

    private double atMost(ToDoubleFunction<double[]> what) {
        double[] slope = slope(what);
        double give = give(slope);
        double straight = what.applyAsDouble(listed) + give;
        if (!(give > 0)) {
            return straight;
        }
        double[] worst = listed.clone();
        for (int i = 0; i < worst.length; i++) {
            for (int j = 0; j < worst.length; j++) {
                worst[i] += Value.COVERAGE * Value.COVERAGE * covariance[i][j] * slope[j] / give;
            }
        }
        return Math.max(straight, what.applyAsDouble(worst));
    }

    /** Returns twice the standard uncertainty of what has this slope. */
    private double give(double[] slope) {
        double variance = 0;
        for (int i = 0; i < slope.length; i++) {
            for (int j = 0; j < slope.length; j++) {
                variance += slope[i] * covariance[i][j] * slope[j];
            }
        }
        return Value.COVERAGE * Math.sqrt(Math.max(0, variance));
    }

    /**
     * Returns the steepest slope with each number, near what is listed and out to both ends of what is known of it: where the legs that
     * are taut change, the two sides differ, and their mean would hide it. Not a number where it does not hang at one of them.
     */
    private double[] slope(ToDoubleFunction<double[]> what) {
        double[] slope = new double[listed.length];
        double straight = what.applyAsDouble(listed);
        for (int i = 0; i < listed.length; i++) {
            // What is known exactly takes no part.
            if (covariance[i][i] > 0) {
                double near = STEP * Math.max(1, Math.abs(listed[i]));
                double far = Value.COVERAGE * Math.sqrt(covariance[i][i]);
                for (double step : new double[] {near, -near, far, -far}) {
                    double[] x = listed.clone();
                    x[i] = listed[i] + step;
                    double secant = (what.applyAsDouble(x) - straight) / step;
                    if (Double.isNaN(secant) || Math.abs(secant) > Math.abs(slope[i])) {
                        slope[i] = secant;
                    }
                }
            }
        }
        return slope;
    }
}
