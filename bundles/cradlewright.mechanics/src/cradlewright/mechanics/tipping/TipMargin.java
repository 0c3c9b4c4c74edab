package cradlewright.mechanics.tipping;

import java.util.Comparator;
import java.util.List;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * How far a rigid load at rest is from tipping over one edge of its support polygon.
 *
 * <p>On a level floor d is the distance in plan of the balance point from the edge and h its height. On a slope of tangent s
 * across the edge the line of action of the weight meets the floor at d - h s ({@link TippingFormulas#SLOPE}).
 *
 * @param edge the edge
 * @param distance d_eff, m: above zero stands, zero balances, below zero tips
 * @param tipAngle angle by which the floor could fall further outward over the edge, rad ({@link TippingFormulas#TIP_ANGLE})
 * @param radius distance of the balance point from the edge line, m
 */
public record TipMargin(SupportEdge edge, double distance, double tipAngle, double radius) {

    /**
     * Returns the margin at one edge.
     *
     * @param edge edge of the support polygon
     * @param balancePoint balance point in axes of the floor, m; z is the height above the floor, above zero
     * @param slope the floor
     * @throws IllegalArgumentException for a height that is not above zero or coordinates that are not finite
     */
    public static TipMargin of(SupportEdge edge, Vec3 balancePoint, FloorSlope slope) {
        double height = Require.positive(balancePoint.z(), "height of the balance point");
        double distance = Require.finite(edge.distance(balancePoint), "distance of the balance point from the edge");
        double across = slope.across(edge);
        return new TipMargin(edge, distance - height * across, Math.atan2(distance, height) - Math.atan(across),
                Math.hypot(distance, height));
    }

    /** Returns the margins of all edges in the order of the polygon; none when the contacts span no area. */
    public static List<TipMargin> all(SupportPolygon polygon, Vec3 balancePoint, FloorSlope slope) {
        return polygon.edges().stream().map(edge -> of(edge, balancePoint, slope)).toList();
    }

    /**
     * Returns the margin of the edge over which the load tips first when the floor is inclined further, the least tip angle.
     *
     * @throws IllegalStateException when the contacts span no area
     */
    public static TipMargin least(SupportPolygon polygon, Vec3 balancePoint, FloorSlope slope) {
        return all(polygon, balancePoint, slope).stream().min(Comparator.comparingDouble(TipMargin::tipAngle))
                .orElseThrow(() -> new IllegalStateException("floor contacts that span a " + polygon.kind() + " hold nothing"));
    }

    /** Returns whether the load stands over this edge: the distance is above zero. */
    public boolean stands() {
        return distance > 0;
    }

    /**
     * Returns the force-angle measure of the weight alone, N rad, below zero once it tips
     * ({@link TippingFormulas#FORCE_ANGLE}); on a slope the part of the weight along the edge counts nothing.
     *
     * @param weight weight, N, above zero
     * @param slope the floor that this margin was made for
     */
    public double forceAngle(double weight, FloorSlope slope) {
        Require.positive(weight, "weight");
        Vec3 along = Vec3.UP.cross(edge.outward());
        double lost = Math.sin(slope.angle()) * slope.downhill().dot(along);
        return tipAngle * weight * Math.sqrt(1 - lost * lost);
    }

    /**
     * Returns the work that tips the load over the edge, J: the rise of the weight until it stands above the edge
     * ({@link TippingFormulas#ENERGY}); zero for a load that tips by itself. The edge is taken as level; on an edge that falls
     * along its length the same work is scaled by the part of the weight square to the edge.
     *
     * @param weight weight, N, above zero
     * @param slope the floor that this margin was made for
     */
    public double energy(double weight, FloorSlope slope) {
        Require.positive(weight, "weight");
        Vec3 along = Vec3.UP.cross(edge.outward());
        double lost = Math.sin(slope.angle()) * slope.downhill().dot(along);
        return stands() ? weight * Math.sqrt(1 - lost * lost) * radius * (1 - Math.cos(tipAngle)) : 0;
    }
}
