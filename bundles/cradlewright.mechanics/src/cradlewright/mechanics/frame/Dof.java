package cradlewright.mechanics.frame;

/** One of the six freedoms of a node (global axes) or of a member end (member axes). */
public enum Dof {
    /** Shift along x. */
    UX,
    /** Shift along y. */
    UY,
    /** Shift along z. */
    UZ,
    /** Turn about x. */
    RX,
    /** Turn about y. */
    RY,
    /** Turn about z. */
    RZ
}
