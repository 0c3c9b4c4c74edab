package cradlewright.mechanics.frame;

/** The axes in which the components of a member load are given. */
public enum LoadAxes {
    /** x rearward, y to the right, z up. */
    GLOBAL,
    /** The axes of the member, see {@link MemberAxes}. */
    MEMBER
}
