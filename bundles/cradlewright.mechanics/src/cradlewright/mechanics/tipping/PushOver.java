package cradlewright.mechanics.tipping;

import java.util.Optional;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * The push along the floor that tips a rigid load whose castors are held, and whether it slides first
 * ({@link TippingFormulas#PUSH}, {@link TippingFormulas#SLIDE}).
 *
 * <p>A push in one direction moves the pressure point along a straight line; the load tips over the edge where that line leaves
 * the polygon, so oblique pushes and corners are covered exactly. Neglected: speed of the push, give of floor and pads.
 *
 * @param edge edge over which it tips, empty when no push in this direction tips it
 * @param tipForce push that tips, N; zero when it tips by itself; positive infinity when no edge lies in the direction
 * @param slideForce push that slides it, N; zero when it slides by itself; positive infinity when friction was not given
 */
public record PushOver(Optional<SupportEdge> edge, double tipForce, double slideForce) {

    /**
     * Returns the push that tips on the given floor.
     *
     * @param polygon support polygon with an area
     * @param balancePoint balance point, m; z is the height above the floor
     * @param weight weight, N, above zero
     * @param direction direction of the push in the floor plane; z is ignored
     * @param pushHeight height of the push above the floor, m, above zero
     * @param slope the floor
     * @throws IllegalArgumentException for input out of range or contacts that span no area
     */
    public static PushOver of(SupportPolygon polygon, Vec3 balancePoint, double weight, Vec3 direction, double pushHeight,
            FloorSlope slope) {
        if (polygon.kind() != SupportKind.AREA) {
            throw new IllegalArgumentException("the floor contacts must span an area, found a " + polygon.kind());
        }
        Require.positive(weight, "weight");
        Require.positive(pushHeight, "height of the push");
        Vec3 push = FloorSlope.flatUnit(direction, "direction of the push");
        SupportEdge first = null;
        double least = Double.POSITIVE_INFINITY;
        for (SupportEdge edge : polygon.edges()) {
            double distance = TipMargin.of(edge, balancePoint, slope).distance();
            if (distance <= 0) {
                return new PushOver(Optional.of(edge), 0, Double.POSITIVE_INFINITY);
            }
            double towards = push.dot(edge.outward());
            double force = weight * Math.cos(slope.angle()) * distance / (pushHeight * towards);
            if (towards > 0 && force < least) {
                first = edge;
                least = force;
            }
        }
        return new PushOver(Optional.ofNullable(first), least, Double.POSITIVE_INFINITY);
    }

    /**
     * Returns the push in the direction in which the load tips most easily: square to one of the edges.
     *
     * @throws IllegalArgumentException as {@link #of}
     */
    public static PushOver weakest(SupportPolygon polygon, Vec3 balancePoint, double weight, double pushHeight,
            FloorSlope slope) {
        PushOver weakest = null;
        for (SupportEdge edge : polygon.edges()) {
            PushOver candidate = of(polygon, balancePoint, weight, edge.outward(), pushHeight, slope);
            if (weakest == null || candidate.tipForce < weakest.tipForce) {
                weakest = candidate;
            }
        }
        if (weakest == null) {
            throw new IllegalArgumentException("the floor contacts must span an area, found a " + polygon.kind());
        }
        return weakest;
    }

    /**
     * Returns the same with the push that slides the load, all castors braked and turned so that none rolls.
     *
     * @param weight weight, N, above zero
     * @param friction friction coefficient of treads on the floor, not below zero
     * @param direction direction of the push in the floor plane
     * @param slope the floor
     */
    public PushOver withFriction(double weight, double friction, Vec3 direction, FloorSlope slope) {
        Require.positive(weight, "weight");
        Require.notNegative(friction, "friction coefficient");
        Vec3 push = FloorSlope.flatUnit(direction, "direction of the push");
        double along = weight * Math.sin(slope.angle());
        double held = friction * weight * Math.cos(slope.angle());
        if (along >= held) {
            return new PushOver(edge, tipForce, 0);
        }
        double projected = along * push.dot(slope.downhill());
        double slides = Math.sqrt(projected * projected + held * held - along * along) - projected;
        return new PushOver(edge, tipForce, slides);
    }

    /** Returns whether it slides before it tips. */
    public boolean slidesFirst() {
        return slideForce < tipForce;
    }

    /** Returns the push allowed at a ratio, N: the force that tips over {@code ratio} (at least 1). */
    public double allowed(double ratio) {
        return tipForce / Require.within(ratio, 1, 1e6, "ratio");
    }

    /** Returns the friction coefficient below which a load on a level floor slides before it tips: tip force over weight. */
    public double slidingFriction(double weight) {
        return tipForce / Require.positive(weight, "weight");
    }
}
