package cradlewright.analysis.facts;

import cradlewright.mechanics.formula.Require;

/**
 * What the shop has settled for all its checks, in SI units; whatever the shop leaves open is common practice, no source.
 *
 * @param personMass one person with tools, kg
 * @param leanForce one person leaning, N
 * @param barForce one person pulling on a bar, N
 * @param requiredRatio steadying over upsetting, at least
 * @param tightMargin share of capacity from which a verdict reads TIGHT
 * @param jointFactor load factor of rolling over a floor joint
 * @param step height of the step that a dolly is to roll over, m
 * @param unevenness difference in height of the floor under the castors, m
 * @param slope of the floor, rise over run
 * @param walkingSpeed m/s
 * @param shimTolerance allowed twist for storing, working and welding, m
 * @param friction of a pad on painted steel
 */
public record SettingsFacts(double personMass, double leanForce, double barForce, double requiredRatio, double tightMargin,
        double jointFactor, double step, double unevenness, double slope, double walkingSpeed, ShimTolerance shimTolerance,
        Friction friction) {

    /** Refuses settings that would make every verdict meaningless. */
    public SettingsFacts {
        Require.positive(personMass, "mass of a person");
        Require.notNegative(leanForce, "leaning force");
        Require.notNegative(barForce, "pull on a bar");
        Require.within(requiredRatio, 1, 100, "required ratio");
        Require.within(tightMargin, 0, 0.5, "margin below which a verdict reads TIGHT");
        Require.within(jointFactor, 1, 10, "load factor of rolling over a joint");
        Require.notNegative(step, "height of the step");
        Require.notNegative(unevenness, "unevenness of the floor");
        Require.within(slope, 0, 1, "slope of the floor");
        Require.positive(walkingSpeed, "walking speed");
    }

    /** Twist that may remain after shimming, m. */
    public record ShimTolerance(double storing, double working, double welding) {

        /** Refuses twists that no shims could reach. */
        public ShimTolerance {
            Require.positive(storing, "allowed twist for storing");
            Require.positive(working, "allowed twist for working");
            Require.positive(welding, "allowed twist for welding");
        }
    }

    /**
     * Sideways force over push at which a support that rests begins to slide.
     *
     * @param low at the unfavourable end, where answers are given
     * @param high at the favourable end
     */
    public record Friction(double low, double high) {

        private static final double MOST = 2;

        /** Refuses what no pad has. */
        public Friction {
            Require.within(low, 0, MOST, "least friction of a pad");
            Require.within(high, low, MOST, "largest friction of a pad");
        }
    }

    /** Returns the values that apply until the shop settles its own: common practice, no source. */
    public static SettingsFacts commonPractice() {
        return new SettingsFacts(120, 400, 800, 1.5, 0.10, 1.4, 0.005, 0.003, 0.01, 1.1, new ShimTolerance(0.003, 0.002, 0.001),
                new Friction(0.3, 0.3));
    }

    /** Returns these settings with another factor for rolling over a joint. */
    public SettingsFacts withJointFactor(double factor) {
        return new SettingsFacts(personMass, leanForce, barForce, requiredRatio, tightMargin, factor, step, unevenness, slope, walkingSpeed,
                shimTolerance, friction);
    }

    /** Returns these settings for a floor of another unevenness, m. */
    public SettingsFacts withUnevenness(double uneven) {
        return new SettingsFacts(personMass, leanForce, barForce, requiredRatio, tightMargin, jointFactor, step,
                uneven, slope, walkingSpeed,
                shimTolerance, friction);
    }

    /** Returns these settings for another pace, m/s. */
    public SettingsFacts withWalkingSpeed(double pace) {
        return new SettingsFacts(personMass, leanForce, barForce, requiredRatio, tightMargin, jointFactor, step, unevenness, slope, pace,
                shimTolerance, friction);
    }

    /** Returns these settings with another friction of pads. */
    public SettingsFacts withFriction(Friction other) {
        return new SettingsFacts(personMass, leanForce, barForce, requiredRatio, tightMargin, jointFactor, step, unevenness, slope,
                walkingSpeed, shimTolerance, other);
    }
}
