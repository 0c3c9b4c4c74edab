package cradlewright.mechanics.contact;

import java.util.List;

import cradlewright.mechanics.formula.Formula;

/** What the contact calculations say about themselves. */
public final class ContactFormulas {

    /** Contact forces. */
    public static final Formula ENERGY = new Formula("contact.energy", "Forces between bodies that rest on each other",
            "least 1/2 f'Cf + g'f with E f = w and f >= 0 where a support only rests; gap s = C f + g - E'q >= 0, s'f = 0",
            "least complementary energy with one-sided contacts, own derivation; the spring model is in any structural text"
                    + " (from memory); dual active set after Goldfarb and Idnani, Mathematical Programming 27 (1983) 1-33"
                    + " (from memory)",
            "linear elastic contacts of at least 1e-9 m/N, small motions, at rest",
            "friction and forces locked in by the order of setting down; tilt of the load's own lever arms (second order)");

    /** Statics bounds. */
    public static final Formula STATICS_BOUNDS = new Formula("contact.statics-bounds",
            "Least and largest force that statics alone allow", "min and max f_i over all f with E f = w, f >= 0 where a"
                    + " support only rests, f >= -capacity where it is bolted",
            "linear programming over equilibrium, own derivation", "true for any stiffness and any floor",
            "says nothing about which value is likely");

    /** Tipping. */
    public static final Formula TIP_LIMIT = new Formula("contact.tip-limit",
            "How often an action may be laid on before it tips",
            "largest lambda with E f = w0 + lambda dw, f >= 0 where a support only rests, f >= -capacity where it is bolted;"
                    + " the dual ray y (E'y >= 0) is the motion that starts",
            "linear programming duality, own derivation; needed ratio 1.5 is common practice, no source",
            "rigid bodies at rest", "elastic tilt, run-up and bounce, shear taken as unlimited unless its unknowns are left out");

    /** Rank. */
    public static final Formula SUPPORT_RANK = new Formula("contact.support-rank",
            "Whether the supports can hold the body at all",
            "rank of the rows (1, x/L, y/L) at 1e-9; signed distance of the balance point to the convex hull",
            "statics, own derivation", "supports that push upward", "horizontal hold; pull of bolts (see the tipping limit)");

    /** Load path. */
    public static final Formula LOAD_PATH = new Formula("contact.load-path", "Forces while a load or a shim changes",
            "f(t) for w0 + t dw, g0 + t dg: straight between breakpoints at which a support lifts or touches",
            "parametric quadratic programming, own derivation", "as for the contact forces", "as for the contact forces");

    /** Gradient bounds. */
    public static final Formula GRADIENT_BOUNDS = new Formula("contact.gradient-bounds", "Contact forces at the unfavourable end",
            "p = p0 +- k S a/sqrt(a'S a), a the slope of the force; solved again at p",
            "GUM (JCGM 100:2008) 5.1.2 for the slope, worst point of the ellipse: own derivation",
            "doubtful inputs that are near normal, k = 2", "lift-off that begins between the nominal and the worst point of"
                    + " another input mix");

    private ContactFormulas() {
    }

    /** Returns all formulas of the family. */
    public static List<Formula> all() {
        return List.of(ENERGY, STATICS_BOUNDS, TIP_LIMIT, SUPPORT_RANK, LOAD_PATH, GRADIENT_BOUNDS);
    }
}
