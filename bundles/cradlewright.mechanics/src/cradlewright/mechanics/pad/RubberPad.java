package cradlewright.mechanics.pad;

import cradlewright.mechanics.formula.Require;

/**
 * A rubber pad that cannot slip on its plates; the flatter, the stiffer. See {@link PadFormulas#RUBBER}.
 *
 * @param area pressed area, m2
 * @param thickness thickness without load, m
 * @param shapeFactor S, pressed area over free area of the rim
 * @param modulus E0 of the rubber, Pa; body-mount rubber of 50 to 65 Shore A about 2.2 to 5 MPa (from memory)
 * @param bulkModulus K of the rubber, Pa; {@link #INCOMPRESSIBLE} to leave it out
 */
public record RubberPad(double area, double thickness, double shapeFactor, double modulus, double bulkModulus) implements Pad {

    /** Leaves the give of the rubber in volume out. */
    public static final double INCOMPRESSIBLE = Double.POSITIVE_INFINITY;

    /** Refuses values out of range. */
    public RubberPad {
        Require.positive(area, "pad area");
        Require.positive(thickness, "pad thickness");
        Require.positive(shapeFactor, "shape factor");
        Require.positive(modulus, "modulus of the rubber");
        if (!(bulkModulus > 0)) {
            throw new IllegalArgumentException("bulk modulus of the rubber must be above zero, found " + bulkModulus);
        }
    }

    /** Returns a full disc, S = D/(4 t); throws IllegalArgumentException if a value is not above zero. */
    public static RubberPad disc(double diameter, double thickness, double modulus) {
        Require.positive(diameter, "pad diameter");
        Require.positive(thickness, "pad thickness");
        return new RubberPad(Math.PI / 4 * diameter * diameter, thickness, diameter / (4 * thickness), modulus, INCOMPRESSIBLE);
    }

    /** Returns a block, S = L W/(2 t (L + W)); throws IllegalArgumentException if a value is not above zero. */
    public static RubberPad block(double length, double width, double thickness, double modulus) {
        Require.positive(length, "pad length");
        Require.positive(width, "pad width");
        Require.positive(thickness, "pad thickness");
        return new RubberPad(length * width, thickness, length * width / (2 * thickness * (length + width)), modulus,
                INCOMPRESSIBLE);
    }

    /** Returns the same pad with the bulk modulus counted; throws IllegalArgumentException if it is not above zero. */
    public RubberPad withBulkModulus(double bulk) {
        return new RubberPad(area, thickness, shapeFactor, modulus, bulk);
    }

    @Override
    public double compressionModulus() {
        double held = modulus * (1 + 2 * shapeFactor * shapeFactor);
        return 1 / (1 / held + 1 / bulkModulus);
    }
}
