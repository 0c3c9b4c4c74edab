package cradlewright.analysis.checks;

/** The cautions that stand beside answers where work can hurt. */
public final class Cautions {

    /** For everything that is lifted. */
    public static final String LIFTING = "Never work under a load that only a lift cylinder, jack, hoist or strap holds: engage the "
            + "locks and "
            + "add stands. Raise by a finger's breadth and look at every pad before going higher. The plate and manual of the gear and "
            + "the local rules come first.";
    /** For everything that stands on supports. */
    public static final String SUPPORTS = "Equal readings do not prove equal heights. Keep hands out from between pad and body while "
            + "lowering.";
    /** For everything that rolls. */
    public static final String CASTORS = "Ratings hold for a smooth floor at walking pace. Two people move a dolly, nobody stops it "
            + "with a foot, "
            + "and brakes are on or feet are down while somebody works.";
    /** For everything that can tip. */
    public static final String TIPPING = "Nobody on or in the shell while it is moved. Fit props before leaning on an end, not after.";
    /** For steel and timber structures. */
    public static final String STRUCTURE = "Fatigue, corrosion and damage are not looked at. A licensed structural engineer confirms "
            + "what people stand "
            + "under or on.";
    /** For bolts and welds. */
    public static final String JOINTS = "Tightening is only as good as the stated friction. Welds are taken as sound and of full "
            + "throat: have them looked at.";
    /** For floors. */
    public static final String FLOOR = "An unknown slab is no approval. Joints, drains, pits and cellars are not slab: keep castors a "
            + "boot's length away (common "
            + "practice).";
    /** For data that everything else rests on. */
    public static final String DATA = "Results are estimates from the numbers shown, not a certificate. Weigh again after each larger "
            + "change.";
    /** For the order of work and signatures. */
    public static final String WORK = "A signature says what somebody saw, and a plan never overrides what a hold point asks for. Who "
            + "does the work looks "
            + "at the car itself first.";

    private Cautions() {
    }
}
