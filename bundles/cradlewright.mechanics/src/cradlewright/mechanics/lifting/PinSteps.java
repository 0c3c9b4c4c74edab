package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Require;

/**
 * Heights that a stand with pin holes can be set to; see {@link LiftingFormulas#PIN_STEPS}.
 *
 * @param lowest height with the pin in the first hole, m
 * @param step from hole to hole, m
 * @param holes number of holes, one or more
 */
public record PinSteps(double lowest, double step, int holes) {

    /**
     * The hole chosen.
     *
     * @param hole 0 for the lowest
     * @param height of the stand, m
     * @param remaining wanted height less the height of the stand, m: to be packed when above zero
     */
    public record Choice(int hole, double height, double remaining) {
    }

    private static final double ROUNDING = 1e-9;

    /** Refuses values out of range. */
    public PinSteps {
        Require.positive(lowest, "lowest height");
        Require.positive(step, "step of the holes");
        Require.within(holes, 1, 10_000, "number of holes");
    }

    /**
     * Returns the highest setting that does not exceed the wanted height, so that the rest can be packed.
     *
     * @throws IllegalArgumentException when the lowest setting is too high already
     */
    public Choice notAbove(double wanted) {
        Require.finite(wanted, "wanted height");
        Require.within(wanted, lowest - ROUNDING, Double.MAX_VALUE, "wanted height");
        return choice((int) Math.min(holes - 1.0, Math.max(0, Math.floor((wanted - lowest + ROUNDING) / step))), wanted);
    }

    /** Returns the setting nearest to the wanted height, above or below; of two as near, the lower. */
    public Choice nearest(double wanted) {
        Require.finite(wanted, "wanted height");
        double exact = (wanted - lowest) / step;
        return choice((int) Math.max(0, Math.min(holes - 1.0, Math.ceil(exact - 0.5 - ROUNDING))), wanted);
    }

    private Choice choice(int hole, double wanted) {
        double height = lowest + hole * step;
        return new Choice(hole, height, wanted - height);
    }
}
