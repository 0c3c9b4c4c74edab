package cradlewright.ui.warnings;

/** How answers are gathered. */
enum Gathering {
    /** By car, dolly or lifting gear. */
    THING,
    /** By the check that gives them. */
    CHECK
}
