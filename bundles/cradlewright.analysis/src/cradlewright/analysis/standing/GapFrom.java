package cradlewright.analysis.standing;

/** Where the gap under a support comes from. */
public enum GapFrom {

    /** Nobody measured anything: taken as none. */
    NOTHING("taken as none"),
    /** Feelers, with the dolly standing there as it is. */
    MEASURED("measured"),
    /** Heights measured on the standing dolly. */
    STANDING_DOLLY("from heights measured on the standing dolly"),
    /** Heights of which nobody said how they were taken: as a rule people measure what stands before them. */
    TAKEN_AS_STANDING("from heights; taken as measured on the standing dolly, nobody said"),
    /** Heights of the drawing. */
    DRAWING("from heights of the drawing; what the dolly sags by itself comes on top"),
    /** Heights that stands or arms are set to. */
    SET_HEIGHTS("from the heights that stands or arms are set to"),
    /** Stacks as found less stacks as they are now. */
    STACKS_AS_FOUND("stack as found less the stack there now"),
    /** Places of the mounts on shell and chassis less the stacks as they are now. */
    STACKS_BY_DRAWING("places of the mounts less the stack there now");

    private final String words;

    GapFrom(String words) {
        this.words = words;
    }

    /** Returns what people read. */
    public String words() {
        return words;
    }
}
