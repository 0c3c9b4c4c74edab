package cradlewright.mechanics.lifting;

/**
 * A sling of two equal legs with the balance point in the middle; see {@link LiftingFormulas#TWO_LEG}.
 *
 * @param weight N
 * @param beta lean of each leg from upright, rad, below pi/2
 */
public record TwoLegSling(double weight, double beta) {

    /** Refuses values out of range. */
    public TwoLegSling {
        SlingLegs.equal(weight, 2, beta);
    }

    /** Returns the force in each leg, W/(2 cos beta), N. */
    public double legForce() {
        return SlingLegs.equal(weight, 2, beta);
    }

    /** Returns the pull of each leg towards the other, (W/2) tan beta, N: it squeezes the load or bends a light shell inwards. */
    public double squeeze() {
        return weight / 2 * Math.tan(beta);
    }

    /** Returns false when the legs lean by more than 60 degrees, which is never done. */
    public boolean allowed() {
        return beta <= SlingLegs.MOST_SPREAD + 1e-9;
    }
}
