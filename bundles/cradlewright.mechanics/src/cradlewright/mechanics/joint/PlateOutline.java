package cradlewright.mechanics.joint;

import cradlewright.mechanics.formula.Require;

/**
 * The rectangle in which a bolted plate presses on its seat; its edges are the toes about which it opens.
 *
 * @param minU least u of the pressed face, m
 * @param maxU largest u, m
 * @param minV least v, m
 * @param maxV largest v, m
 */
public record PlateOutline(double minU, double maxU, double minV, double maxV) {

    /** Refuses an outline without area. */
    public PlateOutline {
        Require.finite(minU, "least u of the plate");
        Require.finite(minV, "least v of the plate");
        Require.positive(Require.finite(maxU, "largest u of the plate") - minU, "width of the plate along u");
        Require.positive(Require.finite(maxV, "largest v of the plate") - minV, "width of the plate along v");
    }

    boolean contains(PlanePoint p) {
        return p.u() >= minU && p.u() <= maxU && p.v() >= minV && p.v() <= maxV;
    }
}
