package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Formula;
import java.util.List;

/** What the steel formulas say about themselves. */
public final class SteelFormulas {

    /** Strengths by grade. */
    public static final Formula GRADE = new Formula("steel.grade", "Yield and tensile strength of a steel grade",
            "table by grade and thickness", "EN 10025-2 Table 7; EN 10149-2 (S700MC and thickness limits from memory)",
            "up to 63 mm (EN 10025-2), 20 or 16 mm (EN 10149-2)", "strength above the minimum; grades sold without certificate");
    /** Gain by cold forming. */
    public static final Formula COLD_FORMING_GAIN = new Formula("steel.cold-forming-gain", "Average yield strength after folding",
            "fya = fyb + (fu - fyb) k n t2/A, not above (fu + fyb)/2", "EN 1993-1-3 3.2.2 eq. (3.1); k = 5 from memory",
            "inner radius up to 5 t, no welding or heat after forming", "ignored by the checks unless passed on purpose");
    /** Class limits. */
    public static final Formula CLASS_LIMITS = new Formula("steel.class-limits", "Limits of c/t for local buckling",
            "internal 33, 38, 42 eps (compression), 72, 83, 124 eps (bending); outstand 9, 10, 14 eps; tube 50, 70, 90 eps2",
            "EN 1993-1-1 Table 5.2", "flat parts between bends",
            "plastic stress distribution under bending with compression: limits of uniform compression are used");
    /** Buckling factor of a plate. */
    public static final Formula PLATE_FACTOR = new Formula("steel.plate-factor", "Buckling factor of a flat part",
            "internal 8.2/(1.05 + psi), 7.81 - 6.29 psi + 9.78 psi2, 5.98 (1 - psi)2; outstand with tip leading"
                    + " 0.57 - 0.21 psi + 0.07 psi2, with root leading 0.578/(psi + 0.34), 1.7 - 5 psi + 17.1 psi2",
            "EN 1993-1-5 Tables 4.1, 4.2 (from memory), checked by an energy solution of the long plate",
            "psi from -3 to 1", "restraint by the neighbours of the part");
    /** Effective width. */
    public static final Formula EFFECTIVE_WIDTH = new Formula("steel.effective-width", "Effective width of a slender flat part",
            "lambda = (c/t)/(28.4 eps sqrt(k)); rho = (lambda - 0.055 (3 + psi))/lambda2 internal, (lambda - 0.188)/lambda2"
                    + " outstand",
            "EN 1993-1-5 4.4 (from memory)", "class 4, unstiffened flat parts",
            "lower stress than yield, distortion of lipped flanges, shear lag");
    /** Axial resistance. */
    public static final Formula AXIAL = new Formula("steel.axial", "Resistance to axial force", "N_Rd = A fy/gamma_M0",
            "EN 1993-1-1 6.2.3, 6.2.4", "class 4 with the effective area", "holes: net section at bolts is a check of the joint");
    /** Bending resistance. */
    public static final Formula BENDING = new Formula("steel.bending", "Resistance to bending",
            "M_Rd = W fy/gamma_M0, W plastic, elastic or effective by class", "EN 1993-1-1 6.2.5",
            "member held against sideways buckling", "holes, shear lag");
    /** Shear resistance. */
    public static final Formula SHEAR = new Formula("steel.shear", "Resistance to shear",
            "V_Rd = chi_w A_v fy/(sqrt 3 gamma_M0); V/V_Rd + tau_T/tau_Rd <= 1", "EN 1993-1-1 6.2.6, 6.2.7",
            "torsion added in full, safe side", "holes");
    /** Shear buckling. */
    public static final Formula SHEAR_BUCKLING = new Formula("steel.shear-buckling", "Shear buckling of a slender web",
            "chi_w = min(1, 0.83/lambda), lambda = (h/t)/(86.4 eps)", "EN 1993-1-5 5.3 (from memory)",
            "no stiffeners between the ends, end posts not rigid, gain eta = 1", "flanges");
    /** Reduction by shear. */
    public static final Formula SHEAR_REDUCTION = new Formula("steel.shear-reduction", "Moment lost to shear",
            "rho = (2 V/V_Rd - 1)2 above V = V_Rd/2", "EN 1993-1-1 6.2.8", "acts on the whole moment resistance, safe side",
            "flanges keep their full strength");
    /** Torsion. */
    public static final Formula TORSION = new Formula("steel.torsion", "Resistance to torsion",
            "T_Rd = W_t fy/(sqrt 3 gamma_M0); open sections W_t = J/t", "EN 1993-1-1 6.2.7",
            "elastic; shear of restrained warping is added to that of uniform torsion",
            "normal stress of restrained warping: see the yield criterion");
    /** Restrained warping. */
    public static final Formula WARPING_TORSION = new Formula("steel.warping-torsion", "Torque of an open section, by twist and by warping",
            "E Iw u'' - G J u = -T; T_t = G J u, T_w = T - T_t, B = E Iw u', s_w = B w/Iw; fork ends, load in the middle:"
                    + " B = (T/k) tanh(k L/2), T on either side, k = sqrt(G J/(E Iw)); ends between free and stopped: largest of both",
            "Vlasov's theory of thin-walled beams, EN 1993-1-1 6.2.7; closed forms in SCI P385 Appendix C and AISC Design Guide 9",
            "open section of one thickness that keeps its shape, small twist; torque along the member known",
            "distortion of the section, second order, what warping adds to the twist stiffness of the frame");
    /** Linear sum. */
    public static final Formula LINEAR_SUM = new Formula("steel.linear-sum", "Axial force and bending together",
            "N/N_Rd + My/My_Rd + Mz/Mz_Rd <= 1", "EN 1993-1-1 6.2.1(7)", "all classes, safe side", "none beyond its parts");
    /** Yield criterion. */
    public static final Formula YIELD_CRITERION = new Formula("steel.yield-criterion", "Elastic yield criterion",
            "(sx/fy)2 + (sz/fy)2 - (sx/fy)(sz/fy) + 3 (tau/fy)2 <= 1", "EN 1993-1-1 6.2.1(5)", "elastic stress",
            "largest stresses are joined even where they lie at different points");
    /** Flexural buckling. */
    public static final Formula FLEXURAL_BUCKLING = new Formula("steel.flexural-buckling", "Buckling under compression",
            "chi = 1/(phi + sqrt(phi2 - lambda2)), phi = 0.5 (1 + alpha (lambda - 0.2) + lambda2), N_b = chi A fy/gamma_M1",
            "EN 1993-1-1 6.3.1", "straight uniform member", "end fixity beyond the buckling length, built-in eccentricity");
    /** Torsional buckling. */
    public static final Formula TORSIONAL_BUCKLING = new Formula("steel.torsional-buckling",
            "Critical force with bending and twisting",
            "i2 (N - Nu)(N - Nv)(N - Nt) - N2 u2 (N - Nv) - N2 v2 (N - Nu) = 0, Nt = (G J + pi2 E Iw/L2)/i2",
            "theory of elastic stability (from memory); EN 1993-1-1 6.3.1.4", "simple supports", "distortion of the section");
    /** Critical moment. */
    public static final Formula CRITICAL_MOMENT = new Formula("steel.critical-moment", "Elastic critical moment",
            "M_cr = C1 (pi2 E Iz/L2) (sqrt(Iw/Iz + L2 G It/(pi2 E Iz) + (C2 zg)2) - C2 zg)", "NCCI SN003, equation 1",
            "symmetric about the horizontal axis, fork supports, zg height of the load above the shear centre",
            "bending before buckling, distortion");
    /** Lateral-torsional buckling. */
    public static final Formula LATERAL_TORSIONAL_BUCKLING = new Formula("steel.lateral-torsional-buckling",
            "Sideways buckling in bending", "M_b = chi W fy/gamma_M1, chi from lambda = sqrt(W fy/M_cr)",
            "EN 1993-1-1 6.3.2.2, curve d for folded sections and flat bars (from memory)", "as the critical moment",
            "torque of loads beside the shear centre: pass it to the section check");
    /** Top edge load. */
    public static final Formula TOP_EDGE_LOAD = new Formula("steel.top-edge-load", "Load on the top edge",
            "zg from the shear centre to the top edge; even moment C1 = 1 with C2 = 0.630 of one load in the middle",
            "NCCI SN003, C2 of Table 3.2 (number of the table from memory)", "loads through pads on top of the member",
            "height of the pads above the edge, what they hold sideways");
    /** Member sum. */
    public static final Formula MEMBER_SUM = new Formula("steel.member-sum", "Compression and bending of a member",
            "N/N_b + My/(M_b cos(pi/2 sqrt(N/Ny))) + Mz/(Mz_Rd cos(pi/2 sqrt(N/Nz))) <= 1",
            "derived for this project, checked by integration of a bowed strut; stands in for EN 1993-1-1 6.3.3",
            "moments taken as uniform at their largest value, safe side", "shape of the moments");
    /** Range of folded sheet. */
    public static final Formula SHEET_RANGE = new Formula("steel.sheet-range", "Range of design by calculation",
            "outstand c/t <= 50, internal part c/t <= 500", "EN 1993-1-3 Table 5.1 (from memory)", "folded sheet",
            "inclined webs: 500 sin(angle)");

    private SteelFormulas() {
    }

    /** All formulas of this family. */
    public static List<Formula> all() {
        return List.of(GRADE, COLD_FORMING_GAIN, CLASS_LIMITS, PLATE_FACTOR, EFFECTIVE_WIDTH, AXIAL, BENDING, SHEAR,
                SHEAR_BUCKLING, SHEAR_REDUCTION, TORSION, LINEAR_SUM, YIELD_CRITERION, WARPING_TORSION, FLEXURAL_BUCKLING,
                TORSIONAL_BUCKLING,
                CRITICAL_MOMENT, LATERAL_TORSIONAL_BUCKLING, TOP_EDGE_LOAD, MEMBER_SUM, SHEET_RANGE);
    }
}
