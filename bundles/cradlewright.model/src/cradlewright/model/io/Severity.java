package cradlewright.model.io;

/** How much a problem of a file matters. */
public enum Severity {
    /** Something is wrong and must be mended. */
    ERROR,
    /** Something is doubtful or will not be kept. */
    WARNING,
    /** Something was done that is worth knowing. */
    NOTE
}
