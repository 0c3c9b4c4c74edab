package cradlewright.analysis.facts;

/**
 * What an end of a member lets go of.
 *
 * @param hinge whether it turns about the member's own horizontal axis, so that no bending passes
 * @param turns whether it turns about a pin along the member, so that no twist passes: a rocking end
 */
public record EndRelease(boolean hinge, boolean turns) {

    /** An end that passes everything on. */
    public static final EndRelease FIXED = new EndRelease(false, false);
    /** A hinged end. */
    public static final EndRelease HINGED = new EndRelease(true, false);
    /** An end on a pin along the member. */
    public static final EndRelease ON_A_PIN = new EndRelease(false, true);
}
