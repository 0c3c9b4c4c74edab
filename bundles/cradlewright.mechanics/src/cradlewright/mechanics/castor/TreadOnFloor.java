package cradlewright.mechanics.castor;

/**
 * Lever arms of rolling friction by tread and floor, from the calculator of a drive maker (inches converted). They describe
 * starting and are cautious; published tables disagree by a factor of several ({@link CastorFormulas#LEVER_ARM}).
 */
public enum TreadOnFloor {
    /** Steel wheel on a steel rail or plate. */
    STEEL_ON_STEEL(0.5e-3, 0.5e-3),
    /** Polyamide or polyurethane on steel. */
    POLYMER_ON_STEEL(2e-3, 2e-3),
    /** Polyamide or polyurethane on concrete. */
    POLYMER_ON_CONCRETE(5e-3, 5e-3),
    /** Hard rubber on concrete. */
    HARD_RUBBER_ON_CONCRETE(10e-3, 20e-3),
    /** Medium hard rubber on concrete. */
    MEDIUM_RUBBER_ON_CONCRETE(15e-3, 35e-3);

    private final Range leverArm;

    TreadOnFloor(double low, double high) {
        leverArm = new Range(low, high);
    }

    /** Returns the lever arm f, m. */
    public Range leverArm() {
        return leverArm;
    }
}
