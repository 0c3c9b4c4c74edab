package cradlewright.mechanics.joint;

/** Kinds of holes and the share of the bearing resistance that is left (EN 1993-1-8 Table 3.4 note 1). */
public enum HoleKind {
    /** Round hole of normal clearance. */
    NORMAL(1),
    /** Oversize round hole. */
    OVERSIZE(0.8),
    /** Slot whose long axis lies across the force. */
    SLOT_ACROSS(0.6),
    /** Slot along the force: the bolt slides, so nothing is counted. */
    SLOT_ALONG(0);

    private final double bearingFactor;

    HoleKind(double bearingFactor) {
        this.bearingFactor = bearingFactor;
    }

    /** Returns the factor on the bearing resistance. */
    public double bearingFactor() {
        return bearingFactor;
    }

    /** Returns whether the hole is a slot. */
    public boolean slotted() {
        return this == SLOT_ACROSS || this == SLOT_ALONG;
    }
}
