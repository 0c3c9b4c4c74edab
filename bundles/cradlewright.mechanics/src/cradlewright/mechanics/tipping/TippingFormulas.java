package cradlewright.mechanics.tipping;

import java.util.List;

import cradlewright.mechanics.formula.Formula;

/** The formulas of balance on the floor, with sources and limits. */
public final class TippingFormulas {

    private static final String STATICS = "statics (from memory)";
    private static final String RIGID = "rigid load at rest on a plane floor";
    private static final String GIVE = "give of floor, pads, treads and frame; second-order tilt; slosh";
    private static final String PRACTICE = "common practice, no source";

    /** Margin. */
    public static final Formula MARGIN = new Formula("tipping.margin", "Margin of the balance point",
            "d_j = (p_j - c) . n_j for each edge of the convex hull of the floor contacts; stands if all d_j > 0",
            STATICS, "at least three contacts that span an area; swivels in their worst position are a formula of their own",
            GIVE);

    /** Tip angle. */
    public static final Formula TIP_ANGLE = new Formula("tipping.tip-angle", "Tip angle over an edge", "alpha = atan(d/h)",
            STATICS, RIGID, GIVE);

    /** Slope. */
    public static final Formula SLOPE = new Formula("tipping.slope", "Margin on a sloping floor",
            "d_eff = d - h s, alpha_eff = atan(d/h) - atan(s); s tangent of the slope across the edge", STATICS, RIGID, GIVE);

    /** Force-angle measure. */
    public static final Formula FORCE_ANGLE = new Formula("tipping.force-angle", "Force-angle measure",
            "theta_j |f_j|, least over the edges; f_j part of the weight square to the edge, theta_j its angle to the edge line",
            "Vehicle System Dynamics 33 (2000) 29-48 (abstract read; a form with the lever arm exists as well, from memory)",
            "weight as the only force; compares states of one load, it is no limit", GIVE);

    /** Energy to tip. */
    public static final Formula ENERGY = new Formula("tipping.energy", "Work that tips a load",
            "U = W R (1 - cos alpha_eff), R = sqrt(h^2 + d^2); level floor: W (sqrt(h^2 + d^2) - h)",
            "own derivation, checked by a scan of the swing", RIGID, GIVE);

    /** Push that tips. */
    public static final Formula PUSH = new Formula("tipping.push", "Push that tips",
            "F_tip = min over edges with u . n_j > 0 of W cos(a) d_eff,j/(H u . n_j); level and square to the edge: W d/H",
            STATICS + "; oblique pushes own derivation, checked by bisection on the pressure point",
            "castors held, push along the floor at height H", GIVE + "; speed of the push");

    /** Push that slides. */
    public static final Formula SLIDE = new Formula("tipping.slide", "Push that slides",
            "|F u + W sin(a) t| = mu W cos(a), t downhill; level: slides before it tips if mu < d/H",
            "Coulomb friction; own derivation, checked by root finding",
            "all castors braked and turned so that none rolls", "turning about the vertical, brakes that slip inside");

    /** Design push. */
    public static final Formula DESIGN_PUSH = new Formula("tipping.design-push", "Push of people on a platform",
            "200 N one person, 400 N more", "EN 280 (from memory)", "loosening a tight nut can exceed 400 N",
            "jerks, jumps, pulls with a bar");

    /** Required ratio. */
    public static final Formula RATIO = new Formula("tipping.ratio", "Ratio asked for", "holding/tipping >= 1.5", PRACTICE,
            "static loads", "dynamics");

    /** Mass of a person. */
    public static final Formula PERSON = new Formula("tipping.person", "Mass of a person", "98 kg; with tools 120 kg",
            "98 kg: ISO 22915-1 (ISO 3411); 120 kg: " + PRACTICE, "settable", "heavier persons");

    /** Person on an overhang. */
    public static final Formula OVERHANG = new Formula("tipping.overhang", "Person beyond the edge",
            "ratio = M d/sum of m_p max(0, d_p): distances of balance point inside and person outside the edge", STATICS,
            "level floor, persons at rest; persons inside the edge do not count as holding", GIVE);

    /** Edge for a ratio. */
    public static final Formula OVERHANG_EDGE = new Formula("tipping.overhang-edge", "Where the foot of an end prop must stand",
            "x_e = (M x_g + gamma m x_p)/(M + gamma m)", STATICS, "prop in touch with the floor before the load comes",
            GIVE);

    /** Supports under an overhang. */
    public static final Formula OVERHANG_SUPPORTS = new Formula("tipping.overhang-supports", "Load that unloads the far support",
            "P_max = W x_n/a; x_n from the near support to the balance point, a overhang of the load; far reaction W x_n/L",
            STATICS, "two support lines, body that only rests", GIVE);

    /** Kerb hit. */
    public static final Formula KERB = new Formula("tipping.kerb", "Rolling load with its castors stopped",
            "v_low = sqrt(2 g (R - h)); v_crit = sqrt(2 g (R - h)(I_c/m + R^2))/h; R = sqrt(h^2 + d^2)",
            "block against a kerb in dynamics texts (from memory); own derivation, checked by integrating the swing",
            "plastic hit at floor level, level floor",
            "bounce, shifting parts, give of castors and frame, a person who goes on pushing");

    private TippingFormulas() {
    }

    /** Returns all formulas of this family. */
    public static List<Formula> all() {
        return List.of(MARGIN, TIP_ANGLE, SLOPE, FORCE_ANGLE, ENERGY, PUSH, SLIDE, DESIGN_PUSH, RATIO, PERSON, OVERHANG,
                OVERHANG_EDGE, OVERHANG_SUPPORTS, KERB);
    }
}
