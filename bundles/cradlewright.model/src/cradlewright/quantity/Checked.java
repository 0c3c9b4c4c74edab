package cradlewright.quantity;

import java.util.OptionalDouble;

/** Guards of the value classes. */
final class Checked {

    private Checked() {
    }

    /** Returns a finite value, with minus zero turned into zero so that equal values have equal texts. */
    static double finite(double value, String name) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number, found " + value);
        }
        return value + 0.0;
    }

    /** Returns an uncertainty that is absent, or finite and not below zero. */
    static OptionalDouble uncertainty(OptionalDouble uncertainty) {
        if (uncertainty.isEmpty()) {
            return uncertainty;
        }
        double given = finite(uncertainty.getAsDouble(), "uncertainty");
        if (given < 0) {
            throw new IllegalArgumentException("uncertainty must not be below zero, found " + given);
        }
        return OptionalDouble.of(given);
    }
}
