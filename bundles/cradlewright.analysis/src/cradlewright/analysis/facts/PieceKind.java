package cradlewright.analysis.facts;

/** What a car comes apart into. */
public enum PieceKind {
    SHELL, CHASSIS, ENGINE, BOX, OTHER
}
