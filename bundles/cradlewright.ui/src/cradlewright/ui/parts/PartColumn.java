package cradlewright.ui.parts;

/** The columns of the parts list beside those of the stages. */
enum PartColumn {
    /** What it is called. */
    NAME,
    /** How heavy it is. */
    MASS,
    /** How far off the mass may be, 19 times in 20. */
    GIVE,
    /** Where the mass comes from. */
    SOURCE,
    /** Balance point, to the rear. */
    X,
    /** Balance point, to the right. */
    Y,
    /** Balance point, up. */
    Z,
    /** How far off the balance point may be, 19 times in 20. */
    PLACE_GIVE,
    /** The piece that it belongs to; of a temporary load, what it is. */
    PIECE,
    /** Where it is today. */
    WHERE;

    /** Tells whether numbers stand in it. */
    boolean numbers() {
        return this != NAME && this != SOURCE && this != PIECE && this != WHERE;
    }
}
