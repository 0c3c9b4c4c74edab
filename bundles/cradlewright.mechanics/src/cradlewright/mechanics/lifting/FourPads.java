package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A body on four pads in closed form, also once one of them has lifted off; see {@link LiftingFormulas#FOUR_PADS}.
 *
 * <p>Four pads have one way n of being tensed against each other (sum n = sum n x = sum n y = 0). All loads that balance the
 * weight are R = R0 - w n, R0 being those of a body on springs with no error of height. The spring answer is w = n.d/(sum n2/k +
 * c_body), and since no pad pulls, w stays between the values at which a first pad is empty. The pad that stops it there is off.
 *
 * <p>The body's softness c_body resists only the warp; how softness alone would share the weight of a body with level pads is
 * neglected. Friction, and what is locked in by the order of setting down, are neglected as well.
 */
public final class FourPads {

    /** A pad below this share of the mean load is as good as empty (common practice, no source). */
    public static final double LEAST_SHARE = 0.10;

    private static final int COUNT = 4;

    private final double[] even;
    private final double[] warp;
    private final double softness;
    private final double freeWarp;
    private final double least;
    private final double most;
    private final double weight;

    /**
     * What the pads carry.
     *
     * @param loads N, in the order of the pads, none below zero
     * @param warp warp force w, N: each pad lost w n, n being 1 or -1 where the warp acts most; above zero when the first pad
     *        lost
     * @param off the pad that is off, if any
     * @param gap how far it is off, m; zero when none is
     */
    public record Loads(List<Double> loads, double warp, OptionalInt off, double gap) {

        /** Copies the list. */
        public Loads {
            loads = List.copyOf(loads);
        }

        /** Returns the index of the pad with the least load; the first of equals. */
        public int leastLoaded() {
            int least = 0;
            for (int i = 1; i < loads.size(); i++) {
                if (loads.get(i) < loads.get(least)) {
                    least = i;
                }
            }
            return least;
        }

        /**
         * Returns the least load over the mean load; {@link FourPads#LEAST_SHARE} is the line below which a pad is as good as
         * empty.
         */
        public double leastShare() {
            double sum = loads.stream().mapToDouble(Double::doubleValue).sum();
            return loads.get(leastLoaded()) * loads.size() / sum;
        }
    }

    /**
     * How far to the first empty pad.
     *
     * @param pad index of the pad that becomes empty
     * @param distance change of height until then, m; zero when one is empty already
     */
    public record LiftOff(int pad, double distance) {
    }

    /**
     * Sets a body on four pads.
     *
     * @param pads going round: front left, front right, rear right, rear left
     * @param weight N
     * @param x rearward place of the balance point, m
     * @param y place of the balance point to the right, m
     * @param bodySoftness c_body, m/N: n' C n of the body in the warp mode with the largest n scaled to 1; 0 for a stiff body,
     *        b2/K_t for a rectangle of width b on a body of torsional stiffness K_t (N m/rad)
     * @throws IllegalArgumentException for other than four pads, pads in one line, or a balance point outside them
     */
    public FourPads(List<Pad> pads, double weight, double x, double y, double bodySoftness) {
        if (pads.size() != COUNT) {
            throw new IllegalArgumentException("four pads wanted, found " + pads.size());
        }
        this.weight = Require.positive(weight, "weight");
        Require.finite(x, "x of the balance point");
        Require.finite(y, "y of the balance point");
        Require.notNegative(bodySoftness, "softness of the body");
        warp = warpOf(pads);
        double sum = bodySoftness;
        double low = 0;
        for (int i = 0; i < COUNT; i++) {
            sum += warp[i] * warp[i] / pads.get(i).stiffness();
            low += warp[i] * pads.get(i).low();
        }
        softness = sum;
        even = evenLoads(pads, x, y);
        freeWarp = low / softness;
        double lower = Double.NEGATIVE_INFINITY;
        double upper = Double.POSITIVE_INFINITY;
        double rounding = 1e-12 * weight;
        for (int i = 0; i < COUNT; i++) {
            if (warp[i] > 0) {
                upper = Math.min(upper, even[i] / warp[i]);
            } else if (warp[i] < 0) {
                lower = Math.max(lower, even[i] / warp[i]);
            } else if (even[i] < -rounding) {
                throw outside(x, y);
            }
        }
        if (lower > upper + rounding) {
            throw outside(x, y);
        }
        least = lower;
        most = Math.max(lower, upper);
    }

    /** Returns what the pads carry, with the errors of height as given. */
    public Loads loads() {
        return loadsAt(freeWarp);
    }

    /** Returns what the pads would carry without any error of height, N. */
    public Loads evenLoads() {
        return loadsAt(0);
    }

    /**
     * Returns the worst the pads can do when each may be off by up to {@code tolerance} either way on top of the errors given:
     * the loads in that state of the two extremes in which the least loaded pad carries less.
     */
    public Loads worstWithin(double tolerance) {
        double reach = 0;
        for (double n : warp) {
            reach += Math.abs(n);
        }
        reach *= Require.notNegative(tolerance, "tolerance of height") / softness;
        Loads one = loadsAt(freeWarp + reach);
        Loads other = loadsAt(freeWarp - reach);
        return one.leastShare() <= other.leastShare() ? one : other;
    }

    /** Returns how far pad {@code pad} can go down until a first pad is empty; empty when its height changes nothing. */
    public Optional<LiftOff> whenLowered(int pad) {
        return liftOff(warp[pad]);
    }

    /** Returns how far pad {@code pad} can go up until a first pad is empty; empty when its height changes nothing. */
    public Optional<LiftOff> whenRaised(int pad) {
        return liftOff(-warp[pad]);
    }

    /**
     * Returns what {@code pad} loses for each metre that {@code lowered} goes down while all four carry, N/m; a gain is below
     * zero.
     */
    public double loss(int pad, int lowered) {
        return warp[pad] * warp[lowered] / softness;
    }

    private Optional<LiftOff> liftOff(double direction) {
        if (direction == 0) {
            return Optional.empty();
        }
        if (freeWarp >= most) {
            return Optional.of(new LiftOff(limiting(most, 1), 0));
        }
        if (freeWarp <= least) {
            return Optional.of(new LiftOff(limiting(least, -1), 0));
        }
        double end = direction > 0 ? most : least;
        return Optional.of(new LiftOff(limiting(end, Math.signum(direction)), (end - freeWarp) * softness / direction));
    }

    private Loads loadsAt(double wanted) {
        double w = Math.max(least, Math.min(most, wanted));
        List<Double> loads = new ArrayList<>();
        for (int i = 0; i < COUNT; i++) {
            loads.add(Math.max(0, even[i] - w * warp[i]));
        }
        if (w == wanted) {
            return new Loads(loads, w, OptionalInt.empty(), 0);
        }
        int off = limiting(w, Math.signum(wanted - w));
        loads.set(off, 0.0);
        return new Loads(loads, w, OptionalInt.of(off), (wanted - w) * softness / warp[off]);
    }

    /** Returns the pad that is empty at the given end of the warp range. */
    private int limiting(double end, double sign) {
        int found = -1;
        for (int i = 0; i < COUNT; i++) {
            if (warp[i] * sign > 0 && (found < 0 || even[i] - end * warp[i] < even[found] - end * warp[found])) {
                found = i;
            }
        }
        return found;
    }

    /**
     * Returns the self-balanced pattern: each pad against the triangle of the other three, signs going round, largest scaled to
     * 1.
     */
    private static double[] warpOf(List<Pad> pads) {
        double[] n = new double[COUNT];
        double largest = 0;
        double span = 0;
        for (int i = 0; i < COUNT; i++) {
            Pad a = pads.get((i + 1) % COUNT);
            Pad b = pads.get((i + 2) % COUNT);
            Pad c = pads.get((i + 3) % COUNT);
            n[i] = (i % 2 == 0 ? 1 : -1) * doubleArea(a, b, c.x(), c.y());
            largest = Math.max(largest, Math.abs(n[i]));
            span = Math.max(span, Math.hypot(a.x() - b.x(), a.y() - b.y()));
        }
        if (!(largest > 1e-9 * span * span)) {
            throw new IllegalArgumentException("the four pads must not lie in one line");
        }
        double sign = n[0] < 0 || n[0] == 0 && n[1] < 0 ? -1 : 1;
        for (int i = 0; i < COUNT; i++) {
            n[i] = Math.abs(n[i]) > 1e-12 * largest ? sign * n[i] / largest : 0;
        }
        return n;
    }

    /** Returns the loads without errors of height: those of the widest three pads, less the warp that the springs take out. */
    private double[] evenLoads(List<Pad> pads, double x, double y) {
        int spare = 0;
        for (int i = 1; i < COUNT; i++) {
            if (Math.abs(warp[i]) > Math.abs(warp[spare])) {
                spare = i;
            }
        }
        double[] r = new double[COUNT];
        for (int k = 1; k < COUNT; k++) {
            Pad self = pads.get((spare + k) % COUNT);
            Pad next = pads.get((spare + k % 3 + 1) % COUNT);
            Pad after = pads.get((spare + (k + 1) % 3 + 1) % COUNT);
            r[(spare + k) % COUNT] = weight * doubleArea(next, after, x, y) / doubleArea(next, after, self.x(), self.y());
        }
        double locked = 0;
        double give = 0;
        for (int i = 0; i < COUNT; i++) {
            locked += warp[i] * r[i] / pads.get(i).stiffness();
            give += warp[i] * warp[i] / pads.get(i).stiffness();
        }
        for (int i = 0; i < COUNT; i++) {
            r[i] -= locked / give * warp[i];
        }
        return r;
    }

    private static double doubleArea(Pad a, Pad b, double x, double y) {
        return (b.x() - a.x()) * (y - a.y()) - (b.y() - a.y()) * (x - a.x());
    }

    private static IllegalArgumentException outside(double x, double y) {
        return new IllegalArgumentException("the balance point must lie within the four pads, found x " + x + ", y " + y);
    }
}
