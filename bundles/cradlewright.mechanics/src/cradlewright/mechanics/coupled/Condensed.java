package cradlewright.mechanics.coupled;

import java.util.Objects;

/**
 * An elastic body as its contacts feel it. Rigid motions may be mixed in (they depend on where the body was held for the
 * calculation): in a balanced contact problem they drop out, provided that both fields come from the same hold.
 *
 * @param compliance C_b, m/N: movement along action i per newton of action j, symmetric
 * @param sag movement along each action under the loads of the body that are not contacts, m
 */
public record Condensed(double[][] compliance, double[] sag) {

    /** Takes copies; the accessors give copies too. */
    public Condensed {
        Objects.requireNonNull(compliance, "compliance");
        Objects.requireNonNull(sag, "sag");
        if (compliance.length != sag.length) {
            throw new IllegalArgumentException("compliance and sag must have one length, found " + compliance.length + " and "
                    + sag.length);
        }
        compliance = copy(compliance);
        sag = sag.clone();
    }

    private static double[][] copy(double[][] matrix) {
        double[][] result = new double[matrix.length][];
        for (int i = 0; i < result.length; i++) {
            result[i] = matrix[i].clone();
        }
        return result;
    }

    @Override
    public double[][] compliance() {
        return copy(compliance);
    }

    @Override
    public double[] sag() {
        return sag.clone();
    }
}
