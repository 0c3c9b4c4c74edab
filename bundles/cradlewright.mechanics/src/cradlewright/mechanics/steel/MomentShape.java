package cradlewright.mechanics.steel;

/** Shape of the moment between points held sideways, with its factor C1 of NCCI SN003 (published values differ by 1 to 2 %). */
public enum MomentShape {

    /** Same moment over the length. */
    UNIFORM(1.0),
    /** Evenly spread load on a simple span. */
    SPREAD_LOAD(1.13),
    /** One load in the middle of a simple span. */
    MIDDLE_LOAD(1.35),
    /** Moment at one end only. */
    ONE_END(1.77);

    private final double c1;

    MomentShape(double c1) {
        this.c1 = c1;
    }

    /** Factor C1. */
    public double c1() {
        return c1;
    }
}
