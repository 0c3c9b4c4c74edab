package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.section.AreaMoments;
import cradlewright.mechanics.section.SectionProperties;

/**
 * Buckling of a straight uniform member under compression, EN 1993-1-1 6.3.1: about both axes, and by twisting of open
 * sections (6.3.1.4).
 *
 * @param criticalForce lowest elastic critical force, N
 * @param slenderness relative slenderness sqrt(A fy/N_cr)
 * @param phi auxiliary value
 * @param chi reduction factor
 * @param resistance N_b,Rd, N
 * @see SteelFormulas#FLEXURAL_BUCKLING
 */
public record FlexuralBuckling(double criticalForce, double slenderness, double phi, double chi, double resistance) {

    private static final int HALVINGS = 200;

    /**
     * Buckling lengths.
     *
     * @param y for buckling about the axis y-y, m
     * @param z for buckling about the axis z-z, m
     * @param torsion distance between points held against twisting, m
     */
    public record Lengths(double y, double z, double torsion) {

        /** Refuses lengths that are not above zero. */
        public Lengths {
            Require.positive(y, "buckling length about y");
            Require.positive(z, "buckling length about z");
            Require.positive(torsion, "torsional buckling length");
        }
    }

    /** Euler force pi2 E I/L2, N. */
    public static double eulerForce(double second, double length) {
        Require.positive(second, "second moment");
        Require.positive(length, "buckling length");
        return Math.PI * Math.PI * Steel.E * second / (length * length);
    }

    /**
     * Buckling resistance from a known critical force.
     *
     * @param area gross area, or the effective area in class 4, m2
     * @param yield Pa
     * @param criticalForce of the gross section, N
     * @param curve buckling curve
     * @param gammaM1 partial factor, from 1 to 2
     */
    public static FlexuralBuckling of(double area, double yield, double criticalForce, BucklingCurve curve, double gammaM1) {
        Require.positive(area, "area");
        Require.positive(yield, "yield strength");
        Require.positive(criticalForce, "critical force");
        Require.within(gammaM1, 1, 2, "gamma_M1");
        double slenderness = Math.sqrt(area * yield / criticalForce);
        double chi = curve.chi(slenderness);
        return new FlexuralBuckling(criticalForce, slenderness, curve.phi(slenderness), chi, chi * area * yield / gammaM1);
    }

    /**
     * Lowest resistance of a member. The torsional modes use the curve given, which EN 1993-1-1 6.3.1.4 takes about z-z.
     *
     * @param section properties
     * @param yield Pa
     * @param lengths buckling lengths; when y and z are no principal axes, the longer one counts for both
     * @param curve buckling curve
     * @param gammaM1 partial factor
     * @throws IllegalArgumentException for a tube of class 4
     */
    public static FlexuralBuckling of(SectionProperties section, double yield, Lengths lengths, BucklingCurve curve,
            double gammaM1) {
        return of(new CrossSectionCheck(section, yield, 1).axialArea(-1), yield, criticalForce(section, lengths), curve, gammaM1);
    }

    /**
     * Lowest elastic critical force: first root of the cubic of bending about both principal axes and twisting about the
     * shear centre, N.
     *
     * @see SteelFormulas#TORSIONAL_BUCKLING
     */
    public static double criticalForce(SectionProperties section, Lengths lengths) {
        AreaMoments m = section.moments();
        double dy = section.torsion().shearCentreY() - m.centroidY();
        double dz = section.torsion().shearCentreZ() - m.centroidZ();
        boolean principal = m.principalAxes();
        double angle = principal ? 0 : m.principalAngle();
        double u = Math.cos(angle) * dy + Math.sin(angle) * dz;
        double v = -Math.sin(angle) * dy + Math.cos(angle) * dz;
        double longer = Math.max(lengths.y, lengths.z);
        double forceU = principal ? eulerForce(m.iy(), lengths.y) : eulerForce(m.iMax(), longer);
        double forceV = principal ? eulerForce(m.iz(), lengths.z) : eulerForce(m.iMin(), longer);
        double polar = (m.iy() + m.iz()) / m.area() + dy * dy + dz * dz;
        double forceT = (Steel.G * section.torsion().constant()
                + Math.PI * Math.PI * Steel.E * section.torsion().warping() / (lengths.torsion * lengths.torsion)) / polar;
        double low = 0;
        double high = Math.min(forceU, Math.min(forceV, forceT));
        for (int i = 0; i < HALVINGS; i++) {
            double n = (low + high) / 2;
            double cubic = polar * (n - forceU) * (n - forceV) * (n - forceT) - n * n * u * u * (n - forceV)
                    - n * n * v * v * (n - forceU);
            if (cubic < 0) {
                low = n;
            } else {
                high = n;
            }
        }
        return (low + high) / 2;
    }

    /** The check against a compressive force. */
    public Utilisation against(double compression) {
        return new Utilisation(SteelFormulas.FLEXURAL_BUCKLING.id(), "buckling under compression",
                Require.notNegative(compression, "compression"), resistance, "N", "EN 1993-1-1 6.3.1");
    }
}
