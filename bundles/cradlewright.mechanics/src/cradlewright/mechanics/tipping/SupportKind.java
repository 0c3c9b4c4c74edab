package cradlewright.mechanics.tipping;

/** What the floor contacts span. Only {@link #AREA} can keep a load upright. */
public enum SupportKind {
    /** No contact at all. */
    NONE,
    /** One contact, or several at one spot. */
    POINT,
    /** Two contacts, or more on one line: nothing holds the load about that line. */
    LINE,
    /** At least three contacts that span an area. */
    AREA
}
