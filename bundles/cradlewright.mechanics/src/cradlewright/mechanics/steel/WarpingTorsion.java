package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.section.TorsionProperties;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;

/**
 * How members of one open section that run on in line carry a known torque: as a bar free to warp, and by restrained warping.
 *
 * <p>Solves E I_w u'' - G J u = -T for the twist u per length, T piecewise linear, exactly. What the ends and the joints in
 * between do against warping is not known: each may leave it free, stop it, or anything between. Every force is then the ratio of two
 * functions linear in each of these stiffnesses, so its extremes are found where each is nothing or endless. A joint that stops
 * warping cuts the line in two. So all runs of neighbouring members are solved, ends of a run stopped, at the ends of the line also
 * free; the largest sizes over all of them are returned.
 *
 * <p>Neglected: bending and axial force in the equation of twist (second order), distortion of the section.
 *
 * @see SteelFormulas#WARPING_TORSION
 */
public final class WarpingTorsion {

    /** Parts of a member shorter than this share of the decay length are jumps of the torque. */
    private static final double JUMP = 1e-9;

    private final double twistStiffness;
    private final double warpingStiffness;
    private final double decay;

    private WarpingTorsion(TorsionProperties section, double e, double g) {
        twistStiffness = Require.positive(g, "shear modulus") * section.constant();
        warpingStiffness = Require.positive(e, "modulus of elasticity") * Require.positive(section.warping(), "warping constant");
        decay = Math.sqrt(twistStiffness / warpingStiffness);
    }

    /**
     * The shares in one member.
     *
     * @param at at each of its cuts, in their order
     * @param between largest bimoment strictly between a cut and the next, 0 where there is no peak, N*m2; one less than cuts
     */
    public record Member(List<TwistShares> at, List<Double> between) {

        /** Copies the lists. */
        public Member {
            at = List.copyOf(at);
            between = List.copyOf(between);
        }
    }

    /**
     * Works out the shares.
     *
     * @param section of all members; where nothing warps the whole torque is uniform
     * @param e modulus of elasticity, Pa
     * @param g shear modulus, Pa
     * @param line the members in their order along the line, each with its cuts from start to end, two or more; the torque is linear
     *        between two cuts, and jumps between two at one distance
     * @throws IllegalArgumentException for a member with fewer than two cuts, without length, or with cuts out of order
     */
    public static List<Member> of(TorsionProperties section, double e, double g, List<List<TorquePoint>> line) {
        Objects.requireNonNull(section, "section");
        line.forEach(WarpingTorsion::requireOrder);
        if (!section.warps()) {
            return line.stream().map(cuts -> new Member(cuts.stream().map(cut -> new TwistShares(Math.abs(cut.torque()), 0, 0)).toList(),
                    Collections.nCopies(cuts.size() - 1, 0.0))).toList();
        }
        WarpingTorsion torsion = new WarpingTorsion(section, e, g);
        List<Largest> all = line.stream().map(cuts -> new Largest(cuts.size())).toList();
        for (int first = 0; first < line.size(); first++) {
            for (int last = first; last < line.size(); last++) {
                torsion.run(line, all, first, last, true, true);
                if (first == 0) {
                    torsion.run(line, all, first, last, false, true);
                }
                if (last == line.size() - 1) {
                    torsion.run(line, all, first, last, true, false);
                }
                if (first == 0 && last == line.size() - 1) {
                    torsion.run(line, all, first, last, false, false);
                }
            }
        }
        return all.stream().map(Largest::member).toList();
    }

    private static void requireOrder(List<TorquePoint> cuts) {
        if (cuts.size() < 2 || !(cuts.get(cuts.size() - 1).distance() > cuts.get(0).distance())) {
            throw new IllegalArgumentException("a twisted member needs two cuts or more with a length between them, found " + cuts.size());
        }
        for (int i = 1; i < cuts.size(); i++) {
            if (cuts.get(i).distance() < cuts.get(i - 1).distance()) {
                throw new IllegalArgumentException("the cuts of a twisted member must lie in order, found " + cuts.get(i - 1).distance()
                        + " m before " + cuts.get(i).distance() + " m");
            }
        }
    }

    /** Largest sizes found so far in one member. */
    private static final class Largest {
        private final TwistShares[] at;
        private final double[] between;

        Largest(int cuts) {
            at = new TwistShares[cuts];
            Arrays.fill(at, TwistShares.NONE);
            between = new double[cuts - 1];
        }

        void add(int cut, TwistShares shares) {
            at[cut] = at[cut].or(shares);
        }

        void addBetween(int cut, double bimoment) {
            between[cut] = Math.max(between[cut], bimoment);
        }

        Member member() {
            return new Member(Arrays.asList(at), Arrays.stream(between).boxed().toList());
        }
    }

    /** A part of a member between two cuts, torque a at its start and b at its end. */
    private final class Part {
        private final double length;
        private final double a;
        private final double b;
        /** Slope of u at an end from u at that end, and from u at the other. */
        private final double own;
        private final double other;

        Part(TorquePoint start, TorquePoint end) {
            length = end.distance() - start.distance();
            a = start.torque() / twistStiffness;
            b = end.torque() / twistStiffness;
            double fade = Math.exp(-decay * length);
            double rest = -Math.expm1(-2 * decay * length);
            own = decay * (1 + fade * fade) / rest;
            other = 2 * decay * fade / rest;
        }

        private double slope() {
            return (b - a) / length;
        }

        double slopeAtStart(double start, double end) {
            return other * (end - b) - own * (start - a) + slope();
        }

        double slopeAtEnd(double start, double end) {
            return own * (end - b) - other * (start - a) + slope();
        }

        /** Largest slope strictly between the ends; 0 where it has no peak there. */
        double peak(double start, double end) {
            double from = start - a;
            double to = end - b;
            if (!(from * to < 0)) {
                return 0;
            }
            // sinh(k (L - x)) from + sinh(k x) to = 0
            double x = atanh(decay / (own - to / from * other)) / decay;
            double rest = -Math.expm1(-2 * decay * length);
            double left = (Math.exp(-decay * x) + Math.exp(-decay * (2 * length - x))) / rest;
            double right = (Math.exp(-decay * (length - x)) + Math.exp(-decay * (length + x))) / rest;
            return decay * (to * right - from * left) + slope();
        }
    }

    private static double atanh(double value) {
        return (Math.log1p(value) - Math.log1p(-value)) / 2;
    }

    private boolean jump(TorquePoint start, TorquePoint end) {
        return decay * (end.distance() - start.distance()) < JUMP;
    }

    private void run(List<List<TorquePoint>> line, List<Largest> all, int first, int last, boolean startStopped, boolean endStopped) {
        List<Part> parts = new ArrayList<>();
        for (int m = first; m <= last; m++) {
            List<TorquePoint> cuts = line.get(m);
            for (int i = 1; i < cuts.size(); i++) {
                if (!jump(cuts.get(i - 1), cuts.get(i))) {
                    parts.add(new Part(cuts.get(i - 1), cuts.get(i)));
                }
            }
        }
        double[] u = twists(parts, startStopped, endStopped);
        int at = 0;
        for (int m = first; m <= last; m++) {
            List<TorquePoint> cuts = line.get(m);
            for (int i = 0; i < cuts.size(); i++) {
                if (i > 0 && !jump(cuts.get(i - 1), cuts.get(i))) {
                    all.get(m).addBetween(i - 1, bimoment(parts.get(at).peak(u[at], u[at + 1])));
                    at++;
                }
                double slope = at < parts.size() ? parts.get(at).slopeAtStart(u[at], u[at + 1])
                        : parts.get(at - 1).slopeAtEnd(u[at - 1], u[at]);
                double uniform = twistStiffness * u[at];
                all.get(m).add(i, new TwistShares(Math.abs(uniform), Math.abs(cuts.get(i).torque() - uniform), bimoment(slope)));
            }
        }
    }

    private double bimoment(double slope) {
        return warpingStiffness * Math.abs(slope);
    }

    /** Twist per length at the ends of the parts, by elimination along the line: the matrix is symmetric and leads by its diagonal. */
    private double[] twists(List<Part> parts, boolean startStopped, boolean endStopped) {
        int n = parts.size() + 1;
        double[] diagonal = new double[n];
        double[] right = new double[n];
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            diagonal[i] += part.own;
            diagonal[i + 1] += part.own;
            right[i] += part.slopeAtStart(0, 0);
            right[i + 1] -= part.slopeAtEnd(0, 0);
        }
        double[] u = new double[n];
        int from = startStopped ? 1 : 0;
        int to = endStopped ? n - 2 : n - 1;
        for (int i = from + 1; i <= to; i++) {
            double factor = parts.get(i - 1).other / diagonal[i - 1];
            diagonal[i] -= factor * parts.get(i - 1).other;
            right[i] += factor * right[i - 1];
        }
        for (int i = to; i >= from; i--) {
            u[i] = (right[i] + (i < n - 1 ? parts.get(i).other * u[i + 1] : 0)) / diagonal[i];
        }
        return u;
    }
}
