package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Require;

/** How much a lift arm gives under its pad: a bar held at the post. Play of pivot and telescope comes on top. */
public final class ArmStiffness {

    private ArmStiffness() {
    }

    /**
     * Returns 3 E I/L3 in N/m; see {@link LiftingFormulas#ARM_STIFFNESS}.
     *
     * @param modulus E in Pa
     * @param secondMoment I of the section about its level axis, m4
     * @param length from pivot to pad, m
     */
    public static double uniform(double modulus, double secondMoment, double length) {
        Require.positive(modulus, "modulus");
        Require.positive(secondMoment, "second moment of area");
        Require.positive(length, "length");
        return 3 * modulus * secondMoment / (length * length * length);
    }

    /**
     * Returns the stiffness in N/m of an arm pulled out, an inner tube of {@code innerLength} and an outer one reaching
     * {@code outerLength} further; see {@link LiftingFormulas#ARM_STEPPED}.
     */
    public static double stepped(double modulus, double innerSecondMoment, double innerLength, double outerSecondMoment,
            double outerLength) {
        Require.positive(innerSecondMoment, "second moment of area, inner tube");
        Require.positive(innerLength, "length, inner tube");
        double reach = innerLength + Require.positive(outerLength, "length, outer tube");
        double inner = (reach * reach * reach - outerLength * outerLength * outerLength)
                / (3 * Require.positive(modulus, "modulus") * innerSecondMoment);
        return 1 / (inner + 1 / uniform(modulus, outerSecondMoment, outerLength));
    }

    /**
     * Returns how many times stiffer an arm of the same section is at {@code length} than at {@code longer}: (longer/length)3.
     */
    public static double ratio(double length, double longer) {
        double r = Require.positive(longer, "longer length") / Require.positive(length, "length");
        return r * r * r;
    }

    /** Returns the stiffness in N/m of an arm with a soft pad on it, 1/(1/k1 + 1/k2). */
    public static double withPad(double arm, double pad) {
        Require.positive(arm, "stiffness of the arm");
        Require.positive(pad, "stiffness of the pad");
        return arm * pad / (arm + pad);
    }
}
