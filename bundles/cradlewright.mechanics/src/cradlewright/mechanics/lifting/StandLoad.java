package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Require;
import java.util.Objects;

/**
 * One axle stand or trestle under its share; see {@link LiftingFormulas#STAND}.
 *
 * @param carried what rests on this one stand, kg (the reaction over g)
 * @param rated what the plate says, kg
 * @param per what the plate speaks of: stands are often rated by the pair
 */
public record StandLoad(double carried, double rated, RatedPer per) {

    /** Margin on one stand, since the shares are never quite even (common practice, no source). */
    public static final double MARGIN = 1.5;

    /** What a rating on a plate speaks of. */
    public enum RatedPer {
        /** Each stand by itself. */
        STAND,
        /** Two stands together. */
        PAIR
    }

    /** Refuses values out of range. */
    public StandLoad {
        Require.notNegative(carried, "mass on the stand");
        Require.positive(rated, "rated mass");
        Objects.requireNonNull(per, "per");
    }

    /** Returns what one stand is rated for, kg. */
    public double ratedEach() {
        return per == RatedPer.PAIR ? rated / 2 : rated;
    }

    /** Returns 1.5 times the mass carried over the rating of one stand; above 1 is too much. */
    public double utilisation() {
        return MARGIN * carried / ratedEach();
    }
}
