package cradlewright.mechanics.contact;

/** What a contact unknown can do. */
public enum ContactKind {
    /** A support that rests: pushes or opens, never pulls. */
    UNILATERAL,
    /** A bolted contact, or the shear of a pin, strap or braked castor: pushes and pulls. */
    HELD
}
