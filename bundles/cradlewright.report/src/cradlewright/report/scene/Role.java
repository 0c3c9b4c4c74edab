package cradlewright.report.scene;

/** What a shape stands for; a palette decides what that looks like. */
public enum Role {
    /** Edge of a piece of the car. */
    OUTLINE,
    /** Rails and what else carries. */
    STRUCTURE,
    /** Fixture on a dolly, stand, arm or strap. */
    FIXTURE,
    /** Soft pad. */
    PAD,
    /** Shim. */
    SHIM,
    /** A place on the car that was found sound. */
    SOUND,
    /** A place on the car that is weak, or that nobody looked at. */
    UNSOUND,
    /** End prop in place. */
    PROP,
    /** What could be there but is not: a prop that stands in the corner. */
    ABSENT,
    /** What is to be cut out. */
    CUT,
    /** Where people lean, pull and stand. */
    WORK,
    /** Castor or foot. */
    CASTOR,
    /** Balance point with its give or take. */
    BALANCE,
    /** Line over which something tips. */
    TIP_EDGE,
    /** The floor. */
    FLOOR,
    /** What a support carries, held with room to spare. */
    LOAD,
    /** What a support carries, close to a limit. */
    LOAD_TIGHT,
    /** What a support carries, with a question open. */
    LOAD_OPEN,
    /** What a support carries, with a STOP. */
    LOAD_STOP,
    /** A member of which less than a quarter is used. */
    USE_LOW,
    /** A member of which less than half is used. */
    USE_SOME,
    /** A member of which less than three quarters are used. */
    USE_HALF,
    /** A member of which more is used, held with room to spare. */
    USE_MUCH,
    /** A joint, and the ring about the weakest one. */
    JOINT,
    /** How something bends. */
    BENT,
    /** A support that carries nothing. */
    UNLOADED,
    /** A mark on a filled load bar. */
    MARK,
    /** Measures, arrows and lines that lead from a text to what it is about. */
    DIMENSION,
    /** Text. */
    TEXT,
    /** Text that is read first. */
    TEXT_STRONG
}
