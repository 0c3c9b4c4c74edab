package cradlewright.mechanics.tipping;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * Convex hull of floor contacts in plan (x, y; z is ignored), with the cases that hold nothing named by {@link SupportKind}.
 *
 * <p>Contacts closer than 1e-9 of the greatest extent count as one, and a contact within that distance of an edge is no
 * corner. Immutable.
 */
public final class SupportPolygon {

    private static final double RELATIVE_TOLERANCE = 1e-9;

    private final SupportKind kind;
    private final List<Integer> corners;
    private final List<SupportEdge> edges;

    private SupportPolygon(SupportKind kind, List<Integer> corners, List<SupportEdge> edges) {
        this.kind = kind;
        this.corners = List.copyOf(corners);
        this.edges = List.copyOf(edges);
    }

    /**
     * Returns the hull of the contacts.
     *
     * @param contacts positions, m; any number, none included
     * @throws IllegalArgumentException for a coordinate that is not finite
     */
    public static SupportPolygon of(List<Vec3> contacts) {
        List<Vec3> points = new ArrayList<>();
        for (Vec3 contact : contacts) {
            Objects.requireNonNull(contact, "contact");
            points.add(new Vec3(Require.finite(contact.x(), "contact x"), Require.finite(contact.y(), "contact y"), 0));
        }
        if (points.isEmpty()) {
            return new SupportPolygon(SupportKind.NONE, List.of(), List.of());
        }
        double tolerance = RELATIVE_TOLERANCE * extent(points);
        List<Integer> hull = hull(points, distinct(points, tolerance), tolerance);
        if (hull.size() < 3) {
            return new SupportPolygon(hull.size() == 1 ? SupportKind.POINT : SupportKind.LINE, hull, List.of());
        }
        return new SupportPolygon(SupportKind.AREA, hull, edges(points, hull));
    }

    private static double extent(List<Vec3> points) {
        double extent = 0;
        for (Vec3 point : points) {
            extent = Math.max(extent, point.minus(points.get(0)).norm());
        }
        return Require.finite(extent, "distance between contacts");
    }

    private static List<Integer> distinct(List<Vec3> points, double tolerance) {
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            Vec3 point = points.get(i);
            if (kept.stream().noneMatch(k -> points.get(k).minus(point).norm() <= tolerance)) {
                kept.add(i);
            }
        }
        return kept;
    }

    /**
     * Goes round counterclockwise from the contact farthest from the first one, which is a corner in any case, always to the
     * contact that leaves all others to the left of the way; of two in one line to the farther one. One or two corners are
     * left where the contacts span no area.
     */
    private static List<Integer> hull(List<Vec3> points, List<Integer> candidates, double tolerance) {
        Vec3 origin = points.get(0);
        int first = Collections.max(candidates, Comparator.comparingDouble(i -> points.get(i).minus(origin).norm()));
        List<Integer> hull = new ArrayList<>();
        int current = first;
        do {
            hull.add(current);
            int next = current;
            for (int candidate : candidates) {
                if (candidate != current && (next == current || isOuter(points, current, next, candidate, tolerance))) {
                    next = candidate;
                }
            }
            current = next;
        } while (current != first && !hull.contains(current));
        return hull;
    }

    private static boolean isOuter(List<Vec3> points, int current, int next, int candidate, double tolerance) {
        Vec3 way = points.get(next).minus(points.get(current));
        Vec3 other = points.get(candidate).minus(points.get(current));
        double longer = Math.max(way.norm(), other.norm());
        double side = way.cross(other).z() / longer;
        if (Math.abs(side) <= tolerance && way.dot(other) > 0) {
            return other.norm() > way.norm();
        }
        return side < 0;
    }

    private static List<SupportEdge> edges(List<Vec3> points, List<Integer> hull) {
        List<SupportEdge> edges = new ArrayList<>();
        for (int i = 0; i < hull.size(); i++) {
            int from = hull.get(i);
            int to = hull.get((i + 1) % hull.size());
            Vec3 along = points.get(to).minus(points.get(from)).unit();
            edges.add(new SupportEdge(from, to, points.get(from), along.cross(Vec3.UP)));
        }
        return edges;
    }

    /** Returns what the contacts span. */
    public SupportKind kind() {
        return kind;
    }

    /** Returns the indices of the corner contacts, counterclockwise seen from above; the ends where they span a line. */
    public List<Integer> corners() {
        return corners;
    }

    /** Returns the edges, counterclockwise seen from above; none unless {@link #kind()} is {@link SupportKind#AREA}. */
    public List<SupportEdge> edges() {
        return edges;
    }

    /**
     * Returns the least signed distance of the balance point from an edge, m ({@link TippingFormulas#MARGIN}); the load stands
     * when it is above zero.
     *
     * @param balancePoint balance point, m; z is ignored
     * @throws IllegalStateException when the contacts span no area, so that there is no margin to speak of
     */
    public double margin(Vec3 balancePoint) {
        if (kind != SupportKind.AREA) {
            throw new IllegalStateException("floor contacts that span a " + kind + " hold nothing and have no margin");
        }
        Require.finite(balancePoint.x(), "balance point x");
        Require.finite(balancePoint.y(), "balance point y");
        return edges.stream().mapToDouble(edge -> edge.distance(balancePoint)).min().orElseThrow();
    }
}
