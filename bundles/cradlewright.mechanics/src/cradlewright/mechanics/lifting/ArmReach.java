package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * What a swinging, telescoping lift arm can reach; see {@link LiftingFormulas#ARM_REACH}.
 *
 * <p>Azimuths are counted from rearward (x) towards the right (y), in rad; the swing runs in that sense from {@code swingFrom}
 * over {@code swing}. Whether the arm clears body and dolly on its way is not looked at.
 *
 * @param pivot axis of the arm; its z does not matter
 * @param shortest distance of the pad from the pivot with the arm pushed in, m
 * @param longest distance of the pad from the pivot with the arm pulled out, m
 * @param swingFrom azimuth at which the swing begins, rad
 * @param swing angle swept, 0 to 2 pi, rad
 * @param lowestPad lowest height of the pad face that the lift and its adapters give, m
 * @param highestPad greatest height of the pad face, m
 */
public record ArmReach(Vec3 pivot, double shortest, double longest, double swingFrom, double swing, double lowestPad,
        double highestPad) {

    /**
     * What is right and wrong about a place for the pad.
     *
     * @param distance horizontal distance from the pivot, m
     * @param azimuth direction from the pivot, rad, -pi to pi
     * @param lengthFits true when the arm can be set to that distance
     * @param swingFits true when the arm can be swung there
     * @param heightFits true when the pad can be set to that height
     */
    public record Reach(double distance, double azimuth, boolean lengthFits, boolean swingFits, boolean heightFits) {

        /** Returns true when length, swing and height all fit. */
        public boolean fits() {
            return lengthFits && swingFits && heightFits;
        }
    }

    /** Refuses lengths, heights and angles out of range. */
    public ArmReach {
        Require.finite(pivot.x(), "pivot x");
        Require.finite(pivot.y(), "pivot y");
        Require.positive(shortest, "shortest arm");
        Require.within(longest, shortest, Double.MAX_VALUE, "longest arm");
        Require.finite(swingFrom, "begin of the swing");
        Require.within(swing, 0, 2 * Math.PI, "swing");
        Require.finite(lowestPad, "lowest pad height");
        Require.within(highestPad, lowestPad, Double.MAX_VALUE, "highest pad height");
    }

    /** Returns whether the pad can be put under {@code point}. */
    public Reach to(Vec3 point) {
        double dx = Require.finite(point.x(), "pad x") - pivot.x();
        double dy = Require.finite(point.y(), "pad y") - pivot.y();
        Require.finite(point.z(), "pad z");
        double distance = Math.hypot(dx, dy);
        double azimuth = Math.atan2(dy, dx);
        double turn = 2 * Math.PI;
        double past = ((azimuth - swingFrom) % turn + turn) % turn;
        // a direction on the very edge of the swing may come out a rounding error before its beginning
        boolean swings = past <= swing + 1e-9 || turn - past < 1e-9;
        return new Reach(distance, azimuth, distance >= shortest && distance <= longest, swings,
                point.z() >= lowestPad && point.z() <= highestPad);
    }
}
