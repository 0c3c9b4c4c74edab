package cradlewright.mechanics.frame;

/** On which side of a load a cut is made that meets the load exactly. */
public enum CutSide {
    /** Just before the load, seen from the near end. */
    BEFORE,
    /** Just after the load, seen from the near end. */
    AFTER
}
