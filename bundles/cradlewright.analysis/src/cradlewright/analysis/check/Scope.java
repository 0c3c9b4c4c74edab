package cradlewright.analysis.check;

/** What a check is asked about, once for each. */
public enum Scope {
    /** A car as it stands or hangs: a stage on a setup at a time. */
    VISIT,
    /** A dolly by itself. */
    DOLLY,
    /** A piece of lifting gear by itself. */
    GEAR,
    /** A car as its file describes it. */
    CAR
}
