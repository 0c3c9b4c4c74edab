package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Require;

/**
 * Between which shares of front to rear a lift may be loaded. The plate and manual of the lift override the general rule.
 *
 * @param lowest smallest front to rear, above zero, for example 2.0/3
 * @param highest largest front to rear, for example 3.0/2
 */
public record ShareLimits(double lowest, double highest) {

    /** Rated mass in kg up to which the narrow limits hold. */
    private static final double LIGHT_LIFT = 3500;

    /** Refuses limits that are not above zero or are the wrong way round. */
    public ShareLimits {
        Require.positive(lowest, "smallest front to rear");
        Require.positive(highest, "largest front to rear");
        if (lowest > highest) {
            throw new IllegalArgumentException("the smallest share must not exceed the largest, found " + lowest + " and "
                    + highest);
        }
    }

    /**
     * Returns the general rule: 2:3 to 3:2 for lifts rated up to 3500 kg, 1:3 to 3:1 above; see {@link
     * LiftingFormulas#SHARE_LIMITS}.
     *
     * @param ratedMass what the lift is rated for, kg
     */
    public static ShareLimits general(double ratedMass) {
        return Require.positive(ratedMass, "rated mass") <= LIGHT_LIFT ? new ShareLimits(2.0 / 3, 3.0 / 2)
                : new ShareLimits(1.0 / 3, 3);
    }
}
