package cradlewright.analysis.check;

import cradlewright.quantity.Dimension;

/**
 * A number in SI units that is shown in the units of the reader.
 *
 * @param si the value
 * @param dimension its dimension
 */
public record Amount(double si, Dimension dimension) {

    /** A force in N. */
    public static Amount force(double newtons) {
        return new Amount(newtons, Dimension.FORCE);
    }

    /** A mass in kg. */
    public static Amount mass(double kilograms) {
        return new Amount(kilograms, Dimension.MASS);
    }

    /** A length in m. */
    public static Amount length(double metres) {
        return new Amount(metres, Dimension.LENGTH);
    }

    /** A plain ratio. */
    public static Amount ratio(double ratio) {
        return new Amount(ratio, Dimension.RATIO);
    }

    /** A stress in Pa. */
    public static Amount stress(double pascals) {
        return new Amount(pascals, Dimension.STRESS);
    }
}
