package cradlewright.mechanics.contact;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * Whether the supports under a body can hold it at all, looked at from above before anything is solved.
 *
 * @param hold what the supports hold
 * @param line for two supports or supports on one line the two outermost supports; nothing holds the body about it; else null
 * @param coincident pairs of supports at one place, which act as one
 * @param place where the balance point lies
 * @param margin least distance of the balance point to an edge, m: negative outside; zero or below means it falls over
 * @param edge the two supports of that edge; null unless {@code hold} is HELD
 * @see ContactFormulas#SUPPORT_RANK
 */
public record SupportRank(Hold hold, Pair line, List<Pair> coincident, Place place, double margin, Pair edge) {

    /** What the supports hold. */
    public enum Hold {
        /** No support. */
        NONE,
        /** One support, or several at one place. */
        ONE,
        /** Two supports: nothing holds the body about the line through them. */
        TWO,
        /** Three or more on one line: nothing holds the body about it. */
        COLLINEAR,
        /** The supports span an area. */
        HELD
    }

    /** Where the balance point lies. */
    public enum Place {
        /** Inside the outline of the supports. */
        INSIDE,
        /** On an edge of the outline. */
        ON_EDGE,
        /** Outside, or there is no outline. */
        OUTSIDE
    }

    /** Two supports by index, lower first. */
    public record Pair(int first, int second) {
    }

    private static final double TOLERANCE = 1e-9;

    /** Takes a copy of the list. */
    public SupportRank {
        coincident = List.copyOf(coincident);
    }

    /**
     * Looks at the supports of one body.
     *
     * @param supports points of supports that push upward; their heights play no part
     * @param balance balance point
     * @throws IllegalArgumentException for a coordinate that is not finite
     */
    public static SupportRank of(List<Vec3> supports, Vec3 balance) {
        List<Vec3> flat = new ArrayList<>();
        for (Vec3 p : supports) {
            flat.add(flatten(p, "support"));
        }
        Vec3 at = flatten(balance, "balance point");
        if (flat.isEmpty()) {
            return new SupportRank(Hold.NONE, null, List.of(), Place.OUTSIDE, Double.NEGATIVE_INFINITY, null);
        }
        Pair farthest = farthest(flat);
        double size = distance(flat, farthest);
        List<Pair> together = together(flat, TOLERANCE * size);
        if (size == 0) {
            double away = at.minus(flat.get(0)).norm();
            return new SupportRank(Hold.ONE, null, together, away > 0 ? Place.OUTSIDE : Place.ON_EDGE, -away, null);
        }
        List<Integer> outline = outline(flat, TOLERANCE * size);
        if (outline.size() == 2) {
            boolean two = distinct(flat, TOLERANCE * size) == 2;
            double away = toSegment(at, flat.get(farthest.first()), flat.get(farthest.second()));
            Place place = away <= TOLERANCE * size ? Place.ON_EDGE : Place.OUTSIDE;
            return new SupportRank(two ? Hold.TWO : Hold.COLLINEAR, farthest, together, place,
                    place == Place.ON_EDGE ? 0 : -away, null);
        }
        return held(flat, at, outline, together, TOLERANCE * size);
    }

    private static SupportRank held(List<Vec3> flat, Vec3 at, List<Integer> outline, List<Pair> together, double tolerance) {
        double margin = Double.POSITIVE_INFINITY;
        Pair edge = null;
        for (int k = 0; k < outline.size(); k++) {
            int a = outline.get(k);
            int b = outline.get((k + 1) % outline.size());
            Vec3 along = flat.get(b).minus(flat.get(a)).unit();
            double inside = along.cross(at.minus(flat.get(a))).z();
            if (inside < margin) {
                margin = inside;
                edge = new Pair(Math.min(a, b), Math.max(a, b));
            }
        }
        Place place = margin > tolerance ? Place.INSIDE : margin < -tolerance ? Place.OUTSIDE : Place.ON_EDGE;
        return new SupportRank(Hold.HELD, null, together, place, place == Place.ON_EDGE ? 0 : margin, edge);
    }

    private static Vec3 flatten(Vec3 p, String name) {
        return new Vec3(Require.finite(p.x(), name + " x"), Require.finite(p.y(), name + " y"), 0);
    }

    private static double distance(List<Vec3> points, Pair pair) {
        return points.get(pair.first()).minus(points.get(pair.second())).norm();
    }

    private static Pair farthest(List<Vec3> points) {
        Pair best = new Pair(0, 0);
        for (int i = 0; i < points.size(); i++) {
            for (int j = i + 1; j < points.size(); j++) {
                Pair pair = new Pair(i, j);
                if (distance(points, pair) > distance(points, best)) {
                    best = pair;
                }
            }
        }
        return best;
    }

    private static List<Pair> together(List<Vec3> points, double tolerance) {
        List<Pair> result = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            for (int j = i + 1; j < points.size(); j++) {
                if (distance(points, new Pair(i, j)) <= tolerance) {
                    result.add(new Pair(i, j));
                }
            }
        }
        return result;
    }

    private static int distinct(List<Vec3> points, double tolerance) {
        int count = 0;
        for (int i = 0; i < points.size(); i++) {
            boolean first = true;
            for (int j = 0; j < i; j++) {
                first &= distance(points, new Pair(j, i)) > tolerance;
            }
            count += first ? 1 : 0;
        }
        return count;
    }

    private static double toSegment(Vec3 p, Vec3 a, Vec3 b) {
        Vec3 along = b.minus(a);
        double t = Math.max(0, Math.min(1, p.minus(a).dot(along) / along.dot(along)));
        return p.minus(a.plus(along.times(t))).norm();
    }

    /** Convex outline, counter-clockwise; two entries when all lie on one line (Andrew's chain with a width). */
    private static List<Integer> outline(List<Vec3> points, double tolerance) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble((Integer i) -> points.get(i).x()).thenComparingDouble(i -> points.get(i).y())
                .thenComparingInt(i -> i));
        List<Integer> chain = new ArrayList<>();
        half(points, order, chain, 0, tolerance);
        int fixed = chain.size() - 1;
        chain.remove(fixed);
        List<Integer> back = new ArrayList<>(order);
        Collections.reverse(back);
        half(points, back, chain, fixed, tolerance);
        chain.remove(chain.size() - 1);
        return chain;
    }

    private static void half(List<Vec3> points, List<Integer> order, List<Integer> chain, int fixed, double tolerance) {
        for (int next : order) {
            while (chain.size() >= fixed + 2 && !turnsLeft(points.get(chain.get(chain.size() - 2)),
                    points.get(chain.get(chain.size() - 1)), points.get(next), tolerance)) {
                chain.remove(chain.size() - 1);
            }
            chain.add(next);
        }
    }

    /** Whether the middle point sticks out to the right of the line from a to b by more than the tolerance. */
    private static boolean turnsLeft(Vec3 a, Vec3 middle, Vec3 b, double tolerance) {
        Vec3 along = b.minus(a);
        double length = along.norm();
        return length > tolerance && along.cross(middle.minus(a)).z() < -tolerance * length;
    }
}
