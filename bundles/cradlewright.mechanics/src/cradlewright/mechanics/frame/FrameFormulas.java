package cradlewright.mechanics.frame;

import java.util.List;

import cradlewright.mechanics.formula.Formula;

/** The formulas of frames, with sources and limits. */
public final class FrameFormulas {

    private static final String TEXTS = "any text on matrix structural analysis (from memory)";
    private static final String SMALL = "straight prismatic members, linear elastic, small movements";
    private static final String SECOND_ORDER = "second-order effects, what restrained warping adds to the twist stiffness,"
            + " give of the joints";

    /** Stiffness of the member. */
    public static final Formula ELEMENT = new Formula("frame.element", "Stiffness of a member in space",
            "E A/L; G J/L; c = E I/(L^3 (1 + phi)), phi = 12 E I/(G A_s L^2): 12 c, 6 c L, (4 + phi) c L^2, (2 - phi) c L^2",
            TEXTS, SMALL, SECOND_ORDER);

    /** Shear centre. */
    public static final Formula SHEAR_CENTRE = new Formula("frame.shear-centre", "Member that twists about its shear centre",
            "v_s = v - z_s theta, w_s = w + y_s theta; T_s = T - (y_s V_z - z_s V_y); K = A' K_s A",
            "rigid body kinematics in the plane of the section, shear centre by thin-walled theory, " + TEXTS, SMALL, SECOND_ORDER);

    /** Loads between nodes. */
    public static final Formula SPAN_LOADS = new Formula("frame.span-loads", "Fixed end forces of loads on a member",
            "far end of the loaded cantilever pushed back by the member stiffness: s = s0 - K d0",
            "force method, " + TEXTS, SMALL + "; loads at points and uniform loads", SECOND_ORDER);

    /** Between nodes. */
    public static final Formula ALONG_MEMBER = new Formula("frame.along-member", "Internal forces and movement along a member",
            "sum over loads before the cut of F d^n/n!: n 0 shear, 1 moment, 2 slope x E I, 3 sag x E I; shear adds F d/(G A_s)",
            "method of initial parameters (Macaulay), any text on strength of materials (from memory)", SMALL, SECOND_ORDER);

    /** Hinges. */
    public static final Formula RELEASES = new Formula("frame.end-releases", "Hinges at member ends",
            "K* = K_nn - K_nr K_rr^-1 K_rn; p* = p_n - K_nr K_rr^-1 p_r", "static condensation, " + TEXTS,
            "free of friction and play, small movements", "friction, play");

    /** Rigid ends. */
    public static final Formula RIGID_ENDS = new Formula("frame.rigid-ends", "Rigid ends of members",
            "u_end = u_node + theta x arm; action on the node F, M + arm x F", "rigid body kinematics, " + TEXTS,
            "the arm is far stiffer than the member", "give and weight of the arm");

    /** Springs. */
    public static final Formula SPRINGS = new Formula("frame.springs", "Frame on springs",
            "k added to the diagonal; reaction k (s - u), s movement of the ground", TEXTS,
            "springs that push and pull; lift-off is found by the contact solver", "lift-off, nonlinear springs");

    /** Settlement. */
    public static final Formula SETTLEMENT = new Formula("frame.settlement", "Forced movement of supports",
            "K_ff u_f = p_f - K_fc u_c", TEXTS, "held freedoms only", SECOND_ORDER);

    /** Weight. */
    public static final Formula SELF_WEIGHT = new Formula("frame.self-weight", "Own weight of members",
            "q = rho A g downwards, over the flexible part", "weight; density of steel 7850 kg/m3, EN 1993-1-1 3.2.6",
            "prismatic members", "rigid ends, weld metal, bolts, coating");

    /** Free body. */
    public static final Formula FREE_BODY = new Formula("frame.free-body", "Frame that nothing holds",
            "K with all six freedoms of one node fixed; forces that balance leave nothing for the clamp",
            "derived for this project: two clamps give the same forces", "loads that balance", SECOND_ORDER);

    /** Contacts. */
    public static final Formula CONDENSE = new Formula("frame.condense", "Frame seen through its contacts",
            "X = A G; C = G' X plus the give of the member under each contact; sag h = G' A p; result of X f + A p",
            "flexibility method, " + TEXTS, SMALL, SECOND_ORDER);

    /** Shell. */
    public static final Formula SHELL_SPINE = new Formula("frame.shell-spine", "Body shell as an elastic line with rigid arms",
            "G J = K_t span; gives b^2/K_t in the warp of four mounts b apart on the axle lines",
            "derived for this project, checked by a finite element model with four freedoms",
            "twist spread evenly over the length; pillars and sills act as one",
            "local give of floor and mounts, weak openings, slip of joints");

    /** Rigid part of movements. */
    public static final Formula RIGID_FIT = new Formula("frame.rigid-fit", "What a body bends by itself",
            "u_i = t + theta x (r_i - c) + rest_i with the least sum of rest_i^2; c middle of the points, t mean of u_i",
            "linear least squares, any text (from memory)", "small turns", "second-order part of turns");

    private FrameFormulas() {
    }

    /** Returns all formulas of the family. */
    public static List<Formula> all() {
        return List.of(ELEMENT, SHEAR_CENTRE, SPAN_LOADS, ALONG_MEMBER, RELEASES, RIGID_ENDS, SPRINGS, SETTLEMENT, SELF_WEIGHT, FREE_BODY,
                CONDENSE, SHELL_SPINE, RIGID_FIT);
    }
}
