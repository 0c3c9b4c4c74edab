package cradlewright.mechanics.castor;

import cradlewright.mechanics.formula.Require;

/** How much a drop or a bump multiplies the static load ({@link CastorFormulas#DROP_FACTOR}). */
public final class DropFactor {

    /** Factor for rolling over floor joints at walking pace; common practice, no source. */
    public static final double ROLLING_OVER_JOINTS = 1.4;

    private DropFactor() {
    }

    /**
     * Returns 1 + sqrt(1 + 2 h/d_st): greatest force over static force when a mass drops onto a linear spring.
     *
     * @param height drop height h, m, not below zero; zero is a load let go at once
     * @param staticDeflection deflection d_st of castor, floor and frame under the same load at rest, m, above zero
     */
    public static double of(double height, double staticDeflection) {
        return 1 + Math.sqrt(1 + 2 * Require.notNegative(height, "drop height")
                / Require.positive(staticDeflection, "static deflection"));
    }
}
