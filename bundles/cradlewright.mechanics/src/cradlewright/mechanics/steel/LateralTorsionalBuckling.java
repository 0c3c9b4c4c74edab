package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.section.SectionProperties;

/**
 * Sideways buckling of a member bent about y, EN 1993-1-1 6.3.2.2, with the critical moment of NCCI SN003.
 *
 * @param length between points held sideways and against twisting, m
 * @param criticalMoment M_cr, N*m
 * @param slenderness relative slenderness sqrt(W fy/M_cr)
 * @param phi auxiliary value
 * @param chi reduction factor
 * @param resistance M_b,Rd, N*m
 * @see SteelFormulas#LATERAL_TORSIONAL_BUCKLING
 */
public record LateralTorsionalBuckling(double length, double criticalMoment, double slenderness, double phi, double chi,
        double resistance) {

    private static final double SYMMETRY = 1e-6;

    /** Where the load acts. */
    public enum LoadHeight {
        /** At the height of the shear centre, or below. */
        SHEAR_CENTRE,
        /** On the top edge: it pushes the leaning member further over. */
        TOP_EDGE
    }

    /**
     * Critical moment of NCCI SN003 for fork supports (k = k_w = 1), N*m.
     *
     * @param iz second moment about z, m4
     * @param it torsion constant, m4
     * @param iw warping constant, not below zero, m6
     * @param length between points held sideways and against twisting, m
     * @param c1 factor of the moment shape
     * @param lever C2 z_g: height of the load above the shear centre times its factor, m; below zero for a load that hangs below
     * @param shearModulus Pa
     * @see SteelFormulas#CRITICAL_MOMENT
     */
    public static double criticalMoment(double iz, double it, double iw, double length, double c1, double lever, double shearModulus) {
        Require.positive(iz, "Iz");
        Require.positive(it, "torsion constant");
        Require.notNegative(iw, "warping constant");
        Require.positive(c1, "factor C1");
        Require.positive(shearModulus, "shear modulus");
        double euler = FlexuralBuckling.eulerForce(iz, length);
        return c1 * euler * (Math.hypot(Math.sqrt(iw / iz + shearModulus * it / euler), Require.finite(lever, "C2 z_g")) - lever);
    }

    /**
     * Height of the load above the shear centre times its factor, C2 z_g, m: none for a load at the shear centre.
     *
     * @see SteelFormulas#TOP_EDGE_LOAD
     */
    private static double lever(SectionProperties section, MomentShape shape, LoadHeight height) {
        return height == LoadHeight.TOP_EDGE ? shape.c2() * section.top() : 0;
    }

    /**
     * Moment resistance about y of a member with fork supports.
     *
     * @param section symmetric about its horizontal axis: flat bars, channels, lipped channels, hollow sections
     * @param modulus plastic, elastic or effective by class, m3
     * @param yield Pa
     * @param length between points held sideways and against twisting, m
     * @param shape of the moment
     * @param height where the load acts
     * @param curve buckling curve, {@link BucklingCurve#D} for folded sections and flat bars
     * @param gammaM1 partial factor
     * @throws IllegalArgumentException for zeds, angles, tees and hats, for which SN003 does not hold
     */
    public static LateralTorsionalBuckling of(SectionProperties section, double modulus, double yield, double length,
            MomentShape shape, LoadHeight height, BucklingCurve curve, double gammaM1) {
        double depth = section.top() + section.bottom();
        double offset = Math.abs(section.torsion().shearCentreZ() - section.moments().centroidZ());
        if (!section.moments().principalAxes() || offset > SYMMETRY * depth) {
            throw new IllegalArgumentException("critical moment: " + section.name()
                    + " is not symmetric about its horizontal axis, the formula of NCCI SN003 does not hold");
        }
        Require.positive(modulus, "section modulus");
        Require.positive(yield, "yield strength");
        Require.within(gammaM1, 1, 2, "gamma_M1");
        double critical = criticalMoment(section.iz(), section.torsion().constant(), section.torsion().warping(), length,
                shape.c1(), lever(section, shape, height), Steel.G);
        double slenderness = Math.sqrt(modulus * yield / critical);
        // bending about the weaker axis cannot buckle sideways
        double chi = section.iz() >= section.iy() ? 1 : curve.chi(slenderness);
        return new LateralTorsionalBuckling(length, critical, slenderness, curve.phi(slenderness), chi,
                chi * modulus * yield / gammaM1);
    }

    /** The check against a moment about y. */
    public Utilisation against(double moment) {
        return new Utilisation(SteelFormulas.LATERAL_TORSIONAL_BUCKLING.id(), "sideways buckling in bending", Math.abs(moment),
                resistance, "N*m", "EN 1993-1-1 6.3.2.2");
    }
}
