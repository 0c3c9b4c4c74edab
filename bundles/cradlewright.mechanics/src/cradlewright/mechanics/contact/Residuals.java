package cradlewright.mechanics.contact;

/**
 * How well an answer keeps its conditions. Forces relative to the largest load, gaps relative to the largest elastic
 * approach or open gap.
 *
 * @param equilibrium largest error of E f = w
 * @param pull largest pull found at a support that rests
 * @param overlap largest overlap found at an open support
 * @param closure largest gap found at a shut contact
 */
public record Residuals(double equilibrium, double pull, double overlap, double closure) {

    /** Returns the largest of the four. */
    public double largest() {
        return Math.max(Math.max(equilibrium, pull), Math.max(overlap, closure));
    }
}
