package cradlewright.mechanics.tipping;

import cradlewright.mechanics.geometry.Vec3;

/**
 * One edge of a support polygon: the line over which the load would tip.
 *
 * @param from index of the contact at its beginning, counterclockwise seen from above
 * @param to index of the contact at its end
 * @param start beginning in the floor plane, m (z = 0)
 * @param outward unit vector in the floor plane, square to the edge, pointing out of the polygon
 */
public record SupportEdge(int from, int to, Vec3 start, Vec3 outward) {

    /** Returns the distance of a point from the edge in plan, m: above zero inside, below zero outside; z is ignored. */
    public double distance(Vec3 point) {
        return start.minus(point).dot(outward);
    }
}
