package cradlewright.ui.parts;

/** The heading over the temporary loads. */
enum LoadsHeading {
    /** The one. */
    HERE
}
