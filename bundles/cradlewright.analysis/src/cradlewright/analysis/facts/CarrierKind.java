package cradlewright.analysis.facts;

/** What carries a piece while it stands or hangs somewhere. */
public enum CarrierKind {
    DOLLY, STANDS, STRAPS, LIFT, CHASSIS, FLOOR, AWAY
}
