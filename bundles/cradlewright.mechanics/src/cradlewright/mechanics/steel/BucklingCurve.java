package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;

/**
 * European buckling curves with the imperfection factors of EN 1993-1-1 Tables 6.1 and 6.3. Choice by Tables 6.2 and 6.4
 * (from memory): hollow sections hot finished {@link #A}, cold formed {@link #C}; channels, tees, solid bars and folded open
 * sections {@link #C}; angles {@link #B}; lateral-torsional buckling of folded sections and flat bars {@link #D}.
 */
public enum BucklingCurve {

    /** Curve a0. */
    A0(0.13),
    /** Curve a. */
    A(0.21),
    /** Curve b. */
    B(0.34),
    /** Curve c. */
    C(0.49),
    /** Curve d. */
    D(0.76);

    private static final double PLATEAU = 0.2;

    private final double imperfection;

    BucklingCurve(double imperfection) {
        this.imperfection = imperfection;
    }

    /** Imperfection factor alpha. */
    public double imperfection() {
        return imperfection;
    }

    /** Auxiliary value phi = 0.5 (1 + alpha (lambda - 0.2) + lambda2). */
    public double phi(double slenderness) {
        Require.notNegative(slenderness, "relative slenderness");
        return 0.5 * (1 + imperfection * (slenderness - PLATEAU) + slenderness * slenderness);
    }

    /**
     * Reduction factor chi, not above 1.
     *
     * @param slenderness relative slenderness, not below zero
     */
    public double chi(double slenderness) {
        if (Require.notNegative(slenderness, "relative slenderness") <= PLATEAU) {
            return 1;
        }
        double phi = phi(slenderness);
        return Math.min(1, 1 / (phi + Math.sqrt(phi * phi - slenderness * slenderness)));
    }
}
