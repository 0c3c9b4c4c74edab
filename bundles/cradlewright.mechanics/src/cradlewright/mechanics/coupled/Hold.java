package cradlewright.mechanics.coupled;

/** How a contact holds. */
public enum Hold {
    /** Pushes only. */
    RESTS,
    /** Pushes, and takes shear: a pin, or a castor with its brake on. */
    PINNED,
    /** Pushes and pulls, and takes shear. */
    BOLTED
}
