package cradlewright.mechanics.section;

import cradlewright.mechanics.formula.Formula;
import java.util.List;

/** What the section formulas say about themselves. */
public final class SectionFormulas {

    /** Stress of axial force and unsymmetric bending. */
    public static final Formula NORMAL_STRESS = new Formula("section.normal-stress", "Normal stress at a point of a section",
            "s = N/A + z (My Iz + Mz Iyz)/(Iy Iz - Iyz2) - y (Mz Iy + My Iyz)/(Iy Iz - Iyz2)",
            "strength of materials, unsymmetric bending (from memory)", "straight member, elastic, plane sections",
            "restrained warping, residual stresses, second-order effects");
    /** Area and second moments of folded sheet. */
    public static final Formula FOLDED_MOMENTS = new Formula("section.folded-moments",
            "Area, centroid and second moments of folded sheet",
            "A = t sum(s), Iy = integral of z2 (1 - curvature e) de ds over the real thickness, likewise Iz, Iyz",
            "parallel axis sums and path integration, derived for this project", "one thickness, equal inner bend radii",
            "thinning in the bends, holes and slots; the sharp variant counts overlaps at the corners");
    /** Moments of the bare midline. */
    public static final Formula MIDLINE_MOMENTS = new Formula("section.midline-moments", "Second moments of the bare midline",
            "Iy = t integral of z2 ds, likewise Iz, Iyz", "thin-walled theory (two text pages read)",
            "thickness small against the flats", "stiffness of the sheet about its own midline");
    /** Corner approximation. */
    public static final Formula ROUNDED_CORNER = new Formula("section.rounded-corner", "Effect of round corners, approximate",
            "A = A_sharp (1 - d), I = I_sharp (1 - 2 d), Iw = Iw_sharp (1 - 4 d), d = 0.43 sum(r phi/90)/sum(b)",
            "EN 1993-1-3 5.1(3)-(4) (from memory)", "r up to about 0.25 of the flats", "position of the bends");
    /** Shear centre. */
    public static final Formula SHEAR_CENTRE = new Formula("section.shear-centre", "Shear centre of an open thin section",
            "pole for which integral(w y dA) = integral(w z dA) = 0, w the sectorial coordinate; channel e = 3 b2/(h + 6 b)",
            "thin-walled theory (two text pages read)", "open, thin-walled, one thickness", "thickness in the bends");
    /** Warping constant. */
    public static final Formula WARPING = new Formula("section.warping", "Warping constant of an open thin section",
            "Iw = integral of (w - mean w)2 dA about the shear centre",
            "thin-walled theory (two text pages read)", "open, thin-walled, one thickness",
            "secondary warping across the thickness");
    /** Moduli of warping. */
    public static final Formula WARPING_MODULI = new Formula("section.warping-moduli",
            "Stress of restrained warping in an open thin section",
            "s_w = B max w/Iw, tau_w = T_w max(integral of w ds)/Iw, w the sectorial coordinate about the shear centre, its mean taken off;"
                    + " channel: w = h (b - e)/2 at the edge, h e/2 at the web",
            "Vlasov's theory of thin-walled beams (from memory)", "open, thin-walled, one thickness",
            "stress across the thickness, peaks within a bend");
    /** Torsion of open sections. */
    public static final Formula OPEN_TORSION = new Formula("section.open-torsion", "Torsion of an open thin section",
            "J = sum(s t3)/3, largest shear stress T t/J", "thin-walled theory (two text pages read)", "open, thin-walled",
            "end effects, stiffening and stress rise in the bends, restrained warping");
    /** Plastic modulus of folded sheet. */
    public static final Formula PLASTIC_MODULUS = new Formula("section.plastic-modulus", "Plastic modulus of folded sheet",
            "Wpl = integral of |z - z0| dA, z0 halves the area", "plastic theory (from memory)",
            "drawn axes are principal axes; otherwise the elastic modulus is used", "shear, axial force");
    /** Shear areas. */
    public static final Formula SHEAR_AREAS = new Formula("section.shear-areas", "Shear areas: plastic, elastic, deflection",
            "Av = flats along the force between midline corners x t; A_el = t/max q; A_s = 1/integral(q2/t ds), q flow of 1 N",
            "EN 1993-1-1 6.2.6(3) and EN 1993-1-3 6.1.5 (web height between midlines, from memory); strain energy",
            "force through the shear centre", "edge folds at the ends are left out of Av; tee: 5/6 of the plates");
    /** Hollow sections. */
    public static final Formula HOLLOW_MOMENTS = new Formula("section.hollow-moments", "Values of a hollow section",
            "rounded rectangle outside less rounded rectangle inside; circle less circle",
            "EN 10219-2 Annex B (from memory), agrees with a published table",
            "corner radii 2, 2.5, 3 t outside for t up to 6, up to 10, above 10 mm", "seam weld, real corner radii");
    /** Torsion of hollow sections. */
    public static final Formula HOLLOW_TORSION = new Formula("section.hollow-torsion", "Torsion of a hollow section",
            "It = h t3/3 + 2 K Ah, Ct = It/(t + K/t), K = 2 Ah t/h, h mean perimeter, Ah enclosed area",
            "EN 10219-2 Annex B (from memory), agrees with a published table; Bredt", "closed, one thickness",
            "stress rise at the inner corners, restrained warping");
    /** Torsion of bars. */
    public static final Formula BAR_TORSION = new Formula("section.bar-torsion", "Torsion of a flat bar",
            "It = a b3 [1/3 - 0.21 (b/a) (1 - b4/(12 a4))]; largest stress 3T/(8 a b2) (1 + 0.6095 q + 0.8865 q2 - 1.8023 q3"
                    + " + 0.91 q4) with half sides a, b and q = b/a",
            "Roark's Formulas for Stress and Strain, rectangle (from memory)", "solid rectangle, error below 0.2 percent",
            "warping");
    /** Tee. */
    public static final Formula TEE = new Formula("section.tee", "Values of a tee from two plates",
            "parallel axis sums; J = sum(b t3)/3; shear centre in the middle of the flange",
            "strength of materials (from memory)", "plates joined over their whole length", "weld beads, warping");
    /** Flat pattern. */
    public static final Formula FLAT_PATTERN = new Formula("section.flat-pattern", "Flat length of bent sheet",
            "arc = angle (r + k t/2), k = 0.65 + 0.5 lg(r/t), 1 above r/t = 5; deduction = 2 (r + t) tan(angle/2) - arc,"
                    + " from 90 degrees on 2 (r + t) - arc",
            "DIN 6935 (worked example read)", "cold bent steel, r/t from 0.1",
            "die width, rolling direction, springback: bend a sample before cutting a batch");

    private SectionFormulas() {
    }

    /** All formulas of this family. */
    public static List<Formula> all() {
        return List.of(NORMAL_STRESS, FOLDED_MOMENTS, MIDLINE_MOMENTS, ROUNDED_CORNER, SHEAR_CENTRE, WARPING, WARPING_MODULI,
                OPEN_TORSION, PLASTIC_MODULUS, SHEAR_AREAS, HOLLOW_MOMENTS, HOLLOW_TORSION, BAR_TORSION, TEE, FLAT_PATTERN);
    }
}
