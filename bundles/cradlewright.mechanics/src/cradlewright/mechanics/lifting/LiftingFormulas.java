package cradlewright.mechanics.lifting;

import cradlewright.mechanics.formula.Formula;
import java.util.List;

/** What the formulas of lifts, slings and stands say about themselves. */
public final class LiftingFormulas {

    /** Front and rear share. */
    public static final Formula TWO_POST_SHARE = new Formula("lifting.two-post-share", "Share of front and rear arms",
            "F_f = m (x_r - x_g)/(x_r - x_f); F_r = m - F_f; window x_f + span/(1 + r)", "moments about the arms (statics)",
            "balance point between the arms", "left to right share and the warp of four pads");
    /** Limits of that share. */
    public static final Formula SHARE_LIMITS = new Formula("lifting.share-limits", "Limits of the share front to rear",
            "rated to 3500 kg: 2:3 to 3:2; above: 1:3 to 3:1", "DGUV information 208-015 section 3 (read)",
            "frame-engaging lifts; must still hold with parts off", "the lift's own plate and manual, which override it");
    /** Reach of an arm. */
    public static final Formula ARM_REACH = new Formula("lifting.arm-reach", "Reach of a lift arm",
            "L_min <= |pad - pivot| <= L_max; azimuth within the swing; height within the pad range", "plane geometry",
            "arm swings about an upright axis", "whether the arm clears body and dolly");
    /** Stiffness of an arm. */
    public static final Formula ARM_STIFFNESS = new Formula("lifting.arm-stiffness", "Stiffness of a lift arm", "k = 3 E I/L3",
            "cantilever, any strength-of-materials text (from memory)", "same section throughout",
                    "shear, play, give of the post");
    /** Stiffness of an arm of two sections. */
    public static final Formula ARM_STEPPED = new Formula("lifting.arm-stepped", "Stiffness of a telescoped arm",
            "1/k = ((L1 + L2)3 - L2^3)/(3 E I1) + L2^3/(3 E I2)", "own derivation, checked by numerical integration of M2/EI",
            "two sections end to end", "overlap of the tubes, play, shear");
    /** Four pads. */
    public static final Formula FOUR_PADS = new Formula("lifting.four-pads", "Loads of four pads with errors of height",
            "R = R0 - w n; w = n.d/(sum n2/k + c_body), kept where no R is below zero; sum n = sum n x = sum n y = 0",
            "own derivation, checked by brute force over all sets of loaded pads",
                    "balance point within the pads; springs are linear",
            "friction; how body softness alone shares the weight; second-order tilt");
    /** Two equal legs. */
    public static final Formula EQUAL_LEGS = new Formula("lifting.equal-legs", "Force in equal sling legs",
            "T = W/(n cos beta); angle factor 1/sin(angle to the horizontal)", "statics; ASME B30.9 practice (read)",
            "all legs carry alike", "uneven lengths; more than three legs on a stiff load");
    /** Angle factor. */
    public static final Formula TWO_LEG = new Formula("lifting.two-leg", "Force in a two-leg sling", "T = W/(2 cos beta)",
            "statics of two equal legs", "balance point in the middle", "weight of the sling, jerk");
    /** Two unequal legs. */
    public static final Formula UNEQUAL_LEGS = new Formula("lifting.unequal-legs",
            "Two legs with the balance point off the middle",
            "T1 = W D2 S1/(H (D1 + D2)); T2 = W D1 S2/(H (D1 + D2))",
            "off-centre two-leg formula of a rigging training page (read)", "both points at one height",
                    "weight of the sling, jerk");
    /** Three legs. */
    public static final Formula THREE_LEGS = new Formula("lifting.three-legs", "Three legs from one hook", "sum T_i u_i = W up",
            "statics", "hook straight above the balance point, legs not in one plane", "weight of the sling, jerk");
    /** Four legs on a stiff load. */
    public static final Formula FOUR_STIFF = new Formula("lifting.four-stiff", "Four legs on a stiff load",
            "each leg for half the load on a diagonal pair; in general the most over all three-leg states",
            "technical article on four-leg slings (read); statics", "any leg lengths", "soft straps share better");
    /** Mode factors. */
    public static final Formula MODE_FACTOR = new Formula("lifting.mode-factor", "Mode factors of slings",
            "straight 1; choked 0.8; basket 2, 1.4, 1; two legs 1.4, 1; three or four legs 2.1, 1.5 (to 45, to 60 degrees)",
            "EN 1492-1/-2, user manual (read); EN 13414-1 Table 4 (read); 6 degrees for upright (from memory)",
            "never beyond 60 degrees from upright", "uneven angles, balance point off the middle");
    /** Eye of a strap. */
    public static final Formula STRAP_EYE = new Formula("lifting.strap-eye", "Eye of a strap on its hook",
            "opening <= 20 degrees; hook radius >= 0.75 bearing width", "user manual of a textile sling to EN 1492-1 (read)",
            "webbing slings", "edges, wear");
    /** Side pull. */
    public static final Formula SIDE_PULL = new Formula("lifting.side-pull", "Side pull of a leaning strap",
            "H = V tan beta; lean kept to 5 degrees", "statics; limit: common practice, no source", "lean below 90 degrees",
            "friction at the arm");
    /** Roll. */
    public static final Formula ROLL = new Formula("lifting.roll", "Body standing above its straps", "k s2/2 > W h_c",
            "own derivation, checked by a finite rotation of two springs", "two strap lines, both stay taut, small tilt",
            "slack straps, sideways sway");
    /** Hung from a hook. */
    public static final Formula HUNG = new Formula("lifting.hung", "Tilt of a body on one hook", "tilt = atan(e/h)", "statics",
            "balance point below the hook", "stiffness of the sling");
    /** Hung on legs of given lengths. */
    public static final Formula HUNG_ON_LEGS = new Formula("lifting.hung-on-legs", "How a body hangs from one hook on legs",
            "|h - p_i| = l_i of the taut legs; up = (h - c)/|h - c|; sum T_i u_i = W up",
            "statics; own derivation, checked by an energy minimum of springs", "stiff body, two or three taut legs",
            "weight and stretch of the legs, jerk");
    /** Stands. */
    public static final Formula STAND = new Formula("lifting.stand", "Load of a stand", "1.5 R/g <= rating of one stand",
            "margin: common practice, no source; rating by the plate (ASME PASE, EN 1494)", "upright load on level floor",
            "side load, sinking floor");
    /** Pin holes. */
    public static final Formula PIN_STEPS = new Formula("lifting.pin-steps", "Pin setting of a stand",
            "height = lowest + hole x step, not above the wanted height; the rest is packed", "counting", "even steps",
            "compression of the packing");

    private LiftingFormulas() {
    }

    /** Returns all of them. */
    public static List<Formula> all() {
        return List.of(TWO_POST_SHARE, SHARE_LIMITS, ARM_REACH, ARM_STIFFNESS, ARM_STEPPED, FOUR_PADS, EQUAL_LEGS, TWO_LEG,
                UNEQUAL_LEGS, THREE_LEGS, FOUR_STIFF, MODE_FACTOR, STRAP_EYE, SIDE_PULL, ROLL, HUNG, HUNG_ON_LEGS, STAND, PIN_STEPS);
    }
}
