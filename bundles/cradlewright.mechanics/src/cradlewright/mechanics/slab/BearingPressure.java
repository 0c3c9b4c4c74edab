package cradlewright.mechanics.slab;

import cradlewright.mechanics.formula.Require;

/** Pressure on the concrete under a contact and on the soil below the slab; see {@link SlabFormulas#BEARING}. */
public final class BearingPressure {

    private BearingPressure() {
    }

    /** Returns the mean pressure under the contact, Pa. */
    public static double contact(double force, LoadedArea area) {
        return Require.notNegative(force, "force") / area.area();
    }

    /**
     * Returns that pressure over the design strength 0.85 f_ck/1.5; the gain from the concrete around the contact is left out.
     */
    public static double utilisation(double force, LoadedArea area, double fck) {
        return contact(force, area) / Concrete.designCompression(fck);
    }

    /**
     * Returns the pressure on the soil when the load spreads at 45 degrees through the slab, Pa. A hand estimate: a stiff slab
     * spreads further.
     *
     * @param force N
     * @param area contact, m
     * @param thickness of the slab, m
     */
    public static double soil(double force, LoadedArea area, double thickness) {
        double more = 2 * Require.positive(thickness, "thickness");
        double spread = area.round() ? LoadedArea.circle((area.length() + more) / 2).area()
                : (area.length() + more) * (area.width() + more);
        return Require.notNegative(force, "force") / spread;
    }
}
