package cradlewright.mechanics.joint;

import cradlewright.mechanics.formula.Require;

/**
 * The four design resistances of one bolt in its joint, N.
 *
 * @param shear sum over the shear planes, F_v,Rd
 * @param bearing the weakest plate, F_b,Rd
 * @param tension F_t,Rd
 * @param punching the weaker of head and nut side, B_p,Rd
 */
public record BoltCapacity(double shear, double bearing, double tension, double punching) {

    /** Refuses a resistance that is not above zero: a bolt that bears on nothing has no utilisation. */
    public BoltCapacity {
        Require.positive(shear, "shear resistance");
        Require.positive(bearing, "bearing resistance");
        Require.positive(tension, "tension resistance");
        Require.positive(punching, "punching resistance");
    }

    /**
     * Compares a bolt force with the resistances (EN 1993-1-8 Table 3.2 categories A and D, Table 3.4).
     *
     * @param force design force of the bolt, prying included
     */
    public BoltUse use(BoltForce force) {
        return new BoltUse(force.shear() / shear, force.shear() / bearing, force.tension() / tension, force.tension() / punching,
                BoltResistance.combined(force.shear(), shear, force.tension(), tension));
    }
}
