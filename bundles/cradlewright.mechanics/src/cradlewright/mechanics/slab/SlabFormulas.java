package cradlewright.mechanics.slab;

import cradlewright.mechanics.formula.Formula;
import java.util.List;

/** What the formulas of floor slabs say about themselves. */
public final class SlabFormulas {

    private static final String WESTERGAARD = "pavement design texts, as re-examined in 1985 (coefficients from memory)";
    private static final String LARGE_SLAB = "large uncracked slab, full contact with the soil, one load, a/l up to 0.5";
    private static final String NEGLECTED = "loads closer than 2 l, curling, voids, load transfer at joints";
    private static final String YIELD_LINES = "TR34 4th ed. point-load equations (from memory)";

    /** Radius of relative stiffness. */
    public static final Formula WESTERGAARD_RADIUS = new Formula("slab.westergaard-radius", "Radius of relative stiffness",
            "l = (E h3/(12 (1 - nu2) k))^(1/4)", WESTERGAARD, "springs as soil", "soil that carries shear");
    /** Inside. */
    public static final Formula WESTERGAARD_INTERIOR = new Formula("slab.westergaard-interior", "Load well inside a slab",
            "s = 3 (1 + nu) P/(2 pi h2) (ln(l/b) + 0.6159); w = P/(8 k l2) (1 + (ln(a/2l) - 0.673) (a/l)2/(2 pi));"
                    + " b = sqrt(1.6 a2 + h2) - 0.675 h for a < 1.724 h, else a",
            WESTERGAARD, LARGE_SLAB, NEGLECTED);
    /** Edge. */
    public static final Formula WESTERGAARD_EDGE = new Formula("slab.westergaard-edge", "Load at the edge of a slab",
            "s = 3 (1 + nu) P/(pi (3 + nu) h2) (ln(E h3/(100 k a4)) + 1.84 - 4 nu/3 + (1 - nu)/2 + 1.18 (1 + 2 nu) a/l);"
                    + " w = sqrt(2 + 1.2 nu) P/sqrt(E h3 k) (1 - (0.76 + 0.4 nu) a/l)",
            WESTERGAARD, LARGE_SLAB, NEGLECTED);
    /** Corner. */
    public static final Formula WESTERGAARD_CORNER = new Formula("slab.westergaard-corner", "Load at the corner of a slab",
            "s = (3 P/h2) (1 - (a sqrt2/l)^0.6); w = P/(k l2) (1.1 - 0.88 a sqrt2/l)", WESTERGAARD, LARGE_SLAB, NEGLECTED);
    /** Material. */
    public static final Formula CONCRETE = new Formula("slab.concrete", "Strength and stiffness of concrete",
            "E_cm = 22 ((f_ck + 8)/10)^0.3 GPa; f_ctm = 0.3 f_ck^(2/3); f_ctd,fl = f_ctm max(1.6 - h, 1)/gamma_c;"
                    + " f_cd = 0.85 f_ck/gamma_c",
            "EN 1992-1-1 Table 3.1, 3.1.6, 3.1.8 (sample sheet read, clauses from memory)", "f_ck 12 to 50 MPa", "age, creep");
    /** Moments. */
    public static final Formula MOMENTS = new Formula("slab.moments", "Bending resistance of a slab on soil",
            "M_n = f_ctd,fl h2/6; M_p = 0.95 A_s f_yk d/gamma_s", "TR34 4th ed. sample sheet (read)", "lower mesh, uncracked top",
            "fibres, shrinkage stress");
    /** Collapse inside. */
    public static final Formula INTERNAL = new Formula("slab.internal", "Collapse load inside a slab",
            "a/l = 0: 2 pi (M_p + M_n); a/l >= 0.2: 4 pi (M_p + M_n)/(1 - a/(3 l)); between weighted by (a/l)/0.2", YIELD_LINES,
            "one load further than l from edges; a/l up to 0.5", "loads closer together than their yield lines reach");
    /** Collapse at an edge. */
    public static final Formula EDGE = new Formula("slab.edge", "Collapse load at the edge of a slab",
            "a/l = 0: pi (M_p + M_n)/2 + 2 M_n; a/l >= 0.2: (pi (M_p + M_n) + 4 M_n)/(1 - 2 a/(3 l));"
                    + " between weighted by (a/l)/0.2",
            YIELD_LINES, "one load; a/l up to 0.5; M_p not far below M_n: without a mesh other lines give 12 % less (own derivation)",
            "load transfer at joints");
    /** Collapse at a corner. */
    public static final Formula CORNER = new Formula("slab.corner", "Collapse load at the corner of a slab",
            "a/l = 0: 2 M_n; a/l >= 0.2: 4 M_n/(1 - a/l); between weighted by (a/l)/0.2", YIELD_LINES,
            "one load; a/l up to 0.5; M_p not far below M_n: without a mesh other lines give 21 % less (own derivation)",
            "load transfer at joints");
    /** Load factors. */
    public static final Formula LOAD_FACTOR = new Formula("slab.load-factor", "Load factors of slab design",
            "permanent 1.2; standing 1.5; rolling 1.6", "TR34 4th ed. sample sheet (read)", "with the collapse loads above",
            "impact at steps and joints beyond the factor");
    /** Punching. */
    public static final Formula PUNCHING = new Formula("slab.punching", "Punching",
            "v_Rd,c = max((0.18/gamma_c) k (100 rho f_ck)^(1/3), 0.035 k^1.5 sqrt(f_ck)); k = 1 + sqrt(200/d) <= 2; u1 at 2d;"
                    + " v_Ed = beta V/(u1 d); at the face 0.4 x 0.6 (1 - f_ck/250) f_ck/gamma_c",
            "EN 1992-1-1 6.4 (clauses, u1, beta read; constants and the face limit of 2014 from memory)",
            "no shear reinforcement; edge and corner loads taken flush; rho <= 0.02", "soil pressure within the perimeter");
    /** Pressure. */
    public static final Formula BEARING = new Formula("slab.bearing", "Pressure on concrete and soil",
            "p = P/A against 0.85 f_ck/1.5; soil P/((c1 + 2h)(c2 + 2h))",
                    "EN 1992-1-1 3.1.6 (from memory); 45 degree spread: common practice",
            "even pressure", "peak pressure of hard wheels, which is above the mean");
    /** Comparison. */
    public static final Formula WHEEL_COMPARISON = new Formula("slab.wheel-comparison",
            "No worse than the wheel that stands there daily",
            "P, P/A, P/perimeter not above, distance to the next contact not below", "own derivation, checked on random slabs",
            "same place on the same slab; contacts to 0.45 of the radius of relative stiffness",
                    "repetition, impact, peak pressure");

    private SlabFormulas() {
    }

    /** Returns all of them. */
    public static List<Formula> all() {
        return List.of(WESTERGAARD_RADIUS, WESTERGAARD_INTERIOR, WESTERGAARD_EDGE, WESTERGAARD_CORNER, CONCRETE, MOMENTS,
                INTERNAL, EDGE,
                CORNER, LOAD_FACTOR, PUNCHING, BEARING, WHEEL_COMPARISON);
    }
}
