package cradlewright.mechanics.mass;

import cradlewright.mechanics.formula.Formula;
import java.util.List;

/** What the formulas of mass and balance point say about themselves. */
public final class MassFormulas {

    /** Sum of parts and removal of a part. */
    public static final Formula BALANCE = new Formula("mass.balance", "Mass and balance point of several parts",
            "m = sum m_i; c = sum m_i c_i / m; after removal c' = (m c - m_p c_p)/(m - m_p)", "statics (from memory)",
            "rigid parts, each counted once; total mass above zero",
                    "fluids that move, parts that shift when the body is tilted");
    /** Parallel-axis theorem. */
    public static final Formula SECOND_MOMENTS = new Formula("mass.second-moments", "Second moments of mass",
            "I = sum (I_i + m_i (r_i.r_i E - r_i r_i')), r_i = c_i - c", "parallel-axis theorem, statics (from memory)",
                    "rigid parts",
            "the parts' own extent where it is not given");
    /** Propagation of uncertainty to mass and balance point. */
    public static final Formula UNCERTAINTY = new Formula("mass.uncertainty", "Give or take of mass and balance point",
            "S = J U J', dm/dm_i = 1, dc/dm_i = (c_i - c)/m, dc/dc_i = m_i/m; errors of one scale add linearly; U = 2 u",
            "JCGM 100 (GUM) 5.1.2, 5.2.2 (from memory)",
            "first order: u(m_i) small against the total mass; where nobody wrote down which scale, weighed parts of one car count as on"
                    + " one for the mass and, if that is wider, as each on its own for the balance point",
            "second-order terms; correlation between the places of parts");
    /** Rectangular distribution. */
    public static final Formula RECTANGULAR = new Formula("mass.rectangular", "Standard uncertainty of a plain limit",
            "u = a/sqrt(3)", "JCGM 100 (GUM) 4.3.7 (from memory)", "nothing known but the limits",
                    "any knowledge of what is likelier");
    /** The unfavourable end of the ellipsoid. */
    public static final Formula WORST_POINT = new Formula("mass.worst-point", "Unfavourable mass and balance point",
            "(m, c) + 2 S g / sqrt(g' S g), g = gradient of the result", "own derivation, checked by a search over the ellipsoid",
            "result nearly linear over the give or take", "curvature of the result: compute it anew at the point found");
    /** Four level scales. */
    public static final Formula CORNER_SCALES = new Formula("mass.corner-scales", "Balance point from four scales",
            "x = L (RL + RR)/m; y = ((FR - FL) t_f + (RR - RL) t_r)/(2 m); cross share = (FR + RL)/m",
            "ISO 10392:2011 clause 5 (title read, formula from memory)", "scales level to each other, wheels free to turn",
            "tyre contact not under the wheel centre; the cross share is preload, not balance");
    /** Height by raising one axle. */
    public static final Formula AXLE_LIFT = new Formula("mass.axle-lift", "Height of the balance point by raising one axle",
            "F = m (1 - x_a/L) + (m c/L) tan theta, fitted over the steps; sin theta = (lift + r_raised - r_scale)/L;"
                    + " h = r_scale + x_a sin theta_0 + c cos theta_0",
            "ISO 10392:2011 6.2.2-6.2.6 (excerpt read); unequal radii: own derivation, checked by a round trip",
            "suspension blocked, tanks full, brakes off, wheels free; three or more steps wanted",
            "change of tyre deflection, moving fluids, error of the inclination; some per cent by the scope of the standard");
    /** Load cells, level. */
    public static final Formula POSE_LEVEL = new Formula("mass.pose-level", "Mass and balance point from load cells, level",
            "m = sum R_i; x = sum R_i x_i/m; y = sum R_i y_i/m", "statics (from memory)",
                    "body level, no sideways force at the cells",
            "height, which a level weighing cannot tell");
    /** Load cells in several attitudes. */
    public static final Formula POSES = new Formula("mass.poses", "Mass and balance point from load cells in several attitudes",
            "per attitude: sum R = m; sum R (p.e) = (m c).e for two level directions e; least squares with weights V^-1;"
                    + " covariance (A' V^-1 A)^-1; misfit of a reading h: h'V^-1 r / sqrt(h'V^-1 Q V^-1 h), Q covariance of r",
            "statics with least squares of Gauss and Markov; own derivation, checked by a round trip and by Monte Carlo",
            "two or more attitudes that differ; no sideways force at the cells", "bending of the body between attitudes; fluids");
    /** Fit of marks. */
    public static final Formula RIGID_FIT = new Formula("mass.rigid-fit", "How a body sits, from marks in two frames",
            "min sum |b_i - R a_i - t|^2; sum (a - a0)(b - b0)' = U S V'; R = V diag(1, 1, det V U') U'; t = b0 - R a0",
            "least-squares fit by singular values, numerical texts (from memory)", "three or more marks, not in one line",
            "twist of the body, which shows as misses at the marks");

    private MassFormulas() {
    }

    /** Returns all of them. */
    public static List<Formula> all() {
        return List.of(BALANCE, SECOND_MOMENTS, UNCERTAINTY, RECTANGULAR, WORST_POINT, CORNER_SCALES, AXLE_LIFT, POSE_LEVEL,
                POSES,
                RIGID_FIT);
    }
}
