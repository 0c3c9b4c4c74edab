package cradlewright.report.scene;

/** What sort of thing an item of a drawing is. */
public enum Kind {
    PIECE, CUT_ZONE, RAIL, TIPPING_LINE, FLOOR, CASTOR, FOOT, PROP, CARRIER, SUPPORT, SHIMS, MOUNT, LIFT_POINT, WORK_POINT, BALANCE, LOAD,
    JOINT, NODE, FIXTURE, SECTION, BENT, NOTE
}
