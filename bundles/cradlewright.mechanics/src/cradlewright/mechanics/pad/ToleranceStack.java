package cradlewright.mechanics.pad;

import java.util.Arrays;

import cradlewright.mechanics.formula.Require;

/** Height tolerance of a stack of pieces, each with limits +-t; see {@link PadFormulas#TOLERANCE_STACK}. */
public final class ToleranceStack {

    private final double[] limits;

    /**
     * A stack.
     *
     * @param limits limit t of each piece, m, not negative
     * @throws IllegalArgumentException if a limit is negative or not finite
     */
    public ToleranceStack(double... limits) {
        this.limits = limits.clone();
        for (double t : limits) {
            Require.notNegative(t, "tolerance of a piece");
        }
    }

    /**
     * Returns a stack of equal pieces.
     *
     * @throws IllegalArgumentException if the count is not 0 to 1000 or the limit is negative
     */
    public static ToleranceStack equalPieces(int count, double limit) {
        Require.within(count, 0, 1000, "number of pieces");
        double[] limits = new double[count];
        Arrays.fill(limits, limit);
        return new ToleranceStack(limits);
    }

    /** Returns the worst case, the sum of the limits, m. */
    public double worst() {
        return Arrays.stream(limits).sum();
    }

    /** Returns the root-sum-square of the limits, m. */
    public double rootSumSquare() {
        return Math.sqrt(Arrays.stream(limits).map(t -> t * t).sum());
    }

    /** Returns the standard uncertainty of the height, each piece evenly spread between its limits, m. */
    public double standardUncertainty() {
        return rootSumSquare() / Math.sqrt(3);
    }
}
