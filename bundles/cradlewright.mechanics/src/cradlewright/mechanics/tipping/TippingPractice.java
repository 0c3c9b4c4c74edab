package cradlewright.mechanics.tipping;

/** Figures that the balance checks start from where the shop names none; every method takes them as parameters. */
public final class TippingPractice {

    /** Ratio of holding to tipping action that is asked for; common practice, no source. */
    public static final double REQUIRED_RATIO = 1.5;
    /** Mass of one person, kg, as stability tests simulate an operator (ISO 22915-1, ISO 3411). */
    public static final double OPERATOR_MASS = 98;
    /** Mass of one person with tools, kg; common practice, no source. */
    public static final double PERSON_WITH_TOOLS_MASS = 120;
    /** Design push of one person on a platform, N (EN 280, from memory); loosening a tight nut can exceed 400 N. */
    public static final double ONE_PERSON_PUSH = 200;
    /** Design push of more than one person on a platform, N (EN 280, from memory). */
    public static final double MORE_PEOPLE_PUSH = 400;
    /** Walking pace, m/s: the speed at which a rolling load must survive a stopped castor; common practice. */
    public static final double WALKING_PACE = 1.1;

    private TippingPractice() {
    }
}
