package cradlewright.mechanics.formula;

/** Guards of formula inputs: each names the quantity, the value found and the range wanted. */
public final class Require {

    private Require() {
    }

    /** Returns {@code value} when it is neither NaN nor infinite; throws IllegalArgumentException otherwise. */
    public static double finite(double value, String name) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number, found " + value);
        }
        return value;
    }

    /** Returns {@code value} when finite and above zero; throws IllegalArgumentException otherwise. */
    public static double positive(double value, String name) {
        finite(value, name);
        if (value <= 0) {
            throw new IllegalArgumentException(name + " must be above zero, found " + value);
        }
        return value;
    }

    /** Returns {@code value} when finite and not below zero; throws IllegalArgumentException otherwise. */
    public static double notNegative(double value, String name) {
        finite(value, name);
        if (value < 0) {
            throw new IllegalArgumentException(name + " must not be below zero, found " + value);
        }
        return value;
    }

    /** Returns {@code value} when finite and within the closed range; throws IllegalArgumentException otherwise. */
    public static double within(double value, double low, double high, String name) {
        finite(value, name);
        if (value < low || value > high) {
            throw new IllegalArgumentException(name + " must lie from " + low + " to " + high + ", found " + value);
        }
        return value;
    }
}
