package cradlewright.mechanics.timber;

import java.util.List;

import cradlewright.mechanics.formula.Formula;

/** The formulas of timber rails, with sources and limits. */
public final class TimberFormulas {

    private static final String SOLID = "graded solid softwood C16, C18, C24, rectangular";

    /** Duration and dampness. */
    public static final Formula K_MOD = new Formula("timber.k-mod", "Duration of load and dampness",
            "f_d = k_mod f_k/gamma_M, gamma_M 1.3; k_mod 0.50 to 1.10", "EN 1995-1-1 2.4.1, Table 3.1, Table 2.3", SOLID,
            "drying cracks beyond the crack factor");

    /** Size. */
    public static final Formula DEPTH_FACTOR = new Formula("timber.depth-factor", "Factor of small depths",
            "k_h = min((150 mm/h)^0.2, 1.3) for h < 150 mm, else 1", "EN 1995-1-1 3.2(3)", SOLID, "no reduction of deep rails");

    /** Bending. */
    public static final Formula BENDING = new Formula("timber.bending", "Bending of a timber rail",
            "sigma_y/f_m,y,d + 0.7 sigma_z/f_m,z,d <= 1 and 0.7 sigma_y/f_m,y,d + sigma_z/f_m,z,d <= 1; sigma = 6 M/(b h^2)",
            "EN 1995-1-1 6.1.6 (k_m from memory); strengths EN 338", SOLID,
            "lateral buckling, notches, holes, axial force, creep");

    /** Shear. */
    public static final Formula SHEAR = new Formula("timber.shear", "Shear of a timber rail",
            "tau_d = 1.5 V/(k_cr b h) <= f_v,d; k_cr 0.67", "EN 1995-1-1:2004+A1:2008 6.1.7; f_v,k EN 338:2009 (from memory)",
            SOLID, "notched ends, relief of loads close to a support, shear both ways at once");

    /** Seats. */
    public static final Formula BEARING = new Formula("timber.bearing", "Pressure across the grain under a seat",
            "F/(b l) <= k_c,90 f_c,90,d with k_c,90 = 1", "EN 1995-1-1 6.1.5 (6.3), (6.4)", SOLID,
            "spread beyond the seat and k_c,90 above 1 (safe side); dents under long load");

    private TimberFormulas() {
    }

    /** Returns all formulas of the family. */
    public static List<Formula> all() {
        return List.of(K_MOD, DEPTH_FACTOR, BENDING, SHEAR, BEARING);
    }
}
