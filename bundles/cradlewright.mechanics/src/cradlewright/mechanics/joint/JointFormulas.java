package cradlewright.mechanics.joint;

import java.util.List;

import cradlewright.mechanics.formula.Formula;

/** The formulas of bolted and welded joints, with sources and limits. */
public final class JointFormulas {

    private static final String TABLE_3_4 = "EN 1993-1-8 Table 3.4";
    private static final String ONE_BOLT = "bolts that are not preloaded, M6 to M16; design resistance against factored actions";
    private static final String NO_FATIGUE = "long joints, packings, slip, fatigue";

    /** Stress area of a thread. */
    public static final Formula STRESS_AREA = new Formula("bolt.stress-area", "Stress area of a bolt",
            "A_s = pi/4 (d - 0.9382 p)^2; resistances use the tabulated nominal value", "ISO 898-1 (formula from memory)",
            "metric threads", "tolerances of the thread");

    /** Shear of one bolt. */
    public static final Formula SHEAR = new Formula("bolt.shear", "Shear resistance of a bolt",
            "F_v,Rd = alpha_v f_ub A/gamma_M2; threads: A_s with alpha_v 0.6, 10.9: 0.5; shank: gross area with 0.6", TABLE_3_4,
            ONE_BOLT, NO_FATIGUE);

    /** Reduction in wide holes. */
    public static final Formula CLEARANCE_TWO_MM = new Formula("bolt.clearance-two-mm", "M12 and M14 in 2 mm clearance holes",
            "0.85 F_v,Rd, and bearing must not exceed shear", "EN 1993-1-8 3.6.1(5); the bearing condition from memory",
            "M12 and M14; applied to 4.6 and 5.6 as well (safe side)", NO_FATIGUE);

    /** Tension of one bolt. */
    public static final Formula TENSION = new Formula("bolt.tension", "Tension resistance of a bolt",
            "F_t,Rd = k2 f_ub A_s/gamma_M2; k2 = 0.9, countersunk 0.63", TABLE_3_4, ONE_BOLT, "fatigue, bending of the bolt");

    /** Punching of head or nut. */
    public static final Formula PUNCHING = new Formula("bolt.punching", "Head or nut pulled through the plate",
            "B_p,Rd = 0.6 pi d_m t_p f_u/gamma_M2", TABLE_3_4, "plates from 3 mm; d_m mean of widths across flats and corners",
            "washers, pull-over of thin sheet, captive and weld nuts");

    /** Shear with tension. */
    public static final Formula COMBINED = new Formula("bolt.combined", "Shear and tension together",
            "F_v/F_v,Rd + F_t/(1.4 F_t,Rd) <= 1, and F_t <= F_t,Rd, F_t <= B_p,Rd", TABLE_3_4, ONE_BOLT, NO_FATIGUE);

    /** Bearing in plates. */
    public static final Formula BEARING = new Formula("bolt.bearing", "Bearing on the hole",
            "F_b,Rd = k1 alpha_b f_u d t/gamma_M2; alpha_b = min(e1/(3 d0), p1/(3 d0) - 1/4, f_ub/f_u, 1);"
                    + " k1 = min(2.8 e2/d0 - 1.7, 1.4 p2/d0 - 1.7, 2.5); oversize x 0.8, slot across the force x 0.6",
            TABLE_3_4, "t from 3 mm; distances at least the minima of Table 3.3; a slot along the force counts nothing",
            "net section, block tearing, growth of the hole");

    /** Bearing in thin sheet. */
    public static final Formula BEARING_THIN_SHEET = new Formula("bolt.bearing-thin-sheet", "Bearing on the hole of thin sheet",
            "F_b,Rd = 2.5 alpha_b k_t f_u d t/gamma_M2; alpha_b = min(1, e1/(3 d));"
                    + " k_t = (0.8 t + 1.5)/2.5 up to 1.25 mm, 1 above",
            "EN 1993-1-3 Table 8.4 (from memory; agrees with an open implementation of the table)",
            "0.75 mm <= t < 3 mm, f_u <= 550 MPa, M6 and larger;"
                    + " factors of oversize and slotted holes taken over from EN 1993-1-8",
            "net section, tearing of the sheet");

    /** Single lap with one row. */
    public static final Formula SINGLE_LAP = new Formula("bolt.single-lap", "Single lap with one row of bolts",
            "F_b,Rd <= 1.5 f_u d t/gamma_M2", "EN 1993-1-8 3.6.1(10) (from memory)", "washers under head and nut",
            "bending of the lap");

    /** Distances of holes. */
    public static final Formula SPACING = new Formula("bolt.spacing", "Least and largest distances of holes",
            "e1, e2 >= 1.2 d0; p1 >= 2.2 d0; p2 >= 2.4 d0; slots 1.5 d0; p <= min(14 t, 200 mm); exposed e <= 4 t + 40 mm;"
                    + " sheet below 3 mm: e1 >= d0, e2 >= 1.5 d0, p >= 3 d0",
            "EN 1993-1-8 Table 3.3, EN 1993-1-3 Table 8.4", "rows that are not staggered", "fatigue spacing of EN 1993-1-9");

    /** Bolt group in its plane. */
    public static final Formula GROUP_IN_PLANE = new Formula("bolt.group-in-plane", "Bolt group in its plane",
            "F_i = V/n + M/J (-v_i, u_i); J = sum(u_i^2 + v_i^2) about the centroid",
            "elastic method, Mechanical Engineering Design ch. 8", "bolts of one size, rigid plate",
            "hole clearance, friction; plastic methods would give more");

    /** Tension about the toe. */
    public static final Formula GROUP_TOE = new Formula("bolt.group-toe", "Bolt tension about the compression edge",
            "T_i = (N/n + M y_i/sum(y_j^2)) x prying, y from the toe", "elastic method with rigid plate, machine-design texts",
            "a plate that presses on a straight edge; each bending axis about its own edge",
            "give of the seat at the toe; relief by compression");

    /** Tension about the centroid. */
    public static final Formula GROUP_CENTROID = new Formula("bolt.group-centroid", "Bolt tension about the centroid",
            "T_i = (N/n + linear part that balances M about the centroid) x prying, not below zero",
            "elastic method, safe variant, machine-design texts", "any outline; for plates that may not press on their edge",
            "contact pressure; relief by compression");

    /** Prying. */
    public static final Formula PRYING = new Formula("bolt.prying", "Prying",
            "factor 1 if t >= d, else 1.25 to 1.40 stated; bound 1 + m/(2 n), n <= 1.25 m,"
                    + " for a plate yielding at web and bolt line",
            "stated factors: common practice, no source; bound: own derivation, checked by the equilibrium of a tee flange",
            "the stated factors need an edge distance n of at least 1.25 m", "exact resistance of the tee (EN 1993-1-8 6.2.4)");

    /** Proof load. */
    public static final Formula PRELOAD_PROOF = new Formula("bolt.preload-proof", "Preload of a joint that is taken apart again",
            "F = 0.75 A_s S_p", "proof stress ISO 898-1; share machine-design texts (from memory)", "coarse threads up to 16 mm",
            "scatter of tightening, settling");

    /** Torque factor. */
    public static final Formula TORQUE_FACTOR = new Formula("bolt.torque-factor", "Torque by the torque factor",
            "T = K F d; K about 0.20 dry, 0.15 lubricated", "machine-design texts (K from memory)",
            "show K beside the torque", "scatter of friction of a quarter and more");

    /** VDI form. */
    public static final Formula TIGHTENING_VDI = new Formula("bolt.tightening-vdi", "Torque and preload from friction",
            "M = F (0.16 p + 0.58 d2 mu_G + D_km mu_K/2); F = A_S 0.9 R_p/sqrt(1 + 3 (1.5 d2/d_s (p/(pi d2) + 1.155 mu_G))^2)",
            "VDI 2230 form (from memory)", "hexagon heads on medium clearance holes; show mu beside the torque",
            "scatter of friction, settling, soft seats");

    /** Simple method of fillet welds. */
    public static final Formula WELD = new Formula("weld.simple-method", "Fillet weld, simple method",
            "F_w,Rd = a f_vw,d; f_vw,d = f_u/(sqrt(3) beta_w gamma_M2);"
                    + " beta_w 0.80 S235, 0.85 S275, 0.90 S355, 1.00 S420 and S460",
            "EN 1993-1-8 4.5.3.3, Table 4.1", "throat from 3 mm, plates from 4 mm, hollow sections from 2.5 mm",
            "gain of cross-loaded fillets, fatigue, workmanship");

    /** Effective length. */
    public static final Formula WELD_LENGTH = new Formula("weld.effective-length", "Effective length of a fillet weld",
            "run less one throat per open end; nothing below max(30 mm, 6 a)", "EN 1993-1-8 4.5.1", "throat from 3 mm",
            "craters deeper than a throat");

    /** Long laps. */
    public static final Formula WELD_LONG_LAP = new Formula("weld.long-lap", "Long lap weld",
            "beta_Lw,1 = 1.2 - 0.2 L/(150 a) <= 1", "EN 1993-1-8 4.11(3) (from memory)", "laps longer than 150 throats",
            "stiffness of the parts");

    /** Weld group. */
    public static final Formula WELD_GROUP = new Formula("weld.group", "Weld group as lines",
            "q = V/L + torsion x arm/I_p in the plane, N/L + linear part that balances the bending out of it",
            "elastic method, Mechanical Engineering Design ch. 9; Mechanical Engineer's Data Handbook 1.2.6",
            "one throat, rigid parts, flat group",
            "contact under compression, plastic redistribution, give of unstiffened walls");

    private JointFormulas() {
    }

    /** Returns all formulas of the family. */
    public static List<Formula> all() {
        return List.of(STRESS_AREA, SHEAR, CLEARANCE_TWO_MM, TENSION, PUNCHING, COMBINED, BEARING, BEARING_THIN_SHEET, SINGLE_LAP,
                SPACING, GROUP_IN_PLANE, GROUP_TOE, GROUP_CENTROID, PRYING, PRELOAD_PROOF, TORQUE_FACTOR, TIGHTENING_VDI, WELD,
                WELD_LENGTH, WELD_LONG_LAP, WELD_GROUP);
    }
}
