package cradlewright.mechanics.steel;

/**
 * Shape of the moment between points held sideways, with its factor C1 of NCCI SN003 (published values differ by 1 to 2 %) and the
 * factor C2 of the height of the load that makes it. Where end moments make it, C2 is that of one load in the middle, the safe side for
 * whatever else lies on the member.
 */
public enum MomentShape {

    /** Same moment over the length. */
    UNIFORM(1.0, 0.63),
    /** Evenly spread load on a simple span. */
    SPREAD_LOAD(1.127, 0.454),
    /** One load in the middle of a simple span. */
    MIDDLE_LOAD(1.348, 0.63),
    /** Moment at one end only. */
    ONE_END(1.77, 0.63);

    private final double c1;
    private final double c2;

    MomentShape(double c1, double c2) {
        this.c1 = c1;
        this.c2 = c2;
    }

    /** Factor C1. */
    public double c1() {
        return c1;
    }

    /** Factor C2. */
    public double c2() {
        return c2;
    }
}
