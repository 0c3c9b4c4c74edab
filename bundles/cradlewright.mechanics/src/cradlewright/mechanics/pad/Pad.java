package cradlewright.mechanics.pad;

import cradlewright.mechanics.formula.Require;

/** A soft pad between stiff faces; loads are plain compressions in N. Creep is not in it: measure again after some weeks. */
public sealed interface Pad permits CorkPad, RubberPad {

    /** Returns the pressed area A, m2. */
    double area();

    /** Returns the thickness without load t, m. */
    double thickness();

    /** Returns the modulus in compression that counts for this shape, Pa. */
    double compressionModulus();

    /** Returns the stiffness k = E A/t, N/m. */
    default double stiffness() {
        return compressionModulus() * area() / thickness();
    }

    /**
     * Returns the stress F/A, Pa; see {@link PadFormulas#STRESS}.
     *
     * @throws IllegalArgumentException if the force is negative or not finite: a pad cannot be pulled
     */
    default double stress(double force) {
        return Require.notNegative(force, "force on the pad") / area();
    }

    /** Returns the compression F/k, m; throws as {@link #stress(double)}. */
    default double compression(double force) {
        return Require.notNegative(force, "force on the pad") / stiffness();
    }

    /** Returns the strain, compression over thickness; throws as {@link #stress(double)}. */
    default double strain(double force) {
        return compression(force) / thickness();
    }

    /** Returns by how much the pad grows from one force to a lesser one, m, negative if the second is larger. */
    default double rebound(double before, double after) {
        return compression(before) - compression(after);
    }
}
