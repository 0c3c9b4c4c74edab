package cradlewright.mechanics.castor;

import java.util.List;

import cradlewright.mechanics.formula.Formula;

/** The formulas of castors and wheels, with sources and limits. */
public final class CastorFormulas {

    private static final String PRACTICE = "common practice, no source";
    private static final String RATED = "compare with rated loads, not with design resistances";
    private static final String AUTHORITY = "push and pull page of a national health and safety authority (guidance L23)";
    private static final String NORM = "EN 12530 / ISO 22881 (test summary read)";
    private static final String SHOCKS = "shocks, give of the treads";

    /** Three castors carry. */
    public static final Formula THREE_CARRY = new Formula("castor.three-carry", "Worst load of a castor on an uneven floor",
            "max over all triples of castors with the balance point in their triangle: R_i = W times its barycentric share",
            "statics of three supports (from memory); bound: own derivation, checked by linear programming",
            "vertical loads, any floor, any stiffness; " + RATED, "shocks");

    /** Trade rule. */
    public static final Formula TRADE_RULE = new Formula("castor.trade-rule", "Rating by the trade rule",
            "T = (E + Z)/(n - 1); for shocks (E + Z)/2; service factor 1.5 to 2.0 for transport equipment",
            "castor makers' selection guides (five read; shocks and factor from one each)",
            "balance point near the middle and a frame that gives; a rigid frame can load one castor more",
            "position of the load");

    /** Floor warp. */
    public static final Formula FLOOR_WARP = new Formula("castor.floor-warp", "Floor error that unloads a castor",
            "R = R_0 - n (n . d)/(sum n_i^2/k_i + c_body); rectangle, centred: d = (W/4)(4/k + b^2/K_t), rigid W/k",
            "own derivation, checked by a finite-element model and brute force over contact states",
            "four castors, all touching; body compliance in the warp pattern only", "gaps, swivel play");

    /** Lever arms. */
    public static final Formula LEVER_ARM = new Formula("castor.lever-arm", "Lever arm of rolling friction",
            "f by tread and floor, m", "calculator of a drive maker (read, inches converted)",
            "cautious, for starting; tables disagree", "speed, temperature, flats from standing");

    /** Rolling force. */
    public static final Formula ROLLING = new Formula("castor.rolling", "Push on a level floor",
            "F from W min(0.02, f/r) to W max(0.02, f/r), soft or uneven floors to 0.10 W; swivels turned across: times 2 to 3",
            AUTHORITY + "; lever arms of a drive maker; turned swivels: " + PRACTICE,
            "well kept castors; print the range, not a figure", "dirt, joints, bearings in poor state");

    /** Slope force. */
    public static final Formula SLOPE = new Formula("castor.slope", "Push on a slope", "F = W (sin a + c cos a)",
            "equilibrium on an incline (from memory); largest slope 6 %: ASR A1.8 table 1", "steady pace", "starting, steering");

    /** People. */
    public static final Formula PUSH_GUIDANCE = new Formula("castor.push-guidance", "People needed to push",
            "n = ceil(F/F_1); start or stop 200 N men, 150 N women; keep moving 100 N and 70 N", AUTHORITY,
            "filters, not safe limits; hands between knuckle and shoulder, up to about 20 m", "room to stand, grip, pace");

    /** Push at the axle. */
    public static final Formula STEP_AXLE = new Formula("castor.step-axle", "Push at the axle over a step",
            "F = W_w sqrt(2 r h - h^2)/(r - h)", "statics textbooks (Fundamentals of Physics, chapter 12)",
            "h < r, slow push", SHOCKS);

    /** Climb or tip. */
    public static final Formula STEP_CLIMB = new Formula("castor.step-climb", "Climbs or tips at a step",
            "kappa = sqrt(2 r h - h^2)/(r - h); F_climb = W_f kappa/(1 - kappa (H - r)/L); F_tip = W_r L/(H - r)",
            "own derivation, checked by solving the equilibrium equations", "slow push at height H, free wheels, h < r",
            SHOCKS + ", swinging of the fork");

    /** Speed over a step. */
    public static final Formula STEP_SPEED = new Formula("castor.step-speed", "Speed that carries a wheel over a step",
            "v = sqrt(2 g h); with a plastic hit v = sqrt(2 g h) r/(r - h)", "energy; hit: own derivation, angular momentum",
            "h < r; the wheel carries its own share of the mass", "loss in treads; a hit can tip the load first");

    /** Swivel lead. */
    public static final Formula SWIVEL_LEAD = new Formula("castor.swivel-lead", "Swivels in their worst position",
            "margin = min over n of max_i((a_i - c) . n - e_i); swept radius e + r",
            "worst castor position: ISO 22915-16 (excerpt read); own derivation, checked by a scan of directions",
            "each swivel free to turn anywhere", "width of the treads");

    /** Rating test. */
    public static final Formula NORM_TEST = new Formula("castor.norm-test", "Conditions of the rating",
            "obstacle 0.03 D, 10 D/mm crossings, static 1.5 times the rating; 10 to 30 degC, up to 4 km/h",
            NORM + "; temperature and speed: trade glossary citing EN 12532", "institutional castors for the test figures",
            "derating outside the range: no figure given");

    /** Loads of lines on a slope. */
    public static final Formula BRAKE_LINE_LOADS = new Formula("castor.brake-line-loads", "Castor lines on a slope",
            "R_up = W (x cos a - h sin a)/L, R_down = W cos a - R_up",
            "own derivation, checked by solving the equilibrium equations", "two lines across the slope",
            "uneven floor: see the three-castor states");

    /** Brakes. */
    public static final Formula BRAKE = new Formula("castor.brake", "Braked castors on a slope",
            "sum over braked of min(mu R_i, 0.20 rated load g) >= W sin a", "brake test: " + NORM + "; own derivation",
            "load at rest", "wear, creep, turning about the braked castors");

    /** Running away. */
    public static final Formula RUN_AWAY = new Formula("castor.run-away", "Rolling off by itself",
            "rolls if tan a > c; acceleration g (sin a - c cos a), v = sqrt(2 a s), run-out v^2/(2 g c)",
            "motion on an incline (physics texts); own derivation for castors, checked by integration and energy",
            "c the low end, from a test; tables made for pushing are no low end", "inertia of the wheels, air, steering");

    /** Drop. */
    public static final Formula DROP_FACTOR = new Formula("castor.drop-factor", "Dropped load",
            "phi = 1 + sqrt(1 + 2 h/d_st)", "Mechanics of Materials 7th ed., section 2.8 (solution pages read)",
            "linear spring, light against the load; a load let go at once gives 2", "damping, bottoming out");

    /** Joints. */
    public static final Formula JOINT_FACTOR = new Formula("castor.joint-factor", "Rolling over floor joints", "phi = 1.4",
            PRACTICE, "walking pace", "size of joint and wheel");

    private CastorFormulas() {
    }

    /** Returns all formulas of this family. */
    public static List<Formula> all() {
        return List.of(THREE_CARRY, TRADE_RULE, FLOOR_WARP, LEVER_ARM, ROLLING, SLOPE, PUSH_GUIDANCE, STEP_AXLE, STEP_CLIMB,
                STEP_SPEED, SWIVEL_LEAD, NORM_TEST, BRAKE_LINE_LOADS, BRAKE, RUN_AWAY, DROP_FACTOR, JOINT_FACTOR);
    }
}
